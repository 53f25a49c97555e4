import {
  add,
  atMost,
  half,
  howMany,
  isPositive,
  type Length,
  over,
  subtract,
  times,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { toWhole } from '../../length/round';

/** Screws along a run, in rows. Inches. */
type SchedulePlan = {
  readonly run: Length;
  /** From either end to the first screw. */
  readonly end: Length;
  /** The most from one screw to the next. */
  readonly most: Length;
  /** Whole, 1 or more. */
  readonly rows: number;
};

export type Schedule = {
  /** In one row, from the reference end. Exact: a mark is rounded for itself, the pitch never. */
  readonly marks: readonly Length[];
  /** From one to the next; none where there is one in the middle. */
  readonly pitch?: Length;
  /** In all rows. */
  readonly count: number;
};

export type ScheduleError =
  | { readonly code: 'not-positive'; readonly what: 'run' | 'end' | 'most' }
  | { readonly code: 'rows-not-whole' }
  /** More than `most` in a row; `spacing` is the least that would do. */
  | { readonly code: 'too-many'; readonly most: number; readonly spacing: Length };

/** In one row. Ours, against slips of the keys. */
const mostInRow = 200;

/**
 * Screws spaced evenly along a run, no further apart than said: n = ceil((run - 2 end) / most) + 1. Where the two ends
 * meet or cross, one in the middle.
 *
 * @param plan inches, each > 0
 * @returns inches
 * @example screwSchedule(plan) // 9 in a row at 6 115/128: Example 6 of install
 */
export function screwSchedule(plan: SchedulePlan): Result<Schedule, ScheduleError> {
  const { run, end, most, rows } = plan;
  const blank = (['run', 'end', 'most'] as const).find((what) => !isPositive(plan[what]));
  if (blank) return err({ code: 'not-positive', what: blank });
  if (!Number.isInteger(rows) || rows < 1) return err({ code: 'rows-not-whole' });
  if (atMost(run, times(end, 2n))) return ok({ marks: [half(run)], count: rows });
  const between = subtract(run, times(end, 2n));
  const steps = toWhole(howMany(between, most), 'ceil');
  if (steps >= BigInt(mostInRow))
    return err({ code: 'too-many', most: mostInRow, spacing: over(between, BigInt(mostInRow - 1)) });
  const pitch = over(between, steps);
  const marks = Array.from({ length: Number(steps) + 1 }, (_, k) => add(end, times(pitch, BigInt(k))));
  return ok({ marks, pitch, count: marks.length * rows });
}
