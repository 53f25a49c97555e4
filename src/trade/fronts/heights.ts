import {
  add,
  inches,
  isNegative,
  isPositive,
  type Length,
  less,
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
import { err, ok, type Result } from '../../length/result';

/** How the heights go from the top down. */
export type Share =
  | { readonly kind: 'equal' }
  /** Each lower front higher by the step; negative: lower. */
  | { readonly kind: 'step'; readonly step: Length }
  /** Each lower front so many times the one above. */
  | { readonly kind: 'ratio'; readonly ratio: Ratio }
  /** A share for each front; 1 where none is said. */
  | { readonly kind: 'weights'; readonly weights: readonly Ratio[] };

export type Heights = {
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
  | { readonly code: 'given-too-high'; readonly by: Length }
  | { readonly code: 'least-too-high'; readonly by: Length }
  /** A front comes to nothing: the step must stay under `most`. */
  | { readonly code: 'step-too-big'; readonly most: Length }
  | { readonly code: 'ratio-not-positive' }
  | { readonly code: 'weight-not-positive'; readonly front: number };

const mostFronts = 24;

/**
 * Exact heights of the fronts of a column, from the top. Given ones stand; the rule shares what they leave among the
 * others in their order. One that comes out under its least is held there, all such together, and the rest share again.
 *
 * @returns inches, > 0, with the exact sum `total` when any is shared; or what is wrong
 * @example heightsOf({ total: inches(923n, 32n), count: 5, share: { kind: 'step', step: inches(11n, 16n) } })
 */
export function heightsOf(h: Heights): Result<readonly Length[], HeightsError> {
  const wrong = faultOf(h);
  if (wrong) return err(wrong);
  const given = Array.from({ length: h.count }, (_, k) => h.given?.[k]);
  const left = subtract(h.total, sum(given.flatMap((x) => x ?? [])));
  const open = given.flatMap((x, k) => (x ? [] : [k]));
  if (open.length === 0)
    return isNegative(left)
      ? err({ code: 'given-too-high', by: negate(left) })
      : ok(given.map((x) => x ?? zero));
  if (!isPositive(left)) return err({ code: 'given-too-high', by: negate(left) });
  return shareOut(h, given, open);
}

function faultOf({ count, total, share }: Heights): HeightsError | undefined {
  if (!Number.isInteger(count) || count < 1 || count > mostFronts) return { code: 'count-not-whole' };
  if (!isPositive(total)) return { code: 'nothing-left', by: negate(total) };
  if (share.kind === 'ratio' && numerator(share.ratio) <= 0n) return { code: 'ratio-not-positive' };
  if (share.kind !== 'weights') return undefined;
  const at = share.weights.slice(0, count).findIndex((weight) => numerator(weight) <= 0n);
  return at < 0 ? undefined : { code: 'weight-not-positive', front: at + 1 };
}

/** Shares what is left; those under their least are held at it, and the others share again. */
function shareOut(
  h: Heights,
  given: readonly (Length | undefined)[],
  open: readonly number[],
): Result<readonly Length[], HeightsError> {
  const fixed = sum(given.flatMap((x) => x ?? []));
  const left = subtract(h.total, fixed);
  if (open.length === 0) return isNegative(left) ? tooHigh(left) : ok(given.map((x) => x ?? zero));
  if (!isPositive(left)) return tooHigh(left);
  const shared = ruled(h.share, open, left);
  const least = (k: number): Length | undefined => h.least?.[k];
  const short = open.filter((k, j) => {
    const wanted = least(k);
    return wanted !== undefined && less(shared[j] ?? zero, wanted);
  });
  if (short.length > 0) {
    const held = given.map((x, k) => (short.includes(k) ? least(k) : x));
    return shareOut(
      h,
      held,
      open.filter((k) => !short.includes(k)),
    );
  }
  if (shared.some((x) => !isPositive(x)))
    return err({ code: 'step-too-big', most: mostStep(left, open.length) });
  return ok(given.map((x, k) => x ?? shared[open.indexOf(k)] ?? zero));
}

const tooHigh = (left: Length): Result<never, HeightsError> =>
  err({ code: 'least-too-high', by: negate(left) });

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
        open.map((k) => share.weights[k] ?? ratio(1n)),
        left,
      );
    default:
      return open.map(() => over(left, BigInt(n)));
  }
}

const powers = (q: Ratio, n: number): readonly Ratio[] => {
  const found: Ratio[] = [];
  for (let k = 0; k < n; k += 1) found.push(k === 0 ? ratio(1n) : ((found[k - 1] ?? q).mul(q) as Ratio));
  return found;
};

function byWeight(weights: readonly Ratio[], left: Length): readonly Length[] {
  const whole = weights.reduce((a, b) => a.add(b) as Ratio, ratio(0n));
  return weights.map((weight) => over(times(left, weight), whole));
}

/** Under this there is hardly room for a box and a pull. Common practice, no source. Inches. */
export const lowFront = inches(5n, 2n);

/** Numbers of the fronts that are low, from the top, 1 the first. @example lowWarnings([inches(2n)]) // [1] */
export const lowWarnings = (heights: readonly Length[]): readonly number[] =>
  heights.flatMap((h, k) => (less(h, lowFront) ? [k + 1] : []));
