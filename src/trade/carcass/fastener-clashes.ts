import { isPositive, type Length, shortest, subtract } from '../../length/length';
import type { FastenerRow } from '../fasteners/row';
import type { Part } from './part';
import { type OtherCut, type Span, type Taken, takenBy, takenIn } from './taken';

/**
 * A row comes into another cut of its part: so much less deep, or moved so far along the part or along the joint, it
 * clears it. Inches, > 0.
 */
export type Clash = { readonly cut: OtherCut; readonly way: keyof Taken; readonly by: Length };

/**
 * What the rows of a part come into: whatever else is cut in it, and rows that hold another joint. A round hole is
 * taken as the square round it. Grooves along its edges are told apart, by the run of the joint.
 *
 * @param part with its cuts; @param rows that are to be cut in it; @param others rows that are cut already
 * @example clashesOf(side, [row], [])[0]?.by // by how much the first of them comes into a dado
 */
export function clashesOf(
  part: Part,
  rows: readonly FastenerRow[],
  others: readonly FastenerRow[],
): readonly Clash[] {
  const { thickness } = part;
  if (!thickness || rows.length === 0) return [];
  const own = rows.flatMap((row) => takenBy(part, row, thickness));
  return [
    ...takenIn(part, thickness).map(({ cut, taken }) => [cut, taken] as const),
    ...others.flatMap((row) => takenBy(part, row, thickness).map((taken) => ['fastener', taken] as const)),
  ].flatMap(([cut, other]) => own.flatMap((taken) => clashOf(cut, taken, other) ?? []));
}

/** How far one must move to clear the other, the way that is shortest; nothing where they are clear. */
function clashOf(cut: OtherCut, a: Taken, b: Taken): Clash | undefined {
  const ways = (['along', 'across', 'into'] as const).map((way) => ({
    cut,
    way,
    by: clears(a[way], b[way]),
  }));
  if (!ways.every(({ by }) => isPositive(by))) return undefined;
  return ways.reduce((best, way) => (way.by.compare(best.by) < 0 ? way : best));
}

const clears = ([a, b]: Span, [c, d]: Span): Length => shortest(subtract(b, c), subtract(d, a));
