import { type BoardProps, Cross, type DrawnGroove } from './boards';

type LyingProps = BoardProps & {
  /** A rabbet along the far edge, as a share of the board's width. */
  readonly edge?: number;
  /** A notch out of the near edge at the block: shares of the board's width and length. */
  readonly corner?: { readonly deep: number; readonly long: number } | undefined;
  readonly along?: readonly DrawnAlong[];
  /** Mitred ends, sloping away under the face: how far, as shares of the board's length; `near` at the block. */
  readonly mitres?: { readonly near: number; readonly far: number };
  readonly holes?: readonly DrawnHole[];
};

/**
 * A groove along the board: how far from the far edge and how wide, as shares of the board's width; where it begins
 * and ends, as shares of its length; in the other face dashed.
 */
export type DrawnAlong = {
  readonly id: string;
  readonly near: number;
  readonly wide: number;
  readonly from: number;
  readonly to: number;
  readonly behind?: boolean;
};

/** A hole: its middle along the board, and as a share of its width from the near edge; of the other face dashed. */
export type DrawnHole = {
  readonly id: string;
  readonly at: number;
  readonly across: number;
  readonly dia: number;
  /** A slot: how long it is across the board, as a share of its width. A slanted hole is longer along it: inches. */
  readonly slot?: number;
  readonly slanted?: number;
  readonly behind: boolean;
};

/** The board lying down, reference end left against the blue block, red near edges, an X in each waste. */
export function BoardLying({
  length,
  grooves,
  label,
  stale,
  edge = 0,
  along = [],
  mitres = { near: 0, far: 0 },
  corner,
  holes = [],
}: LyingProps) {
  const scale = 343 / Math.max(length, 0.001);
  return (
    <svg class={stale ? 'lying stale' : 'lying rests'} viewBox="0 -8 356 66" role="img" aria-label={label}>
      <rect class="f-birch" x="10" y="0" width="343" height="50" />
      {edge > 0 && (
        <rect class="f-notch" x="10" y="0" width="343" height={50 * Math.min(1, edge)} opacity=".5" />
      )}
      {corner && (
        <rect
          class="f-notch"
          x="10"
          y={50 * (1 - corner.deep)}
          width={343 * corner.long}
          height={50 * corner.deep}
        />
      )}
      {along.map(({ id, near, wide, from, to, behind }) => (
        <rect
          key={id}
          class={behind ? 'k-onbirch' : 'f-notch'}
          x={10 + 343 * from}
          y={50 * near}
          width={343 * (to - from)}
          height={50 * wide}
          {...(behind ? { 'stroke-width': 1.25, 'stroke-dasharray': '3 3' } : { opacity: '.5' })}
        />
      ))}
      <Mitre from={0} to={mitres.near} inner={mitres.near} />
      <Mitre from={1 - mitres.far} to={1} inner={1 - mitres.far} />
      {grooves.map((g) => (
        <LyingGroove key={g.id} x={10 + g.near * scale} w={g.width * scale} groove={g} />
      ))}
      {holes.map((hole) => (
        <ellipse
          key={hole.id}
          class="hole k-onbirch"
          cx={10 + hole.at * scale}
          cy={50 - 50 * hole.across}
          rx={Math.max(1.2, ((hole.slanted ?? hole.dia) * scale) / 2)}
          ry={hole.slot ? 25 * hole.slot : Math.max(1.2, (hole.dia * scale) / 2)}
          stroke-width="1"
          stroke-dasharray={hole.behind ? '1 1' : undefined}
        />
      ))}
      <rect class="k-onbirch" x="10" y="0" width="343" height="50" stroke-width="1.5" />
      <rect class="f-blue" x="0" y="-6" width="10" height="62" />
    </svg>
  );
}

type MitreProps = { readonly from: number; readonly to: number; readonly inner: number };

/** A mitred end from the face: what slopes away under it is hatched up to where the face ends. */
function Mitre({ from, to, inner }: MitreProps) {
  if (to <= from) return null;
  const [x, w] = [10 + 343 * from, 343 * (to - from)];
  return (
    <>
      {[0, 1, 2, 3, 4].map((k) => (
        <line
          key={k}
          class="k-onbirch"
          x1={x}
          x2={x + w}
          y1={10 * (inner === from ? k : k + 1)}
          y2={10 * (inner === from ? k + 1 : k)}
          stroke-width=".75"
        />
      ))}
      <line
        class="k-onbirch"
        x1={10 + 343 * inner}
        x2={10 + 343 * inner}
        y1="0"
        y2="50"
        stroke-width="1.25"
      />
    </>
  );
}

type LyingGrooveProps = { readonly x: number; readonly w: number; readonly groove: DrawnGroove };

function LyingGroove({ x, w, groove }: LyingGrooveProps) {
  if (groove.behind) {
    return (
      <rect class="k-onbirch" x={x} y="3" width={w} height="44" stroke-width="1.25" stroke-dasharray="3 3" />
    );
  }
  return (
    <>
      <rect class="f-notch" x={x} y="0" width={w} height="50" opacity={groove.done ? 1 : 0.5} />
      <line class="k-red" x1={x} x2={x} y1="-5" y2="50" stroke-width={groove.current ? 4 : 2.5} />
      <line class="k-onbirch" x1={x + w} x2={x + w} y1="0" y2="50" stroke-width="1" />
      {!groove.done && w >= 3 && <Cross x={x + w / 2} y={25} reach={Math.min(w * 0.36, 6)} />}
    </>
  );
}
