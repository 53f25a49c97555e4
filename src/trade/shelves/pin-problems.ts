import {
  absolute,
  add,
  half,
  inches,
  isNegative,
  isPositive,
  isZero,
  type Length,
  less,
  longest,
  negate,
  over,
  shortest,
  subtract,
  sum,
  times,
  zero,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Inside } from '../carcass/case';
import type { Sizes } from '../carcass/sizes';
import { holeRow } from './hole-row';
import { nearLine } from './lines';
import { looseDeep, looseLong } from './loose';
import type { PinProblem, PinWarning, ShelfCut } from './pin-problem';
import { type Pins, pinsOf } from './pins';
import { sameRows } from './same-rows';
import { type StripPiece, stripsOf } from './strips';
import { woodEdging } from './wood-edging';

/** A row across the walls of a bay, its edges from the front edge. Inches. */
type Band = { readonly low: Length; readonly high: Length };

/** What is cut in the walls of a bay for one set of loose shelves. */
type Own = {
  readonly i: Inside;
  readonly cut: ShelfCut;
  readonly front: Band;
  readonly rear: Band;
  readonly deep: Length;
  readonly pins?: Pins;
};

const looseIn = ({ case: c }: Sizes): readonly Inside[] => c.inside.filter((i) => i.kind === 'loose');

const cutFor = (sizes: Sizes): readonly Own[] =>
  looseIn(sizes).flatMap((i): readonly Own[] => {
    const pins = pinsOf(sizes, i);
    if (pins) {
      const round = (off: Length): Band => ({
        low: subtract(off, half(pins.dia)),
        high: add(off, half(pins.dia)),
      });
      return [{ i, cut: 'hole', front: round(pins.front), rear: round(pins.rear), deep: pins.deep, pins }];
    }
    const strips = stripsOf(sizes, i);
    if (!strips) return [];
    const wide = (near: Length): Band => ({ low: near, high: add(near, strips.width) });
    return [{ i, cut: 'strip', front: wide(strips.front), rear: wide(strips.rear), deep: strips.deep }];
  });

/** What keeps the walls from being bored or grooved, and loose shelves from being cut, by how much. */
export const pinProblems = (sizes: Sizes): readonly PinProblem[] => [
  ...looseIn(sizes).flatMap((i) => [...noShelf(sizes, i), ...noStrips(sizes, i)]),
  ...cutFor(sizes).flatMap((own) => [...rowProblems(sizes, own), ...placeProblems(sizes, own)]),
  ...facing(sizes).flatMap(({ a, b, thick }): readonly PinProblem[] => {
    const web = subtract(thick, add(a.deep, b.deep));
    const most = half(subtract(thick, leastWeb(sizes, thick)));
    return isPositive(web)
      ? []
      : [{ code: 'holes-meet', in: b.i.id, cut: b.cut, with: a.i.id, by: negate(web), most }];
  }),
];

/** What is worth a look in walls that can be cut. */
export const pinWarnings = (sizes: Sizes): readonly PinWarning[] => [
  ...cutFor(sizes).flatMap((own) => ownWarnings(sizes, own)),
  ...looseIn(sizes).flatMap((i): readonly PinWarning[] => {
    const past = woodEdging(sizes, i)?.past ?? zero;
    return isNegative(past) ? [{ code: 'edge-thin', in: i.id, by: negate(past) }] : [];
  }),
  ...beside(sizes),
  ...facing(sizes).flatMap(({ a, b, thick }): readonly PinWarning[] => {
    const web = subtract(thick, add(a.deep, b.deep));
    const least = leastWeb(sizes, thick);
    return less(web, least) ? [{ code: 'hole-web', in: b.i.id, cut: b.cut, web, least, both: true }] : [];
  }),
];

