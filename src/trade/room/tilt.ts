import { rootLess, squareOf } from '../../length/diagonal';
import { inches, isPositive, type Length, less, type Ratio, subtract, zero } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { err, ok, type Result } from '../../length/result';
import { roundTo } from '../../length/round';
import type { Units } from '../../length/units';

/** A case stood up from its back under a ceiling. Inches, > 0. */
type TiltPlan = { readonly height: Length; readonly depth: Length; readonly ceiling: Length };

export type TiltUp = {
  readonly passes: boolean;
  /** From the edge it turns on to the far corner, UP to the grain: what the ceiling must clear. */
  readonly diagonal: Length;
  /** Ceiling less diagonal, DOWN to the grain: negative, it is so much short. */
  readonly spare: Length;
  /** It passes, but with less than `want` to spare: floors and ceilings wander. */
  readonly close?: { readonly want: Length; readonly by: Length };
};

export type TiltError =
  | { readonly code: 'not-positive'; readonly what: 'height' | 'depth' | 'ceiling' }
  /** The ceiling is lower than the case itself, by so much. */
  | { readonly code: 'ceiling-below'; readonly by: Length };

/** Less to spare than this is close. Common practice, no source. Inches. */
const wanted = inches(1n, 2n);

/**
 * Whether a case can be stood up from its back: √(height² + depth²) <= ceiling, settled by squares.
 *
 * @param plan inches, > 0; @param grain of the tape, inches, > 0; @param units of the job
 * @returns inches; `TiltError` where a figure is nothing or the case is higher than the room
 * @example tiltUp({ height, depth, ceiling }, inches(1n, 16n)).value.passes // Example 5 of room: false
 */
export function tiltUp(plan: TiltPlan, grain: Length, units?: Units): Result<TiltUp, TiltError> {
  for (const what of ['height', 'depth', 'ceiling'] as const)
    if (!isPositive(plan[what])) return err({ code: 'not-positive', what });
  const { height, depth, ceiling } = plan;
  if (less(ceiling, height)) return err({ code: 'ceiling-below', by: subtract(height, ceiling) });
  const square = squareOf(height, depth);
  const passes = square.lte(ceiling.mul(ceiling));
  const want = figureIn(units, wanted);
  const short = rootLess(square, subtract(ceiling, want), { grain, mode: 'ceil' });
  const close = passes && square.gt(subtract(ceiling, want).mul(subtract(ceiling, want)));
  return ok({
    passes,
    diagonal: rootLess(square, zero, { grain, mode: 'ceil' }),
    spare: subtract(zero, rootLess(square, ceiling, { grain, mode: 'ceil' })),
    ...(close ? { close: { want, by: short } } : {}),
  });
}

/** Why a case may not be higher. */
export type HeightLimit = 'ceiling-gap' | 'tilt';

/** Inches. `by`: nothing or less is left, by so much (0: just nothing). */
export type HeightError =
  | { readonly code: 'negative-gap'; readonly by: Length }
  | { readonly code: 'not-positive' }
  | { readonly code: 'no-room'; readonly limit: HeightLimit; readonly by: Length };

/**
 * The highest case that goes in: level height less the gap under the ceiling, and no higher than it can be stood up
 * from its back, DOWN to the mark.
 *
 * @param height level height, inches, > 0
 * @param at.gap under the ceiling, inches, >= 0; @param at.depth of a case that is stood up in the room, inches, > 0;
 * none for one that is not
 * @param grain of the tape, inches, > 0
 * @returns inches, and which of the two holds it down
 * @example greatestHeight(inches(767n, 8n), { gap: inches(1n, 4n) }, grain) // Example 4 of room: 95 5/8, ceiling-gap
 */
export function greatestHeight(
  height: Length,
  at: { readonly gap: Length; readonly depth?: Length },
  grain: Length,
): Result<{ readonly value: Length; readonly limit: HeightLimit }, HeightError> {
  const { gap, depth } = at;
  if (less(gap, zero)) return err({ code: 'negative-gap', by: subtract(zero, gap) });
  if (!isPositive(height) || (depth && !isPositive(depth))) return err({ code: 'not-positive' });
  const free = subtract(height, gap);
  const under = roundTo(free, grain, 'floor').value;
  const high = depth && (height.mul(height).sub(depth.mul(depth)) as Ratio);
  if (high && high.s < 0n)
    return err({ code: 'no-room', limit: 'tilt', by: subtract(depth ?? zero, height) });
  const tilted = high && rootLess(high, zero, { grain, mode: 'floor' });
  const limit = tilted && less(tilted, under) ? 'tilt' : 'ceiling-gap';
  const value = tilted && limit === 'tilt' ? tilted : under;
  if (isPositive(value)) return ok({ value, limit });
  return err({ code: 'no-room', limit, by: limit === 'tilt' ? zero : subtract(zero, free) });
}
