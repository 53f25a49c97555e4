import { forDrawing, type Length } from '../length/length';
import type { Tape } from '../length/tape';
import type { Place, Rect } from '../trade/sheets/tree';
import { fitName } from './fit-name';
import { Mixed } from './mixed';
import './sheet-drawing.css';

/** A cut as drawn: where it lies, its number, and how it stands. */
type DrawnCut = {
  readonly path: string;
  readonly no: number;
  readonly state: 'done' | 'now' | 'planned';
};

type SheetProps = {
  readonly size: Rect;
  readonly places: readonly Place[];
  readonly cuts: readonly DrawnCut[];
  readonly tape: Tape;
  readonly label: string;
  /** What a piece is called, and its length. */
  readonly piece: (id: string) => { readonly name: string; readonly long: Length } | undefined;
  /** So wide it may be drawn, pixels. A stick is drawn wider than it is. */
  readonly wide: number;
  readonly stick?: boolean;
};

/** Number of a cut in its circle, pixels across; what it stands out over the sheet's edge. */
const ball = 28;

type Frame = { readonly x: (inches: Length) => number; readonly y: (inches: Length) => number };

/** Sizes of the drawing, pixels: to scale, but a stick is as wide as the drawing. */
function frameOf(size: Rect, wide: number, stick: boolean) {
  const across = Math.max(forDrawing(size.wide), 0.01);
  const along = Math.max(forDrawing(size.long), 0.01);
  const perInch = stick ? 520 / along : wide / across;
  const frame: Frame = {
    x: (v) => (forDrawing(v) / across) * wide,
    y: (v) => forDrawing(v) * perInch,
  };
  return { frame, tall: along * perInch };
}

/**
 * A sheet upright, long side down the page, measured from its left edge and its top: pieces in birch with their
 * lengths, what is left hatched, rips numbered over the sheet and crosscuts at the kerf. The cut to be made is red.
 */
export function SheetDrawing(props: SheetProps) {
  const { size, places, cuts, tape, label, piece, wide, stick = false } = props;
  const { frame, tall } = frameOf(size, wide, stick);
  const byPath = new Map(cuts.map((cut) => [cut.path, cut]));
  const keys = keysOf(props, frame);
  return (
    <div class="sheetkeyed">
      <div
        class={stick ? 'sheet stick' : 'sheet'}
        style={{ width: `${wide}px`, height: `${tall}px` }}
        role="group"
        aria-label={label}
      >
        {places.map((place) => (
          <Patch key={place.path} {...{ place, frame, tape, piece, keys }} />
        ))}
        <svg class="sheetlines" width={wide} height={tall} aria-hidden="true">
          {places.map((place) => {
            const cut = byPath.get(place.path);
            return cut && <Line key={place.path} {...{ place, frame, cut }} />;
          })}
          <rect class="k-ink" x="0" y="0" width={wide} height={tall} stroke-width="3" />
        </svg>
        {places.map((place) => {
          const cut = byPath.get(place.path);
          return cut && <Ball key={place.path} {...{ place, frame, cut }} />;
        })}
      </div>
      {keys.size > 0 && <Key keys={[...keys.values()]} tape={tape} wide={wide} />}
    </div>
  );
}

type KeyProps = { readonly keys: readonly Keyed[]; readonly tape: Tape; readonly wide: number };

/** What the numbered pieces are called, and how long they are. */
const Key = ({ keys, tape, wide }: KeyProps) => (
  <ol class="sheetkey" style={{ width: `${wide}px` }}>
    {keys.map(({ no, name, long }) => (
      <li key={no} value={no}>
        <b>{no}</b> <span>{name}</span> <Mixed value={long} tape={tape} />
      </li>
    ))}
  </ol>
);

type PatchProps = {
  readonly place: Place;
  readonly frame: Frame;
  readonly tape: Tape;
  readonly piece: SheetProps['piece'];
  readonly keys: ReadonlyMap<string, Keyed>;
};

