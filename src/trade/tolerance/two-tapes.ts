import {
  absolute,
  add,
  asNumber,
  howMany,
  inches,
  isPositive,
  isZero,
  type Length,
  less,
  longest,
  over,
  type Ratio,
  ratio,
  subtract,
  times,
  zero,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { err, ok, type Result } from '../../length/result';
import { grainOf, markAt, type Tape, tapes, unitsOf } from '../../length/tape';

/** One short and one long board, each read on both tapes. Inches. */
export type TapeReadings = {
  readonly short: Length;
  readonly shortOther: Length;
  readonly long: Length;
  readonly longOther: Length;
};

/** How two tapes differ. Lengths in inches, above zero where the other tape reads more. */
export type TwoTapes = {
  /** What the other tape reads for one inch more on the first. */
  readonly rate: Ratio;
  /** What it reads where the first reads nothing: its hook. */
  readonly offset: Length;
  /** How far they part at the longest of the job, and how far wrong that can be. */
  readonly apart: Length;
  readonly doubt: Length;
  /** Farther apart than this one tape does it all. */
  readonly limit: Length;
  /** `apart`: one tape for all. `unsure`: the readings are too coarse to tell. */
  readonly verdict: 'alike' | 'unsure' | 'apart';
};

export type TapesError =
  /** The long board is no longer than the short one. */
  | { readonly code: 'boards-alike' }
  /** The board two tapes part over by more than any two do, and by how much more than the other board. */
  | { readonly code: 'misread'; readonly by: Length };

/** Two tapes whose rates part by more than this were not read right: 1 in 100. Common practice, no source. */
const mostRate = ratio(1n, 100n);

/** One tape for all above this, 1/32 or .8 mm. Common practice, no source. */
const mostApart = inches(1n, 32n);

/**
 * How two tapes differ, from a short and a long board read on both: a hook that is out shifts every reading alike,
 * marks that are out shift it in proportion.
 *
 * @param at inches, all > 0; `reach` the longest of the job, `tape` the marks the boards were read to
 * @returns what they part by at the hook or at the reach, whichever is worse, decides the verdict
 * @example twoTapes(readings, { reach, tape: '1/2 mm' }).value.apart // Example 4 of tolerance: 1.05 mm
 */
export function twoTapes(
  { short, shortOther, long, longOther }: TapeReadings,
  { reach, tape }: { readonly reach: Length; readonly tape: Tape },
): Result<TwoTapes, TapesError> {
  const span = subtract(long, short);
  if (!isPositive(span)) return err({ code: 'boards-alike' });
  const rate = howMany(subtract(longOther, shortOther), span);
  const by = absolute(subtract(subtract(longOther, long), subtract(shortOther, short)));
  if (less(times(span, mostRate), by)) return err({ code: 'misread', by });
  const offset = subtract(shortOther, times(short, rate));
  const apart = subtract(add(offset, times(reach, rate)), reach);
  const doubtAt = (x: Length) => doubtOf({ short, long, mark: grainOf(tape) }, x);
  const limit = figureIn(unitsOf(tape), mostApart);
  const ends = [
    [absolute(offset), doubtAt(zero)],
    [absolute(apart), doubtAt(reach)],
  ] as const;
  const verdict = ends.some(([x]) => less(limit, x))
    ? 'apart'
    : ends.some(([x, doubt]) => less(limit, add(x, doubt)))
      ? 'unsure'
      : 'alike';
  return ok({ rate, offset, apart, doubt: doubtAt(reach), limit, verdict });
}

type Boards = { readonly short: Length; readonly long: Length; readonly mark: Length };

/**
 * How far the figure for a reach can be wrong. Each reading is good to half a mark, so each board is good to one; the
 * two of them turn the line about, and past the boards it swings wider. To the first order: a rate that is one in a
 * hundred off changes it by as little.
 */
function doubtOf({ short, long, mark }: Boards, reach: Length): Length {
  const swing = absolute(subtract(times(reach, 2n), add(short, long)));
  return longest(mark, over(times(swing, asNumber(mark)), asNumber(subtract(long, short))));
}

/** Nobody reads a tape in thousandths. */
const byEye = tapes.filter((tape) => tape !== '0.001');

/**
 * The marks four readings were read to: those of the job, or finer ones that all four stand on.
 *
 * @example readTo(readings, '1 mm') // '1/2 mm', where one is 200.5
 */
export function readTo(readings: TapeReadings, tape: Tape): Tape {
  const all = Object.values(readings);
  const asFine = byEye.filter((x) => unitsOf(x) === unitsOf(tape) && !less(grainOf(tape), grainOf(x)));
  const standsOn = (x: Tape) => all.every((reading) => isZero(markAt(reading, x).rest));
  return asFine.find(standsOn) ?? tape;
}
