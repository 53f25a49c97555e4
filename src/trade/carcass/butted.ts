import { add, half, isPositive, type Length, subtract } from '../../length/length';
import type { Case, StockRole } from './case';
import { endAt, type Flat, jointAt, pastOf, pastTop } from './meetings';
import { nailerWide } from './nailer-places';
import type { Part } from './part';
import type { PartName, TakesPart } from './part-name';
import type { Worked } from './parts';

/** What may be joined with nothing cut for it. */
export type Butted = 'bottom' | 'top' | 'partition' | 'shelf';

const isUncut = (c: Case, meeting: Parameters<typeof jointAt>[1]): boolean =>
  ['butt', 'over'].includes(jointAt(c, meeting));

/**
 * What of a case is held by screws, dowels or the like alone, for nothing is cut for one of its ends at least.
 *
 * @example buttedIn({ ...c, bottomJoint: 'butt' }) // ['bottom']
 */
export function buttedIn(c: Case): readonly Butted[] {
  const flat = (which: Flat) => isUncut(c, which) || isUncut(c, endAt(which, 'right'));
  return [
    ...(flat('bottom') ? (['bottom'] as const) : []),
    ...(c.hasTop && flat('top') ? (['top'] as const) : []),
    ...(c.partitions > 0 && isUncut(c, 'partition') ? (['partition'] as const) : []),
    ...(c.inside.some(({ kind }) => kind === 'fixed') && isUncut(c, 'shelf') ? (['shelf'] as const) : []),
  ];
}

/**
 * A line on the outer face of a part, square across it, that straight screws go in along: the middle of what they hold
 * behind it, from the reference end. Inches.
 */
type ScrewLine = { readonly holds: TakesPart; readonly middle: Length };

/** Its lines, by the part they are drawn on. */
type ScrewLines = {
  readonly on: PartName;
  readonly end: string;
  readonly lines: readonly ScrewLine[];
};

/**
 * Where straight screws go through the parts of a case into the ends of others that nothing is cut for.
 *
 * @example screwLines(worked)[0].lines[0].middle // 4 31/64: a bottom of 23/32 butted 4 1/8 off the floor
 */
export function screwLines(worked: Worked): readonly ScrewLines[] {
  return worked.parts.flatMap((part) => {
    const lines = [...marked(worked, part), ...flush(worked, part), ...laidOver(worked, part)];
    return lines.length > 0 ? [{ on: part.name, end: part.end, lines: lines.sort(byPlace) }] : [];
  });
}

const byPlace = (a: ScrewLine, b: ScrewLine): number => a.middle.compare(b.middle);

/** What stands on a line of the part. */
const marked = ({ sizes }: Worked, { lines = [] }: Part): readonly ScrewLine[] =>
  lines.flatMap(({ takes, near }) =>
    takes.part === 'strip' || takes.part === 'runner' || takes.part === 'kicker'
      ? []
      : [{ holds: takes, middle: add(near, half(highOf(sizes, takes.part))) }],
  );

/** How high it stands there: a nailer lies on its edge. */
const highOf = ({ case: c, thick }: Worked['sizes'], part: StockRole): Length =>
  part === 'nailer' ? nailerWide(c) : thick(part);

/** What is butted flush with the ends of a side: half its own thickness from that end. */
function flush(
  { sizes: { case: c, thick } }: Worked,
  { name: { role }, length }: Part,
): readonly ScrewLine[] {
  if (role !== 'left' && role !== 'right') return [];
  const low = jointAt(c, endAt('bottom', role)) === 'butt' && !(c.feet && isPositive(c.feet));
  const high = c.hasTop && jointAt(c, endAt('top', role)) === 'butt' && !isPositive(pastTop(c));
  const middle = (flat: Flat) => half(thick(flat));
  return [
    ...(low ? [{ holds: { part: 'bottom' }, middle: middle('bottom') } as const] : []),
    ...(high
      ? [{ holds: { part: 'top' }, middle: subtract(length.mark.value, middle('top')) } as const]
      : []),
  ];
}

/** A bottom or top that lies over the ends of the sides: over the middle of each. */
function laidOver(
  { sizes: { case: c, thick } }: Worked,
  { name: { role }, length }: Part,
): readonly ScrewLine[] {
  if ((role !== 'bottom' && role !== 'top') || jointAt(c, role) !== 'over') return [];
  const from = add(pastOf(c, role), half(thick('side')));
  const holds: { readonly part: StockRole } = { part: 'side' };
  return [
    { holds, middle: from },
    { holds, middle: subtract(length.mark.value, from) },
  ];
}
