/** Counts work in place of a clock, so that the same seed and effort give the same plan on every machine. */
export type Meter = { spent: number; told: number; readonly limit: number };

/** Small steps in a unit of work. Common practice, no source: measured on one desktop core, 1 unit ≈ 1 ms. */
const stepsInUnit = 400_000;

/** Units between two chances to stop. Common practice, no source. */
const pause = 3;

/**
 * A meter that runs out.
 *
 * @param effort units of work, ≥ 0 (1 ≈ a millisecond of a desktop core)
 * @returns a meter at nought
 * @example meterOf(10).spent // 0
 */
export const meterOf = (effort: number): Meter => ({ spent: 0, told: 0, limit: effort * stepsInUnit });

/** True when the work is used up. @example isOver(meterOf(0)) // true */
export const isOver = (meter: Meter): boolean => meter.spent >= meter.limit;

/** Part of what is left, as a meter's end mark: share 0 … 1. @example markOf(meterOf(1), 0.5) // 200000 */
export const markOf = (meter: Meter, share: number): number =>
  meter.spent + (meter.limit - meter.spent) * share;

/** True once in every few units of work: time to let the caller in. @example isDue(meterOf(1)) // false */
export function isDue(meter: Meter): boolean {
  if (meter.spent - meter.told < pause * stepsInUnit) return false;
  meter.told = meter.spent;
  return true;
}
