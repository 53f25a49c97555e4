import {
  absolute,
  add,
  atMost,
  half,
  inches,
  isPositive,
  type Length,
  less,
  longest,
  shortest,
  subtract,
  times,
  zero,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Units } from '../../length/units';
import type { FastenerRow } from '../fasteners/row';
import type { Butted } from './butted';
import type { FastenedEnd } from './fastened';
import { type Clash, clashesOf } from './fastener-clashes';
import { type Fastening, rowsFor } from './fastener-rows';
import type { Along, Part } from './part';
import type { PartName, Takes, TakesPart } from './part-name';

/** Left between the holes of two faces. Common practice, no source. Inches. */
const leave = inches(1n, 8n);

/**
 * `holes-meet`: those of both faces of a partition leave so much too little between them; either moved up or down by
 * `move` clears the other.
 * `in-groove`: a hole comes so far into a groove along the part. `in-cut`: into something else that is cut in it.
 * Inches, > 0.
 */
export type FastenerFault =
  | {
      readonly code: 'holes-meet';
      readonly on: PartName;
      readonly holds: readonly TakesPart[];
      readonly by: Length;
      readonly move: Length;
    }
  | { readonly code: 'in-groove'; readonly on: PartName; readonly takes: Takes; readonly by: Length }
  | ({ readonly code: 'in-cut'; readonly on: PartName } & Clash);

type RowsByPart = ReadonlyMap<string, readonly FastenerRow[]>;

type Beside = {
  readonly what: Butted;
  /** What takes up wood for other joints already. */
  readonly others: RowsByPart;
  readonly units?: Units | undefined;
};

/**
 * Why holes cannot be bored as they are set out: everything they would run into.
 *
 * @param ends with all that is cut in their parts, also what was added by hand
 */
export function fastenerFaults(
  ends: readonly FastenedEnd[],
  fastening: Fastening,
  { what, others, units }: Beside,
): readonly FastenerFault[] {
  const taken = takenUp(ends, what, fastening);
  const least = figureIn(units, leave);
  const parts = new Map(ends.flatMap(({ part, mate }) => [part, mate].map((one) => [one.id, one] as const)));
  return [
    ...ends.flatMap((end, k) =>
      ends.slice(k + 1).flatMap((other) => meet(end, other, inMates(fastening), least)),
    ),
    ...ends.flatMap((end) => [
      ...grooveAt(end, inMates(fastening), 'mate'),
      ...grooveAt(end, fastening, 'part'),
    ]),
    ...[...parts.values()].flatMap((part) =>
      clashesOf(part, taken.get(part.id) ?? [], others.get(part.id) ?? []).map(
        (clash) => ({ code: 'in-cut', on: part.name, ...clash }) as const,
      ),
    ),
  ];
}

/** The rows a joint takes up wood by: also where nothing is bored, for a screw bites there. */
export function takenUp(ends: readonly FastenedEnd[], what: Butted, fastening: Fastening): RowsByPart {
  const rows = new Map(rowsFor(ends, what, fastening));
  if (!fastening.slant) return rows;
  for (const [part, own] of rowsFor(ends, what, inMates(fastening))) {
    const bitten = own.filter((row) => row.in.at === 'face');
    rows.set(part, [...(rows.get(part) ?? []), ...bitten]);
  }
  return rows;
}

/** In the mate a slant screw takes up a hole as wide as its head, and as far to both sides as its tip drifts. */
function inMates({ slant, drift = zero, ...fastening }: Fastening): Fastening {
  return slant ? { ...fastening, thick: add(fastening.thick, times(drift, 2n)) } : fastening;
}

/** Rows in the two faces of one partition, at heights that do not clear each other, too deep for its thickness. */
function meet(
  a: FastenedEnd,
  b: FastenedEnd,
  { thick, inFace }: Fastening,
  least: Length,
): readonly FastenerFault[] {
  const { thickness } = a.mate;
  if (a.mate.id !== b.mate.id || a.on === b.on || !thickness) return [];
  const move = subtract(thick, absolute(subtract(a.near, b.near)));
  const by = subtract(add(times(inFace, 2n), least), thickness);
  if (!isPositive(move) || !isPositive(by)) return [];
  return [{ code: 'holes-meet', on: a.mate.name, holds: [a.holds, b.holds], by, move }];
}

/** The grooves along a part that its holes come into: of the face that is bored, or deep enough to reach an end's. */
function grooveAt(
  end: FastenedEnd,
  { thick, long = thick, from, marks, slant }: Fastening,
  of: 'part' | 'mate',
): readonly FastenerFault[] {
  const { thickness, name, along = [], width } = end[of];
  const wood = thickness && subtract(shortest(from, subtract(thickness, from)), half(thick));
  // slanted holes come out in a face: nothing is beside them
  const beside = slant ? zero : wood;
  return along.flatMap((groove): readonly FastenerFault[] => {
    const { edge, face, depth, takes } = groove;
    if (edge.at !== 'edge') return [];
    if (of === 'mate' && ((end.on && face && face !== end.on) || !crosses(groove, end))) return [];
    if (of === 'part' && (!beside || atMost(depth, beside) || !reaches(groove, end))) return [];
    const wide = width.mark.value;
    const near = edge.named === 'front' ? groove.near : subtract(wide, add(groove.near, groove.width));
    const by = marks.map((mark) => overlap(subtract(mark, half(long)), long, near, groove.width));
    const [first, ...rest] = by.filter(isPositive);
    return first ? [{ code: 'in-groove', on: name, takes, by: longest(first, ...rest) }] : [];
  });
}

/** How far two stretches lie over each other; nothing or less where they are clear. */
const overlap = (a: Length, long: Length, b: Length, wide: Length): Length =>
  subtract(shortest(add(a, long), add(b, wide)), longest(a, b));

/** Whether a groove runs past the line of the row; stopped, it may end before it. */
function crosses({ from = zero, to }: Along, { mate, off, near, part }: FastenedEnd): boolean {
  const far = add(near, part.thickness ?? zero);
  const [lo, hi] = off === mate.end ? [near, far] : [flipped(mate, far), flipped(mate, near)];
  return less(from, hi) && (to === undefined || less(lo, to));
}

const flipped = ({ length }: Part, x: Length): Length => subtract(length.sum.value, x);

/** Whether a groove runs out at that end. */
const reaches = ({ from, to }: Along, { part, end }: FastenedEnd): boolean =>
  end === part.end
    ? from === undefined || !isPositive(from)
    : to === undefined || atMost(part.length.sum.value, to);