function noShelf(sizes: Sizes, i: Inside): readonly PinProblem[] {
  if (!i.heldBy) return [];
  const off = (terms: ReturnType<typeof looseDeep>) => sum(terms.map(({ value }) => value));
  const bay = sizes.bays[i.bay - 1]?.value;
  const long = bay && add(bay, off(looseLong(sizes.case, i)));
  const deep = add(sizes.inner.value, off(looseDeep(i)));
  const none = (left: Length | undefined, across: boolean): readonly PinProblem[] =>
    left && !isPositive(left) ? [{ code: 'no-shelf', in: i.id, across, by: negate(left) }] : [];
  return [...none(long, true), ...none(deep, false)];
}

/** Of a row of holes alone: how they stand over each other. */
function rowProblems(sizes: Sizes, { i, pins }: Own): readonly PinProblem[] {
  if (!pins) return [];
  if (!isPositive(pins.pitch) || !less(pins.dia, pins.pitch))
    return [{ code: 'holes-touch', in: i.id, dia: pins.dia }];
  const row = holeRow({ ...pins, span: sizes.clearHeight.value });
  return row.count === 0 ? [{ code: 'no-hole', in: i.id, by: negate(row.left) }] : [];
}

/** Where the rows are across the wall, and how deep they go into it. */
function placeProblems(sizes: Sizes, { i, cut, front, rear, deep }: Own): readonly PinProblem[] {
  const thickness = thinnestWall(sizes, i.bay);
  const crossed = subtract(front.high, rear.low);
  const offRear = subtract(rear.high, sizes.inner.value);
  const found: PinProblem[] = [];
  if (isNegative(front.low))
    found.push({ code: 'row-off', in: i.id, cut, row: 'front', by: negate(front.low) });
  if (isPositive(offRear)) found.push({ code: 'row-off', in: i.id, cut, row: 'rear', by: offRear });
  if (!isNegative(crossed)) found.push({ code: 'rows-cross', in: i.id, cut, by: crossed });
  if (!less(deep, thickness)) found.push({ code: 'hole-through', in: i.id, cut, depth: deep, thickness });
  return found;
}

function ownWarnings(sizes: Sizes, { i, cut, deep, pins }: Own): readonly PinWarning[] {
  const thickness = thinnestWall(sizes, i.bay);
  const web = subtract(thickness, deep);
  const least = leastWeb(sizes, thickness);
  const crossed = cut === 'strip' && sizes.case.inside.some((x) => x.kind === 'trays' && x.bay === i.bay);
  return [
    ...(pins ? rowWarnings(sizes, i, pins) : []),
    ...(less(web, least) ? [{ code: 'hole-web', in: i.id, cut, web, least, both: false } as const] : []),
    ...(crossed ? [{ code: 'strips-crossed', in: i.id } as const] : []),
    ...(cut === 'strip' ? pieceWarnings(sizes, i) : []),
  ];
}

const piecesOf = (sizes: Sizes, i: Inside): readonly StripPiece[] => stripsOf(sizes, i)?.pieces ?? [];

/** Strips of which nothing is left in any opening. */
function noStrips(sizes: Sizes, i: Inside): readonly PinProblem[] {
  const [first, ...rest] = piecesOf(sizes, i).map(({ long }) => long);
  const most = first && longest(first, ...rest);
  return most && !isPositive(most) ? [{ code: 'no-strips', in: i.id, by: negate(most) }] : [];
}

/** Openings that take no strip, and strips sold shorter than an opening wants. */
function pieceWarnings(sizes: Sizes, i: Inside): readonly PinWarning[] {
  const pieces = piecesOf(sizes, i);
  const none = pieces.filter(({ long }) => !isPositive(long));
  const [first, ...rest] = pieces.map(({ long }) => long);
  const most = first && longest(first, ...rest);
  const { endRoom = zero, stripSold: sold } = i;
  return [
    ...none.map(({ long }) => ({ code: 'no-strip', in: i.id, opening: add(long, endRoom) }) as const),
    ...(most && sold && less(sold, most)
      ? [{ code: 'strips-short', in: i.id, by: subtract(most, sold) } as const]
      : []),
  ];
}