function Patch({ place: { branch, from, size }, frame, tape, piece, keys }: PatchProps) {
  if (branch.is === 'cut') return null;
  const wide = frame.x(size.wide);
  const tall = frame.y(size.long);
  if (wide < 1 || tall < 1) return null;
  const style = {
    left: `${frame.x(from.wide)}px`,
    top: `${frame.y(from.long)}px`,
    width: `${wide}px`,
    height: `${tall}px`,
  };
  if (branch.is !== 'piece')
    return (
      <div class={`sheetpart ${branch.is}`} style={style}>
        {branch.is === 'left' && tall >= 30 && wide >= 62 && <span>offcut</span>}
      </div>
    );
  const own = piece(branch.piece);
  if (!own) return <div class="sheetpart wood" style={style} />;
  const key = keys.get(branch.piece)?.no;
  const fit = key === undefined ? fitName(own.name, { wide, tall }) : 'key';
  return (
    <div class={`sheetpart wood ${fit}`} style={style}>
      <span class="nm">{key ?? own.name}</span>
      {(fit === 'across' || fit === 'row') && <Mixed value={own.long} tape={tape} />}
    </div>
  );
}

type Keyed = { readonly no: number; readonly name: string; readonly long: Length };

/** Pieces whose names do not go into their patch, by a number each, in the order they lie. */
function keysOf({ places, piece }: SheetProps, frame: Frame): ReadonlyMap<string, Keyed> {
  const found = places.flatMap(({ branch, size }) => {
    const own = branch.is === 'piece' ? piece(branch.piece) : undefined;
    const room = { wide: frame.x(size.wide), tall: frame.y(size.long) };
    return branch.is === 'piece' && own && fitName(own.name, room) === 'key'
      ? [{ id: branch.piece, ...own }]
      : [];
  });
  return new Map(found.map(({ id, ...own }, k) => [id, { no: k + 1, ...own }]));
}

type LineProps = { readonly place: Place; readonly frame: Frame; readonly cut: DrawnCut };

/** Where a cut runs: along its rectangle, at the kerf. */
function runOf({ branch, from, size }: Place, { x, y }: Frame) {
  if (branch.is !== 'cut') return undefined;
  const left = x(from.wide);
  const top = y(from.long);
  if (branch.way === 'rip') {
    const at = left + x(branch.at);
    return { x1: at, x2: at, y1: top, y2: top + y(size.long) };
  }
  const at = top + y(branch.at);
  return { x1: left, x2: left + x(size.wide), y1: at, y2: at };
}

const strokes = {
  done: { class: 'k-ink', width: 3.5 },
  now: { class: 'k-red', width: 5 },
  planned: { class: 'k-onbirch', width: 1.75 },
} as const;

function Line({ place, frame, cut }: LineProps) {
  const run = runOf(place, frame);
  if (!run) return null;
  const stroke = strokes[cut.state];
  return (
    <line
      class={stroke.class}
      {...run}
      stroke-width={stroke.width}
      stroke-dasharray={cut.state === 'planned' ? '6 5' : undefined}
    />
  );
}

function Ball({ place, frame, cut }: LineProps) {
  const run = runOf(place, frame);
  if (!run) return null;
  const whole = place.branch.is === 'cut' && place.branch.way === 'rip';
  // a rip's number stands at the head of its line, a crosscut's at its left end
  const style = whole
    ? { left: `${run.x1}px`, top: `${run.y1 === 0 ? -ball / 2 - 4 : run.y1 + ball / 2 + 2}px` }
    : { left: `${run.x1 + ball / 2 + 2}px`, top: `${run.y1}px` };
  return (
    <span class={`cutno ${cut.state}`} style={style} aria-hidden="true">
      {cut.state === 'done' ? '✓' : cut.no}
    </span>
  );
}

type ThumbProps = { readonly size: Rect; readonly places: readonly Place[]; readonly stick?: boolean };

/** The sheet small: what is used of it. */
export function SheetThumb({ size, places, stick = false }: ThumbProps) {
  const wide = stick ? 16 : Math.max(forDrawing(size.wide), 1);
  const across = Math.max(forDrawing(size.wide), 0.01);
  const tall = Math.max(forDrawing(size.long), 1);
  const x = (v: Length) => (forDrawing(v) / across) * wide;
  return (
    <svg class="thumbsheet" viewBox={`-1 -1 ${wide + 2} ${tall + 2}`} aria-hidden="true">
      <rect class="f-surface2" x="0" y="0" width={wide} height={tall} />
      {places.map(({ path, branch, from, size: own }) =>
        branch.is === 'piece' ? (
          <rect
            key={path}
            class="f-birch"
            x={x(from.wide)}
            y={forDrawing(from.long)}
            width={x(own.wide)}
            height={forDrawing(own.long)}
          />
        ) : null,
      )}
      <rect class="k-ink" x="0" y="0" width={wide} height={tall} stroke-width="1" />
    </svg>
  );
}
