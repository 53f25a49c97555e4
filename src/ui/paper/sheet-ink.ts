import { forDrawing, type Length } from '../../length/length';
import type { Place, Rect } from '../../trade/sheets/tree';
import type { Block } from './flow';
import { type Ink, line, type Spot, textAt, type WidthOf } from './ink';

/** A sheet on paper: its pieces by number and, where there is room, name; its cuts by the code of their box. */
type SheetOnPaper = {
  readonly size: Rect;
  readonly places: readonly Place[];
  /** By the path of the cut. */
  readonly cuts: ReadonlyMap<string, string>;
  readonly pieces: ReadonlyMap<string, { readonly no: number; readonly name: string }>;
  /** A stick is drawn wider than it is. */
  readonly stick: boolean;
  /** The room for it, millimetres. */
  readonly wide: number;
  readonly high: number;
  readonly widthOf: WidthOf;
};

type Frame = { readonly x: (v: Length) => number; readonly y: (v: Length) => number };

type Spread = { readonly x: number; readonly y: number; readonly wide: number; readonly high: number };

const number = 3.4;
const word = 2.6;
/** Round a number that stands on a line. */
const white = 0.6;

/**
 * A sheet upright and to scale, measured from its left edge and its top.
 *
 * @returns with the drawing, how many of its cuts found no room for their number
 */
export function sheetBlock(sheet: SheetOnPaper): { readonly block: Block; readonly unnumbered: number } {
  const across = Math.max(forDrawing(sheet.size.wide), 0.01);
  const along = Math.max(forDrawing(sheet.size.long), 0.01);
  const scale = sheet.stick ? sheet.high / along : Math.min(sheet.wide / across, sheet.high / along);
  const wide = sheet.stick ? 30 : across * scale;
  const frame: Frame = { x: (v) => (forDrawing(v) / across) * wide, y: (v) => forDrawing(v) * scale };
  const { said, spreads } = numbersOf(sheet, frame);
  const block: Block = {
    high: along * scale + 1,
    ink: ([x, y]) => [
      ...sheet.places.flatMap((place) => patchOf(place, frame, [x, y])),
      { draw: 'box', at: [x, y], wide, high: along * scale, line: 0.6 },
      ...sheet.places.flatMap((place) => lineOf(place, frame, [x, y])),
      ...spreads.map(
        (one): Ink => ({
          draw: 'box',
          at: [x + one.x, y + one.y],
          wide: one.wide,
          high: one.high,
          grey: 1,
          line: 0.3,
        }),
      ),
      ...said.map(({ at: [dx, dy], ...text }) => textAt([x + dx, y + dy], text.text, text.look)),
    ],
  };
  return { block, unnumbered: sheet.cuts.size - spreads.length };
}

/** What is left is grey, what is kept white. */
function patchOf({ branch, from, size }: Place, { x, y }: Frame, [left, top]: Spot): readonly Ink[] {
  if (branch.is !== 'left' && branch.is !== 'waste') return [];
  const at: Spot = [left + x(from.wide), top + y(from.long)];
  return [
    { draw: 'box', at, wide: x(size.wide), high: y(size.long), grey: branch.is === 'left' ? 0.9 : 0.75 },
  ];
}

/** Where a cut runs, from its head on. */
function runOf({ branch, from, size }: Place, { x, y }: Frame): readonly [Spot, Spot] | undefined {
  if (branch.is !== 'cut') return undefined;
  const [left, top] = [x(from.wide), y(from.long)];
  if (branch.way === 'rip') {
    const at = left + x(branch.at);
    return [
      [at, top],
      [at, top + y(size.long)],
    ];
  }
  const at = top + y(branch.at);
  return [
    [left, at],
    [left + x(size.wide), at],
  ];
}

function lineOf(place: Place, frame: Frame, [x, y]: Spot): readonly Ink[] {
  const run = runOf(place, frame);
  if (!run) return [];
  const [[x1, y1], [x2, y2]] = run;
  return [line([x + x1, y + y1], [x + x2, y + y2], 0.4)];
}

