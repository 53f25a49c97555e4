import {
  absolute,
  asNumber,
  atMost,
  fromMillimetres,
  howMany,
  inches,
  isPositive,
  type Length,
  over,
  type Ratio,
  ratio,
  subtract,
  times,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import type { Units } from '../../length/units';

/** How long the bar is that a print is checked by. Inches. */
export const barOf: Readonly<Record<Units, Length>> = { in: inches(4n), mm: fromMillimetres(100n) };

/** How far a whole stick may be off on the tape of the job. Common practice, no source. Inches. */
export const stickMayBeOff: Readonly<Record<Units, Length>> = {
  in: inches(1n, 32n),
  mm: fromMillimetres(8n, 10n),
};

/** What a bar may be off, in 1, and from where it is another bar or another unit. Common practice, no source. */
const most = ratio(1n, 1000n);
const wrong = ratio(1n, 10n);

/** A bar as it was printed. Inches. */
type BarAsked = {
  /** As drawn, > 0, and as read off the paper. */
  readonly drawn: Length;
  readonly read: Length;
  /** How long the stick is. */
  readonly stick: Length;
};

type BarRead = {
  /** By how much of itself the print is off: > 0 too long. */
  readonly off: Ratio;
  readonly passes: boolean;
  /** What that comes to over the stick: > 0 too long. Inches. */
  readonly adds: Length;
  /** The scale to print at instead, 1 being as it was. */
  readonly reprintAt: Ratio;
};

type BarProblem =
  | { readonly code: 'not-positive' }
  /** Off by over a tenth: another line, or another unit, was read. */
  | { readonly code: 'wrong-bar'; readonly drawn: Length };

/**
 * Whether a print may be trusted by its bar: fails where it is off by over 1 in 1,000.
 *
 * @example readBar({ drawn, read: 97 mm, stick: 1632 mm }) // 48.96 mm short, reprint at 100/97: Example 2 of paper
 */
export function readBar({ drawn, read, stick }: BarAsked): Result<BarRead, BarProblem> {
  if (!isPositive(read)) return err({ code: 'not-positive' });
  const off = howMany(subtract(read, drawn), drawn);
  const size = howMany(absolute(subtract(read, drawn)), drawn);
  if (size.gt(wrong)) return err({ code: 'wrong-bar', drawn });
  return ok({
    off,
    passes: size.lte(most),
    adds: times(stick, off),
    reprintAt: howMany(drawn, read),
  });
}

/** What a bar read to within `doubt` can hide over the whole stick. Inches. */
export const hiddenBy = (stick: Length, drawn: Length, doubt: Length): Length =>
  over(times(stick, asNumber(doubt)), asNumber(drawn));

/** The length of a whole stick on the tape of the job, from its first to its last mark: this check decides. */
export function readWhole(stick: Length, read: Length, units: Units) {
  const off = subtract(read, stick);
  return { off, passes: atMost(absolute(off), stickMayBeOff[units]) };
}
