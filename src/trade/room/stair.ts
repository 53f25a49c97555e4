import { rootLess } from '../../length/diagonal';
import { isPositive, type Length, type Ratio, subtract, zero } from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { type CaseSize, noSize, type SizeName, type Way, ways } from './lying';

/** A flight of stairs. Inches, > 0. */
export type Stair = {
  /** Winders are not reckoned: try a full-size frame of sticks. */
  readonly flight: 'straight' | 'winders';
  /** Plumb, from the line of the nosings to whatever is over it. */
  readonly headroom: Length;
  readonly going: Length;
  readonly rise: Length;
  /** Rail to wall, or rail to rail. */
  readonly between: Length;
};

/** What is to spare each way; negative: so much too little. Inches. */
export type WayUp = Way & {
  readonly sideways: Length;
  /** Square to the slope, DOWN to the grain. */
  readonly overhead: Length;
  readonly passes: boolean;
};

export type StairFit = {
  /** The headroom square to the slope, squared, exact. */
  readonly square: Ratio;
  /** The same headroom, DOWN to the grain. */
  readonly clear: Length;
  /** `up` is the size that stands square to the slope, `trailing` the one along it. */
  readonly ways: readonly WayUp[];
};

export type StairError =
  | { readonly code: 'winders' }
  | { readonly code: 'not-positive'; readonly what: SizeName | 'headroom' | 'going' | 'rise' | 'between' };

/**
 * A case carried along a straight flight: what is over the nosings, square to the slope, is headroom * going /
 * √(going² + rise²). Compared by squares. What stands over the flight is taken to run along with it; the landings are
 * turns of their own.
 *
 * @param stair inches, > 0; @param size of the case, inches, > 0; @param grain of the tape, inches, > 0
 * @returns inches
 * @example upStair(stair, size, inches(1n, 16n)).value.clear // Example 11 of room: 64 7/8
 */
export function upStair(stair: Stair, size: CaseSize, grain: Length): Result<StairFit, StairError> {
  if (stair.flight === 'winders') return err({ code: 'winders' });
  const none = noSize(size);
  if (none) return err({ code: 'not-positive', what: none });
  for (const what of ['headroom', 'going', 'rise', 'between'] as const)
    if (!isPositive(stair[what])) return err({ code: 'not-positive', what });
  const { headroom, going, rise, between } = stair;
  const run = headroom.mul(going);
  const square = run.mul(run).div(going.mul(going).add(rise.mul(rise))) as Ratio;
  const found = ways.map((way): WayUp => {
    const [high, across] = [size[way.up], size[way.across]];
    const sideways = subtract(between, across);
    const passes = square.gte(high.mul(high)) && sideways.s >= 0n;
    return { ...way, sideways, overhead: rootLess(square, high, { grain, mode: 'floor' }), passes };
  });
  return ok({ square, clear: rootLess(square, zero, { grain, mode: 'floor' }), ways: found });
}
