import {
  fromMillimetres,
  howMany,
  isNegative,
  type Length,
  over,
  subtract,
  times,
  zero,
} from '../../length/length';
import { toWhole } from '../../length/round';
import { holeRow } from './hole-row';

/** Every hole of the lines stands so far from the next: 32 mm, an open convention. Never 1 1/4. */
export const linePitch = fromMillimetres(32n);

/**
 * A row in 32 mm steps, as many as fit, with equal ends: a panel that long may be bored from either end.
 *
 * @param span from end to end; @param least between an end and the middle of the first hole. Inches
 * @returns how many, and how far the first stands from either end, inches; none where `least` leaves no room
 * @example balanced(fromMillimetres(1560n), fromMillimetres(40n)).count // 47: Example 4 of shelves
 */
export function balanced(span: Length, least: Length): { readonly count: number; readonly end: Length } {
  const { count } = holeRow({ span, first: least, top: least, pitch: linePitch });
  const steps = times(linePitch, BigInt(Math.max(0, count - 1)));
  return { count, end: over(subtract(span, steps), 2n) };
}

/**
 * The rear line: the most whole steps behind the front one that leave the margin.
 *
 * @param deep of the panel, @param front of the front line from its front edge, @param margin behind the rear line
 * @returns from the front edge, inches; no farther than the front line where there is no room for a step
 * @example rearLine({ deep, front, margin }) // 421 mm: Example 4 of shelves
 */
export function rearLine(at: {
  readonly deep: Length;
  readonly front: Length;
  readonly margin: Length;
}): Length {
  const room = subtract(subtract(at.deep, at.front), at.margin);
  const steps = isNegative(room) ? 0n : toWhole(howMany(room, linePitch), 'floor');
  return at.front.add(times(linePitch, steps)) as Length;
}

/** How much less than 32 mm a pitch is, where it looks like it and is not: under 1/32 off. Inches. */
export function nearLine(pitch: Length): Length {
  const off = subtract(linePitch, pitch);
  return off.abs().lt(closest) ? off : zero;
}

/** Nearer than this, one pitch is taken for the other by a ruler. Common practice, no source. */
const closest = over(fromMillimetres(127n), 160n);