type Said = {
  readonly at: Spot;
  readonly text: string;
  readonly look: { readonly high: number; readonly bold?: true };
};

const meet = (a: Spread, b: Spread): boolean =>
  a.x < b.x + b.wide && b.x < a.x + a.wide && a.y < b.y + b.high && b.y < a.y + a.high;

/** Numbers of cuts on their lines, then of pieces with their names, none on another; what finds no room is left out. */
function numbersOf(sheet: SheetOnPaper, frame: Frame) {
  const taken: Spread[] = [];
  const said: Said[] = [];
  const spreads: Spread[] = [];
  const put = (spread: Spread, texts: readonly Said[]): boolean => {
    if (taken.some((other) => meet(spread, other))) return false;
    taken.push(spread);
    said.push(...texts);
    return true;
  };
  for (const place of sheet.places) {
    const [run, code] = [runOf(place, frame), sheet.cuts.get(place.path)];
    const on = run && code !== undefined ? cutSpreads(code, run, place, frame, sheet.widthOf) : [];
    const found = on.find(({ spread, text }) => put(spread, [text]));
    if (found) spreads.push(found.spread);
  }
  for (const place of sheet.places) {
    const own = place.branch.is === 'piece' ? sheet.pieces.get(place.branch.piece) : undefined;
    if (!own) continue;
    pieceSpreads(own, place, frame, sheet.widthOf).some(({ spread, texts }) => put(spread, texts));
  }
  return { said, spreads };
}

/** Where the number of a cut may stand: along its line, inside what is cut. */
function cutSpreads(
  text: string,
  [[x1, y1], [x2, y2]]: readonly [Spot, Spot],
  { from, size }: Place,
  { x, y }: Frame,
  widthOf: WidthOf,
) {
  const wide = widthOf(text, number, true) + 2 * white;
  const high = number + 2 * white;
  const [left, top] = [x(from.wide), y(from.long)];
  const [right, end] = [left + x(size.wide), top + y(size.long)];
  return [0.02, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9].flatMap((share) => {
    const middle: Spot = [x1 + (x2 - x1) * share, y1 + (y2 - y1) * share];
    const at: Spot = [
      Math.max(left, Math.min(middle[0] - wide / 2, right - wide)),
      Math.max(top, Math.min(middle[1] - high / 2, end - high)),
    ];
    if (wide > right - left || high > end - top) return [];
    const spread = { x: at[0], y: at[1], wide, high };
    const baseline: Spot = [at[0] + white, at[1] + white + number];
    return [{ spread, text: { at: baseline, text, look: { high: number, bold: true as const } } }];
  });
}

/** Where a piece may be numbered and named in its patch: both, else its number alone. */
function pieceSpreads(
  { no, name }: { readonly no: number; readonly name: string },
  { from, size }: Place,
  { x, y }: Frame,
  widthOf: WidthOf,
) {
  const [left, top, wide, high] = [x(from.wide), y(from.long), x(size.wide), y(size.long)];
  const own = `${no}`;
  const ownWide = widthOf(own, number, true);
  const tries = [
    { wide: ownWide + 1.5 + widthOf(name, word), named: true },
    { wide: ownWide, named: false },
  ].filter((one) => one.wide + 2 * white <= wide && number * 1.4 + 2 * white <= high);
  return tries.flatMap(({ wide: need, named }) =>
    [0.5, 0.3, 0.7, 0.15, 0.85].map((share) => {
      const at: Spot = [
        left + (wide - need) / 2,
        top + white + number + (high - number * 1.4 - 2 * white) * share,
      ];
      const spread = { x: at[0], y: at[1] - number, wide: need, high: number * 1.4 };
      const texts: readonly Said[] = [
        { at, text: own, look: { high: number, bold: true } },
        ...(named ? [{ at: [at[0] + ownWide + 1.5, at[1]] as Spot, text: name, look: { high: word } }] : []),
      ];
      return { spread, texts };
    }),
  );
}
