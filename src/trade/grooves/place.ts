import {
  add,
  compare,
  half,
  howMany,
  isNegative,
  type Length,
  less,
  over,
  subtract,
  sum,
  times,
} from '../../length/length';
import { wholePart } from '../../length/round';
import type { Point } from './board';

/**
 * From the figure given for a groove to its near edge: centre gives half a width less, far a whole width less.
 *
 * @param at figure given, inches
 * @param width groove width, inches, > 0
 * @example nearFrom(inches(3n), inches(1n, 2n), 'centre') // 2 3/4
 */
export function nearFrom(at: Length, width: Length, point: Point): Length {
  if (point === 'near') return at;
  return subtract(at, point === 'centre' ? half(width) : width);
}

/**
 * Near edges of n grooves at a pitch: each off the first, so no error is added up.
 *
 * @param first near edge of the first, inches
 * @param pitch centre to centre, inches
 * @param n how many, whole, >= 0
 * @example atPitch(inches(17n, 8n), inches(29n, 16n), 2) // 2 1/8, 3 15/16
 */
export function atPitch(first: Length, pitch: Length, n: number): readonly Length[] {
  return Array.from({ length: n }, (_, k) => add(first, times(pitch, BigInt(k))));
}

type Fill = {
  readonly count: number;
  /** Room not used between the last groove and the end room, inches, >= 0; negative when none fits. */
  readonly leftOver: Length;
};

/**
 * As many grooves as fit: floor((span - start - end - width) / pitch) + 1. The + 1 is the groove at the start itself.
 *
 * @param room span - start - end room - width, inches
 * @param pitch centre to centre, inches, > 0
 * @example fill(inches(1717n, 32n), inches(29n, 16n)) // 30 grooves, 1 3/32 over: Example 1 of grooves
 */
export function fill(room: Length, pitch: Length): Fill {
  if (isNegative(room)) return { count: 0, leftOver: room };
  const steps = wholePart(howMany(room, pitch));
  return { count: Number(steps) + 1, leftOver: subtract(room, times(pitch, steps)) };
}

type Openings = { readonly opening: Length; readonly nears: readonly Length[] };

/**
 * Equal clear openings between the faces of n parts over a span: (span - n parts)/(n + 1).
 * A groove wider than its part is centred on the part.
 *
 * @param span inches; @param n whole >= 1; @param part part thickness; @param width groove width >= part
 * @returns the opening (0 or less when the parts take the whole span) and near edges from the start of the span
 * @example openings(inches(389n, 16n), 11, { part: inches(11n, 32n), width: inches(13n, 32n) }).opening
 *   // 1 91/128: Example 6 of grooves
 */
export function openings(
  span: Length,
  n: number,
  { part, width }: { readonly part: Length; readonly width: Length },
): Openings {
  const opening = over(subtract(span, times(part, BigInt(n))), BigInt(n + 1));
  const ease = half(subtract(width, part));
  const first = subtract(opening, ease);
  return { opening, nears: atPitch(first, add(opening, part), n) };
}

/** The most parts that leave any opening at all over a span. @example mostParts(inches(10n), inches(3n)) // 3 */
export function mostParts(span: Length, part: Length): number {
  const whole = wholePart(howMany(span, part));
  const exact = compare(times(part, whole), span) === 0;
  return Math.max(0, Number(whole) - (exact ? 1 : 0));
}

/**
 * The pitch really cut, from the first and the last groove as found: cut the mating panel to it.
 *
 * @param first, last near edges as read, inches; @param n how many grooves, >= 2
 * @throws RangeError under two grooves, or if the last does not lie past the first
 * @example realPitch(inches(223n, 32n), inches(3809n, 64n), 30) // 1 1507/1856: Example 15 of grooves
 */
export function realPitch(first: Length, last: Length, n: number): Length {
  if (n < 2 || !less(first, last)) throw new RangeError('a pitch needs two grooves, the last past the first');
  return over(subtract(last, first), BigInt(n - 1));
}

/**
 * Error of the last groove when each is stepped off the one before it (a pin, or a pile of like blocks).
 *
 * @param stepError error of one step, inches, any sign
 * @example drift(inches(1n, 128n), 11) // 10/128 = 5/64: Example 7 of grooves
 */
export function drift(stepError: Length, n: number): Length {
  return times(stepError, BigInt(Math.max(0, n - 1)));
}

/**
 * Where a run of n grooves at a pitch must start to have equal ends: cut end for end it is the same board.
 *
 * @param length board length, inches
 * @example centredStart(inches(75n, 2n), inches(29n, 16n), { n: 3, width: inches(13n, 32n) })
 *   // 16 47/64: Example 14 of grooves
 */
export function centredStart(
  length: Length,
  pitch: Length,
  { n, width }: { readonly n: number; readonly width: Length },
): Length {
  return half(subtract(length, sum([times(pitch, BigInt(Math.max(0, n - 1))), width])));
}
