import { inches, type Length } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Units } from '../../length/units';

/**
 * What boxes hang on where it is no slide that is bought: runners they stand on, or strips in grooves of their sides.
 * Stored: no spelling is ever changed.
 */
export const hungOn = ['runners', 'strips'] as const;

export type HungOn = (typeof hungOn)[number];

/** Whether a kicker lies over each box. Stored: no spelling is ever changed. */
export const kickersHow = ['over'] as const;

/** What boxes hang on, as decided. What is not said is `undefined`: a usual figure stands in. Inches. */
export type Hanging = {
  /** Bought slides when not said. */
  readonly hung?: HungOn | undefined;
  /** Free at each side of a box, and behind it. */
  readonly sidePlay?: Length | undefined;
  readonly backRoom?: Length | undefined;
  /** How high runners, kickers and strips are ripped. */
  readonly runHigh?: Length | undefined;
  readonly kickers?: (typeof kickersHow)[number] | undefined;
  /** Between a box and what lies over it: a kicker, a stop block. */
  readonly kickRoom?: Length | undefined;
  /** Lower wall of the groove for a strip, up from the lower edge of its box; how much wider it is than the strip. */
  readonly stripUp?: Length | undefined;
  readonly stripPlay?: Length | undefined;
};

const usual = {
  sidePlay: inches(1n, 32n),
  backRoom: inches(1n, 4n),
  kickRoom: inches(1n, 16n),
  stripUp: inches(5n, 4n),
  stripPlay: inches(1n, 32n),
};

const high: Readonly<Record<HungOn, Length>> = { runners: inches(3n, 4n), strips: inches(1n, 2n) };

type UsualHanging = Readonly<Record<keyof typeof usual | 'runHigh', Length>>;

/** Figures that stand in until the user says otherwise, by the unit of the job. Common practice, no source. Inches. */
export function usualHanging(units: Units | undefined, hung: HungOn = 'runners'): UsualHanging {
  const all = { ...usual, runHigh: high[hung] };
  return Object.fromEntries(
    Object.entries(all).map(([name, x]) => [name, figureIn(units, x)]),
  ) as UsualHanging;
}
