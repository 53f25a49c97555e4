import {
  absolute,
  half,
  howMany,
  inches,
  isNegative,
  isPositive,
  type Length,
  less,
  type Ratio,
  ratio,
  subtract,
  zero,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { isMore, minus, product, total } from './ratios';

/** A weight and how far its middle is from the front of the case. Pounds, inches, > 0. */
type Weight = { readonly id: string; readonly pounds: Ratio; readonly from: Length };

type TipPlan = {
  /** What is pulled out, ahead of the front. */
  readonly ahead: readonly Weight[];
  /** What stands behind the front: the case and all that stays in it. */
  readonly behind: readonly Weight[];
  /** How far the toe or base it tips over is set back behind the front, >= 0. */
  readonly setBack?: Length;
};

export type Tip = {
  /** Pounds × inches about the front bottom edge. */
  readonly tipping: Ratio;
  readonly holding: Ratio;
  /** `falls`: holding is not above tipping; `near`: under one and a half times it. */
  readonly code: 'falls' | 'near' | 'past-margin';
  /** What holding lacks of one and a half times tipping; none where it does not. */
  readonly short?: Ratio;
  /** How many of those ahead, the worst first, leave one and a half times. */
  readonly outAtMost: number;
  /** A case is fixed to the wall before it is loaded, whatever the sum. */
  readonly anchor: true;
};

type TipError =
  | { readonly code: 'nothing-behind' }
  | { readonly code: 'pounds-not-positive' | 'from-not-positive'; readonly id: string }
  | { readonly code: 'set-back-negative' };

/** Common practice, no source. */
const margin = ratio(3n, 2n);

/**
 * Whether a case with its drawers pulled out goes over its front bottom edge: the loads ahead of the edge times their
 * distance against the weights behind it. Weights whose middle is ahead of a set-back toe tip too. Always: anchor it.
 *
 * Source: the balance of moments, any text on statics; the one and a half times, common practice.
 *
 * @param plan pounds and inches, > 0
 * @returns pounds × inches
 * @example tipOver(plan) // 930 against 894 1/4: Example 8 of loads
 */
export function tipOver(plan: TipPlan): Result<Tip, TipError> {
  const { ahead, behind, setBack = zero } = plan;
  if (behind.length === 0) return err({ code: 'nothing-behind' });
  const bad = [...ahead, ...behind].find((x) => !isMore(x.pounds));
  if (bad) return err({ code: 'pounds-not-positive', id: bad.id });
  const off = [...ahead, ...behind].find((x) => !isPositive(x.from));
  if (off) return err({ code: 'from-not-positive', id: off.id });
  if (isNegative(setBack)) return err({ code: 'set-back-negative' });
  // about the edge, in inch-pounds: ahead of it counts up, behind it down
  const out = ahead.map((x) => moment(x, x.from.add(setBack) as Length));
  const front = behind.filter((x) => less(x.from, setBack)).map((x) => moment(x, subtract(setBack, x.from)));
  const back = behind.filter((x) => !less(x.from, setBack)).map((x) => moment(x, subtract(x.from, setBack)));
  const tipping = total([...out, ...front]);
  const holding = total(back);
  const short = minus(product(margin, tipping), holding);
  const code = holding.lte(tipping) ? 'falls' : isMore(short) ? 'near' : 'past-margin';
  return ok({
    tipping,
    holding,
    code,
    ...(isMore(short) ? { short } : {}),
    outAtMost: outAtMost(out, minus(holding, product(margin, total(front)))),
    anchor: true,
  });
}

/** A drawer and how far it is pulled. Pounds, inches. */
type Pulled = { readonly id: string; readonly pounds: Ratio; readonly deep: Length; readonly pulled: Length };

type PulledError =
  | { readonly code: 'deep-not-positive' | 'pulled-negative'; readonly id: string }
  /** Pulled further than it is deep: by so much. */
  | { readonly code: 'pulled-past'; readonly id: string; readonly by: Length };

/**
 * Where drawers, their load even, stand against the front of their case: a middle pulled past the front is ahead. One
 * whose middle is just at the front tips and holds nothing, and is in neither list.
 *
 * @param drawers pounds; deep > 0, pulled from 0 to deep, inches
 * @returns pounds and inches, for `tipOver`
 * @example pulledOut(drawers) // Example 10 of loads
 */
export function pulledOut(
  drawers: readonly Pulled[],
): Result<Pick<TipPlan, 'ahead' | 'behind'>, PulledError> {
  for (const { id, deep, pulled } of drawers) {
    if (!isPositive(deep)) return err({ code: 'deep-not-positive', id });
    if (isNegative(pulled)) return err({ code: 'pulled-negative', id });
    if (less(deep, pulled)) return err({ code: 'pulled-past', id, by: subtract(pulled, deep) });
  }
  const placed = drawers.map(({ id, pounds, deep, pulled }) => ({
    id,
    pounds,
    from: subtract(pulled, half(deep)),
  }));
  return ok({
    ahead: placed.filter(({ from }) => isPositive(from)),
    behind: placed.filter(({ from }) => isNegative(from)).map((x) => ({ ...x, from: absolute(x.from) })),
  });
}

const moment = ({ pounds }: Weight, arm: Length): Ratio => product(pounds, howMany(arm, inches(1n)));

/** The worst first, as long as one and a half times them are held. */
function outAtMost(out: readonly Ratio[], room: Ratio): number {
  const worst = [...out].sort((a, b) => b.compare(a));
  const sums = worst.map((_, k) => product(margin, total(worst.slice(0, k + 1))));
  return sums.filter((sum) => sum.lte(room)).length;
}
