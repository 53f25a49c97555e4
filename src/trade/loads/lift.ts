import {
  absolute,
  asNumber,
  inches,
  isNegative,
  type Length,
  less,
  type Ratio,
  ratio,
  subtract,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { toWhole } from '../../length/round';
import { isLess, isMore, lesser, minus, product, shareOf } from './ratios';

export type Grip = 'good' | 'fair' | 'poor';

/** Where the hands are. Inches; turn in degrees. */
export type Hands = {
  /** From between the ankles to between the hands, level; >= 0. */
  readonly out: Length;
  /** Above the floor, >= 0. */
  readonly up: Length;
  /** How far the load is turned to the side, >= 0. */
  readonly turn: Ratio;
};

/** One person lifts with both hands, standing, a load that does not shift, less than once in five minutes. */
export type Lift = {
  readonly start: Hands;
  readonly end: Hands;
  /** Set down with care: then the end counts as well. */
  readonly careful: boolean;
  /** None said: it is asked, never assumed. */
  readonly grip?: Grip;
  /** Pounds, > 0. */
  readonly load: Ratio;
  /** What the shop lets one person lift, pounds, > 0. */
  readonly most: Ratio;
};

/** The six multipliers as printed, to two places, and what they leave of 51 pounds. */
export type LiftLimit = {
  readonly out: Ratio;
  readonly up: Ratio;
  readonly travel: Ratio;
  readonly turn: Ratio;
  readonly often: Ratio;
  readonly grip: Ratio;
  /** Pounds. */
  readonly limit: Ratio;
};

export type LiftSays = {
  readonly start: LiftLimit;
  readonly end?: LiftLimit;
  /** The lesser of both ends, pounds. */
  readonly limit: Ratio;
  /** Load over limit; none where the limit is 0. */
  readonly index?: Ratio;
  /** The lesser of the limit and what the shop lets one lift, and which of them it is. */
  readonly most: Ratio;
  readonly rules: 'start' | 'end' | 'shop';
  /** How much the load is over `most`, pounds; none where it is not. */
  readonly over?: Ratio;
};

export type LiftError =
  | { readonly code: 'load-not-positive' | 'most-not-positive' | 'grip-missing' }
  | { readonly code: 'negative'; readonly at: 'start' | 'end'; readonly what: 'out' | 'up' | 'turn' };

/** By whole inches out from 10, in hundredths. Source: NIOSH Publication 94-110, table of the horizontal multiplier. */
const outTable = [100, 91, 83, 77, 71, 67, 63, 59, 56, 53, 50, 48, 46, 44, 42, 40].map((n) => hundredths(n));
const grips: Record<Grip, readonly [low: Ratio, high: Ratio]> = {
  good: [hundredths(100), hundredths(100)],
  fair: [hundredths(95), hundredths(100)],
  poor: [hundredths(90), hundredths(90)],
};
const constant = ratio(51n);
const none = ratio(0n);
const [ten, knuckles, reach] = [inches(10n), inches(30n), inches(70n)];
const mostTurn = ratio(135n);

function hundredths(n: number): Ratio {
  return ratio(BigInt(n), 100n);
}

/** To two places, a half up, as the tables print it. */
const asPrinted = (x: Ratio): Ratio => ratio(toWhole(product(x, ratio(100n)), 'halfExpand'), 100n);

/** Up to the next whole inch; under 10 counts as 10, over 25 is out of reach. */
function outTimes(out: Length): Ratio {
  const steps = Number(toWhole(asNumber(subtract(out, ten)), 'ceil'));
  return outTable[Math.max(steps, 0)] ?? none;
}

/** 1 - .0075 |V - 30|; over 70 is out of reach. */
function upTimes(up: Length): Ratio {
  if (less(reach, up)) return none;
  const off = asNumber(absolute(subtract(up, knuckles)));
  return asPrinted(minus(ratio(1n), product(off, ratio(75n, 10000n))));
}

/** .82 + 1.8/D; under 10 counts as 10, over 70 is out of reach. */
function travelTimes(travel: Length): Ratio {
  if (less(reach, travel)) return none;
  const d = asNumber(less(travel, ten) ? ten : travel);
  return asPrinted(hundredths(82).add(shareOf(ratio(18n, 10n), d)) as Ratio);
}

/** 1 - .0032 A; over 135 degrees is out of reach. */
const turnTimes = (turn: Ratio): Ratio =>
  mostTurn.lt(turn) ? none : asPrinted(minus(ratio(1n), product(turn, ratio(32n, 10000n))));

function limitAt({ out, up, turn }: Hands, travel: Length, grip: Grip): LiftLimit {
  const [low, high] = grips[grip];
  const by = {
    out: outTimes(out),
    up: upTimes(up),
    travel: travelTimes(travel),
    turn: turnTimes(turn),
    often: ratio(1n),
    grip: less(up, knuckles) ? low : high,
  };
  return { ...by, limit: product(constant, by.out, by.up, by.travel, by.turn, by.often, by.grip) };
}

/**
 * What one person should lift, at the start and, where it is set down with care, at the end; the lesser rules, and so
 * does the shop's own figure where that is lower. It does not cover two people, stairs, carrying, one hand or slippery
 * floors: a load over it is never halved and called light enough.
 *
 * Source: Applications Manual for the Revised NIOSH Lifting Equation, DHHS (NIOSH) Publication 94-110, with the
 * multipliers of its tables to two places, US units.
 *
 * @param lift inches, degrees, pounds; hands from 0 up
 * @returns pounds
 * @example liftSays(lift) // 24.85 pounds: Example 4 of loads
 */
export function liftSays(lift: Lift): Result<LiftSays, LiftError> {
  const { start, end, careful, grip, load, most } = lift;
  if (!isMore(load)) return err({ code: 'load-not-positive' });
  if (!isMore(most)) return err({ code: 'most-not-positive' });
  if (!grip) return err({ code: 'grip-missing' });
  const below = belowNothing('start', start) ?? belowNothing('end', end);
  if (below) return err(below);
  const travel = absolute(subtract(end.up, start.up));
  const limits = { start: limitAt(start, travel, grip), end: limitAt(end, travel, grip) };
  const atEnd = careful && limits.end.limit.lt(limits.start.limit);
  const limit = atEnd ? limits.end.limit : limits.start.limit;
  const least = lesser(limit, most);
  const over = minus(load, least);
  const own = atEnd ? 'end' : 'start';
  return ok({
    start: limits.start,
    ...(careful ? { end: limits.end } : {}),
    limit,
    ...(isMore(limit) ? { index: shareOf(load, limit) } : {}),
    most: least,
    rules: most.lt(limit) ? 'shop' : own,
    ...(isMore(over) ? { over } : {}),
  });
}

function belowNothing(at: 'start' | 'end', { out, up, turn }: Hands): LiftError | undefined {
  if (isNegative(out)) return { code: 'negative', at, what: 'out' };
  if (isNegative(up)) return { code: 'negative', at, what: 'up' };
  return isLess(turn) ? { code: 'negative', at, what: 'turn' } : undefined;
}
