import {
  absolute,
  add,
  atMost,
  fromMillimetres,
  type Length,
  longest,
  over,
  type Ratio,
  subtract,
  times,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { roundTo } from '../../length/round';

/** A bank card. Source: ISO/IEC 7810:2003, ID-1, nominally 85,60 mm by 53,98 mm (second-hand). */
export const card = { long: fromMillimetres(856n, 10n), short: fromMillimetres(5398n, 100n) };

/** How far a card may be off, new. Common practice, no source; a used one more. Inches. */
export const cardDoubt = fromMillimetres(13n, 100n);

/** What lines moved to a card's edges said of a screen. */
export type Calibration = {
  /** Points of the screen along the card's long edge, > 0. */
  readonly points: Ratio;
  /** How far a line may be off its edge: points, >= 0. */
  readonly doubt: Ratio;
  /** How far the card may be off. Inches, >= 0. */
  readonly cardDoubt: Length;
};

type RuleProblem =
  /** The lines are nearer than they are sure. */
  | { readonly code: 'too-near' }
  /** The short edge does not come out: too long by so much, < 0 too short. Inches. */
  | { readonly code: 'short-edge'; readonly off: Length };

/** How long so many points of the screen are. Inches. @example lengthOf(ratio(800n), at) // 142 2/3 mm */
export const lengthOf = (points: Ratio, at: Pick<Calibration, 'points'>): Length =>
  over(times(card.long, points), at.points);

/** How many points a length is. */
export const pointsOf = (length: Length, at: Pick<Calibration, 'points'>): Ratio =>
  length.mul(at.points).div(card.long) as Ratio;

/**
 * How far a length drawn over so many points may be off, either way, to the next hundredth of a millimetre UP.
 *
 * @example screenDoubt(ratio(800n), at) // .52 mm: Example 5 of paper
 */
export function screenDoubt(points: Ratio, { points: p, doubt, cardDoubt: c }: Calibration): Length {
  const drawn = lengthOf(points, { points: p });
  const most = over(times(add(card.long, c), points), p.sub(doubt) as Ratio);
  const least = over(times(subtract(card.long, c), points), p.add(doubt) as Ratio);
  const off = longest(subtract(most, drawn), subtract(drawn, least));
  return roundTo(off, fromMillimetres(1n, 100n), 'ceil').value;
}

/**
 * Whether a calibration holds: the short edge of the card, told by its own lines, has to come out within two doubts.
 *
 * @param shortPoints points along the short edge
 */
export function calibrate(at: Calibration, shortPoints: Ratio): Result<Calibration, RuleProblem> {
  if (at.points.lte(at.doubt)) return err({ code: 'too-near' });
  const off = subtract(lengthOf(shortPoints, at), card.short);
  const may = lengthOf(at.doubt.mul(2n) as Ratio, at);
  return atMost(absolute(off), may) ? ok(at) : err({ code: 'short-edge', off });
}