function rowWarnings(sizes: Sizes, i: Inside, pins: Pins): readonly PinWarning[] {
  const { count } = holeRow({ ...pins, span: sizes.clearHeight.value });
  const each = pins.metric ? zero : nearLine(pins.pitch);
  return [
    ...(pins.leftOut.length > 0
      ? [{ code: 'holes-left-out', in: i.id, numbers: pins.leftOut } as const]
      : []),
    ...(isZero(each)
      ? []
      : [{ code: 'not-32', in: i.id, each, last: times(each, BigInt(count - 1)) } as const]),
  ];
}

/** The larger of a third of the wall and 3/16 should stay. Common practice, no source. */
const leastWeb = ({ case: c }: Sizes, thick: Length): Length =>
  longest(over(thick, 3n), figureIn(c.units, inches(3n, 16n)));

/** The thinner of the two walls of a bay. */
function thinnestWall({ thick, case: c }: Sizes, bay: number): Length {
  const left = thick(bay === 1 ? 'side' : 'partition');
  return shortest(left, thick(bay === c.partitions + 1 ? 'side' : 'partition'));
}

/** Sets of one bay that are not bored alike, and run into each other. */
function beside(sizes: Sizes): readonly PinWarning[] {
  const all = cutFor(sizes).filter(({ i }) => !sameRows(sizes, i));
  return all.flatMap((b, k) =>
    all.slice(0, k).flatMap((a): readonly PinWarning[] => {
      if (a.i.bay !== b.i.bay || !opposed(sizes, a, b)) return [];
      return [{ code: 'sets-meet', in: b.i.id, with: a.i.id, by: overlapOf(a, b) }];
    }),
  );
}

/** How much farther aside a row has to stand to clear the other, where both overlap most. */
function overlapOf(a: Own, b: Own): Length {
  const by = [a.front, a.rear].flatMap((x) =>
    [b.front, b.rear].map((y) => shortest(subtract(x.high, y.low), subtract(y.high, x.low))),
  );
  return longest(zero, ...by);
}

type Facing = { readonly a: Own; readonly b: Own; readonly thick: Length };

/** Sets of shelves on either side of a partition with a hole of one behind a hole of the other. */
function facing(sizes: Sizes): readonly Facing[] {
  const all = cutFor(sizes);
  const thick = sizes.thick('partition');
  return all.flatMap((a) =>
    all.filter((b) => b.i.bay === a.i.bay + 1 && opposed(sizes, a, b)).map((b) => ({ a, b, thick })),
  );
}

const holesOf = (sizes: Sizes, { first, top, pitch, leftOut }: Pins): readonly Length[] =>
  Array.from({ length: holeRow({ span: sizes.clearHeight.value, first, top, pitch }).count }, (_, k) => k)
    .filter((k) => !leftOut.includes(k + 1))
    .map((k) => add(first, times(pitch, BigInt(k))));

/** A row of one face lies behind a row of the other; of two rows of holes, a hole behind a hole. */
function opposed(sizes: Sizes, a: Own, b: Own): boolean {
  const over = [a.front, a.rear].some((x) =>
    [b.front, b.rear].some((y) => less(x.low, y.high) && less(y.low, x.high)),
  );
  return over && a.pins && b.pins ? holesOpposed(sizes, a.pins, b.pins) : over;
}

/** Two round holes share wood where their middles are nearer than their radii together. */
function holesOpposed(sizes: Sizes, a: Pins, b: Pins): boolean {
  const reach = half(add(a.dia, b.dia));
  const far = reach.mul(reach);
  const asides = [a.front, a.rear]
    .flatMap((x) => [b.front, b.rear].map((y) => absolute(subtract(x, y))))
    .filter((aside) => less(aside, reach));
  if (asides.length === 0) return false;
  const aside = shortest(asides[0] ?? reach, ...asides);
  const ups = holesOf(sizes, b);
  return holesOf(sizes, a).some((up) =>
    ups.some((other) => {
      const off = subtract(up, other);
      return aside.mul(aside).add(off.mul(off)).lt(far);
    }),
  );
}
