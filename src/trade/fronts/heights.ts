import {
  add,
  asInches,
  compare,
  howMany,
  inches,
  isNegative,
  isPositive,
  isZero,
  type Length,
  less,
  longest,
  negate,
  numerator,
  over,
  type Ratio,
  ratio,
  subtract,
  sum,
  times,
  zero,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { err, ok, type Result } from '../../length/result';
import type { Units } from '../../length/units';

/** How the heights go from the top down. */
export type Share =
  | { readonly kind: 'equal' }
  /** Each lower front higher by the step; negative: lower. */
  | { readonly kind: 'step'; readonly step: Length }
  /** Each lower front so many times the one above. */
  | { readonly kind: 'ratio'; readonly ratio: Ratio }
  /** A share for each front; 1 where none is said. */
  | { readonly kind: 'weights'; readonly weights: readonly Ratio[] };

type Heights = {
  /** What the fronts come to together, inches. */
  readonly total: Length;
  readonly count: number;
  readonly share: Share;
  /** By front from the top: never altered. */
  readonly given?: readonly (Length | undefined)[];
  /** By front from the top: a shared one is never less. */
  readonly least?: readonly (Length | undefined)[];
};

export type HeightsError =
  | { readonly code: 'count-not-whole' }
  | { readonly code: 'nothing-left'; readonly by: Length }
  /** A height given for a front is nothing or less. */
  | { readonly code: 'given-not-positive'; readonly front: number }
  /** The given ones are over the total, or leave those to share nothing. */
  | { readonly code: 'given-too-high'; readonly by: Length }
  /** The given ones and all the leasts together are over the total. */
  | { readonly code: 'least-too-high'; readonly by: Length }
  /** A front comes to nothing: the step must stay under `most`. */
  | { readonly code: 'step-too-big'; readonly most: Length }
  | { readonly code: 'ratio-not-positive' }
  | { readonly code: 'weight-not-positive'; readonly front: number };

const mostFronts = 24;

/** Whether a column can have so many fronts: whole, 1 to 24. @example isCountOfFronts(2.5) // false */
export const isCountOfFronts = (count: number): boolean =>
  Number.isInteger(count) && count >= 1 && count <= mostFronts;

/**
 * Exact heights of the fronts of a column, from the top. Given ones stand; the rule shares what they leave among the
 * others in their order. One that comes out under its least is held there and the rest share again, the one farthest
 * under first and one at a time: a step or a ratio closes up over the front that is held, which can lift another over
 * its least, so the rule stands for more of them than if all were held at once.
 *
 * @param h.total inches; @param h.count whole, 1 to 24; @param h.share `step` any sign, ratio and weights > 0
 * @param h.given inches, > 0; @param h.least inches, 0 or less asks for nothing
 * @returns inches, > 0, with the exact sum `total` when any is shared; when all are given their sum may be less. Or
 * what is wrong, `by` and `most` in inches, `by` 0 when the shared ones are left just nothing
 * @example heightsOf({ total: inches(923n, 32n), count: 5, share: { kind: 'step', step: inches(11n, 16n) } })
 */
export function heightsOf(h: Heights): Result<readonly Length[], HeightsError> {
  const wrong = faultOf(h);
  if (wrong) return err(wrong);
  const given = Array.from({ length: h.count }, (_, k) => h.given?.[k]);
  const none = given.findIndex((x) => x && !isPositive(x));
  if (none >= 0) return err({ code: 'given-not-positive', front: none + 1 });
  const open = given.flatMap((x, k) => (x ? [] : [k]));
  const left = leftBy(h, given);
  if (isNegative(left) || (open.length > 0 && isZero(left)))
    return err({ code: 'given-too-high', by: negate(left) });
  const spare = subtract(left, sum(open.map((k) => longest(zero, h.least?.[k] ?? zero))));
  if (isNegative(spare)) return err({ code: 'least-too-high', by: negate(spare) });
  return shareOut(h, given);
}

/** What the fronts that stand leave of the total, inches. */
const leftBy = (h: Heights, stand: readonly (Length | undefined)[]): Length =>
  subtract(h.total, sum(stand.flatMap((x) => x ?? [])));

function faultOf({ count, total, share }: Heights): HeightsError | undefined {
  if (!isCountOfFronts(count)) return { code: 'count-not-whole' };
  if (!isPositive(total)) return { code: 'nothing-left', by: negate(total) };
  if (share.kind === 'ratio' && numerator(share.ratio) <= 0n) return { code: 'ratio-not-positive' };
  if (share.kind !== 'weights') return undefined;
  const at = share.weights.slice(0, count).findIndex((weight) => numerator(weight) <= 0n);
  return at < 0 ? undefined : { code: 'weight-not-positive', front: at + 1 };
}

/** Shares what is left; the one farthest under its least is held at it, and the others share again. */
function shareOut(
  h: Heights,
  stand: readonly (Length | undefined)[],
): Result<readonly Length[], HeightsError> {
  const open = stand.flatMap((x, k) => (x ? [] : [k]));
  if (open.length === 0) return ok(stand.map((x) => x ?? zero));
  const left = leftBy(h, stand);
  if (!isPositive(left)) return err({ code: 'least-too-high', by: negate(left) });
  const shared = ruled(h.share, open, left);
  const under = farthestUnder(h, open, shared);
  if (under !== undefined)
    return shareOut(
      h,
      stand.map((x, k) => (k === under ? h.least?.[k] : x)),
    );
  if (shared.some((x) => !isPositive(x)))
    return err({ code: 'step-too-big', most: mostStep(left, open.length) });
  return ok(stand.map((x, k) => x ?? shared[open.indexOf(k)] ?? zero));
}

/** Which front is farthest under its least, the upper of two alike; none when every least is kept. */
function farthestUnder(h: Heights, open: readonly number[], shared: readonly Length[]): number | undefined {
  const under = open.flatMap((k, j) => {
    const by = subtract(h.least?.[k] ?? zero, shared[j] ?? zero);
    return h.least?.[k] && isPositive(by) ? [{ k, by }] : [];
  });
  return under.sort((a, b) => compare(b.by, a.by) || a.k - b.k)[0]?.k;
}

/** 2S/(n(n-1)): with a greater step the first front comes to nothing. */
const mostStep = (left: Length, n: number): Length =>
  n < 2 ? left : over(times(left, 2n), BigInt(n * (n - 1)));

/** The rule over so many fronts, in order from the top. */
function ruled(share: Share, open: readonly number[], left: Length): readonly Length[] {
  const n = open.length;
  switch (share.kind) {
    case 'step': {
      const first = over(subtract(left, times(share.step, BigInt((n * (n - 1)) / 2))), BigInt(n));
      return open.map((_, k) => add(first, times(share.step, BigInt(k))));
    }
    case 'ratio':
      return byWeight(powers(share.ratio, n), left);
    case 'weights':
      return byWeight(
        open.map((k) => asInches(share.weights[k] ?? ratio(1n))),
        left,
      );
    default:
      return open.map(() => over(left, BigInt(n)));
  }
}

/** 1, q, q² … as so many inches. */
const powers = (q: Ratio, n: number): readonly Length[] =>
  Array.from({ length: n }).reduce<readonly Length[]>((found) => {
    const last = found.at(-1);
    return [...found, last ? times(last, q) : inches(1n)];
  }, []);

function byWeight(weights: readonly Length[], left: Length): readonly Length[] {
  const all = sum(weights);
  return weights.map((weight) => times(left, howMany(weight, all)));
}

/** Under this there is hardly room for a box and a pull. Common practice, no source. Inches. */
const lowFront = inches(5n, 2n);

/**
 * Numbers of the fronts under `lowFront`, from the top, 1 the first; heights in inches.
 * @example lowWarnings([inches(2n)]) // [1]
 */
export const lowWarnings = (heights: readonly Length[], units?: Units): readonly number[] =>
  heights.flatMap((h, k) => (less(h, figureIn(units, lowFront)) ? [k + 1] : []));
