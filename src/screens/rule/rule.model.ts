import { asInches, forDrawing, fromMillimetres, inches, type Length, times } from '../../length/length';
import { wholePart } from '../../length/round';
import type { Units } from '../../length/units';
import { type Calibration, pointsOf } from '../../trade/paper/screen-rule';
import type { ScreenTick } from '../../ui/screen-rule';

/** The finest graduation of the rule, how many of them make a longer one, and what is numbered. */
const graduations: Readonly<
  Record<Units, { readonly grain: Length; readonly long: readonly [every: number, long: number][] }>
> = {
  in: {
    grain: inches(1n, 16n),
    long: [
      [16, 1],
      [8, 0.75],
      [4, 0.55],
      [2, 0.4],
    ],
  },
  mm: {
    grain: fromMillimetres(1n),
    long: [
      [10, 1],
      [5, 0.7],
    ],
  },
};
const shortest = 0.28;

/** The ticks that fit on so many points; each whole inch, or centimetre as 10, 20 mm, is numbered. */
export function ticksFor(high: number, at: Calibration, units: Units): readonly ScreenTick[] {
  const { grain, long } = graduations[units];
  const [[whole]] = long as [[number, number]];
  const step = pointsOf(grain, at);
  const count = Number(wholePart(step.inverse().mul(BigInt(Math.floor(high))) as typeof step));
  return Array.from({ length: count + 1 }, (_, k) => {
    const [, length] = long.find(([every]) => k % every === 0) ?? [0, shortest];
    const number = units === 'mm' ? k : k / whole;
    return {
      at: drawnPoints(times(grain, BigInt(k)), at),
      long: length,
      ...(k % whole === 0 && k > 0 ? { label: `${number}` } : {}),
    };
  });
}

/** So many points as a picture has them. */
export const drawnPoints = (length: Length, at: Calibration): number =>
  forDrawing(asInches(pointsOf(length, at)));

/** How long the rule is on so many points, to the last whole graduation under it. */
export const reachOf = (high: number, at: Calibration, units: Units): Length => {
  const { grain } = graduations[units];
  return times(grain, BigInt(ticksFor(high, at, units).length - 1));
};
