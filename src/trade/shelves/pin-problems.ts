import {
  absolute,
  add,
  half,
  inches,
  isNegative,
  isPositive,
  type Length,
  less,
  longest,
  negate,
  over,
  shortest,
  subtract,
  sum,
  times,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Inside } from '../carcass/case';
import type { Sizes } from '../carcass/sizes';
import { holeRow } from './hole-row';
import { nearLine } from './lines';
import { looseDeep, looseLong } from './loose';
import type { PinProblem, PinWarning } from './pin-problem';
import { type Pins, pinsOf } from './pins';

/** What is said of one set of loose shelves, and of its holes where they are laid out. */
type Own = { readonly i: Inside; readonly pins: Pins };

const looseIn = ({ case: c }: Sizes): readonly Inside[] => c.inside.filter((i) => i.kind === 'loose');

const pinned = (sizes: Sizes): readonly Own[] =>
  looseIn(sizes).flatMap((i) => {
    const pins = pinsOf(sizes, i);
    return pins ? [{ i, pins }] : [];
  });

/** What keeps rows of holes from being bored, and loose shelves from being cut, by how much. */
export const pinProblems = (sizes: Sizes): readonly PinProblem[] => [
  ...looseIn(sizes).flatMap((i) => noShelf(sizes, i)),
  ...pinned(sizes).flatMap((own) => ownProblems(sizes, own)),
  ...facing(sizes).flatMap(({ a, b, thick }): readonly PinProblem[] => {
    const web = subtract(thick, add(a.pins.deep, b.pins.deep));
    const most = half(subtract(thick, leastWeb(sizes, thick)));
    return isPositive(web) ? [] : [{ code: 'holes-meet', in: b.i.id, with: a.i.id, by: negate(web), most }];
  }),
];

/** What is worth a look in rows that can be bored. */
export const pinWarnings = (sizes: Sizes): readonly PinWarning[] => [
  ...pinned(sizes).flatMap((own) => ownWarnings(sizes, own)),
  ...facing(sizes).flatMap(({ a, b, thick }): readonly PinWarning[] => {
    const web = subtract(thick, add(a.pins.deep, b.pins.deep));
    const least = leastWeb(sizes, thick);
    return less(web, least) ? [{ code: 'hole-web', in: b.i.id, web, least, both: true }] : [];
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

function ownProblems(sizes: Sizes, { i, pins }: Own): readonly PinProblem[] {
  const { first, top, pitch, dia, deep, front, rear } = pins;
  const row = holeRow({ span: sizes.clearHeight.value, first, top, pitch });
  const thickness = thinnestWall(sizes, i.bay);
  const crossed = subtract(dia, subtract(rear, front));
  const offFront = subtract(half(dia), front);
  const offRear = subtract(add(rear, half(dia)), sizes.inner.value);
  const found: PinProblem[] = [];
  if (!isPositive(pitch) || !less(dia, pitch)) found.push({ code: 'holes-touch', in: i.id, dia });
  else if (row.count === 0) found.push({ code: 'no-hole', in: i.id, by: negate(row.left) });
  if (isPositive(offFront)) found.push({ code: 'row-off', in: i.id, row: 'front', by: offFront });
  if (isPositive(offRear)) found.push({ code: 'row-off', in: i.id, row: 'rear', by: offRear });
  if (!isNegative(crossed)) found.push({ code: 'rows-cross', in: i.id, by: crossed });
  if (!less(deep, thickness)) found.push({ code: 'hole-through', in: i.id, depth: deep, thickness });
  return found;
}

function ownWarnings(sizes: Sizes, { i, pins }: Own): readonly PinWarning[] {
  const thickness = thinnestWall(sizes, i.bay);
  const web = subtract(thickness, pins.deep);
  const least = leastWeb(sizes, thickness);
  const { count } = holeRow({ ...pins, span: sizes.clearHeight.value });
  const each = pins.metric ? undefined : nearLine(pins.pitch);
  return [
    ...(pins.leftOut.length > 0
      ? [{ code: 'holes-left-out', in: i.id, numbers: pins.leftOut } as const]
      : []),
    ...(less(web, least) ? [{ code: 'hole-web', in: i.id, web, least, both: false } as const] : []),
    ...(each && each.n !== 0n
      ? [{ code: 'not-32', in: i.id, each, last: times(each, BigInt(count - 1)) } as const]
      : []),
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

type Facing = { readonly a: Own; readonly b: Own; readonly thick: Length };

/** Sets of shelves on either side of a partition with a hole of one behind a hole of the other. */
function facing(sizes: Sizes): readonly Facing[] {
  const all = pinned(sizes);
  const thick = sizes.thick('partition');
  return all.flatMap((a) =>
    all
      .filter((b) => b.i.bay === a.i.bay + 1 && opposed(sizes, a.pins, b.pins))
      .map((b) => ({ a, b, thick })),
  );
}

const holesOf = (sizes: Sizes, { first, top, pitch, leftOut }: Pins): readonly Length[] =>
  Array.from({ length: holeRow({ span: sizes.clearHeight.value, first, top, pitch }).count }, (_, k) => k)
    .filter((k) => !leftOut.includes(k + 1))
    .map((k) => add(first, times(pitch, BigInt(k))));

/** Two round holes share wood where their middles are nearer than their radii together. */
function opposed(sizes: Sizes, a: Pins, b: Pins): boolean {
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
