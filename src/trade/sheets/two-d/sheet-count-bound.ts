import { perHold, shareUp } from '../share';

/** What one sheet of a kind holds of some measure (an area, say), how many there are, and what one costs. */
export type Holder = { readonly holds: number; readonly count: number; readonly cost: number };

/** Beyond this many branches the bound of the relaxed sum stands. */
const mostBranches = 2000;

/** A whole quotient rounded up; above 2^53, where sums are no longer exact, rounded with a margin to the safe side. */
function timesNeeded(need: number, holds: number): number {
  if (need <= 0) return 0;
  if (!Number.isSafeInteger(need + holds)) return Math.ceil(need / holds - 1e-6);
  const over = need % holds;
  return (need - over) / holds + (over > 0 ? 1 : 0);
}

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}

const isWhole = (x: number): boolean => Number.isSafeInteger(x);

/** Up to the smallest step between sums of costs, where those are whole. */
function upToStep(kinds: readonly Holder[], cost: number): number {
  const step = kinds.every((k) => isWhole(k.cost)) ? kinds.reduce((g, k) => gcd(g, k.cost), 0) : 0;
  return step > 0 && cost < Number.POSITIVE_INFINITY ? Math.ceil(cost / step) * step : cost;
}

/** Sums of whole numbers that stay exact: only then is a bound compared as it is. */
function addsUp(kinds: readonly Holder[], need: number): boolean {
  const whole = kinds.every((k) => isWhole(k.cost) && isWhole(k.holds) && isWhole(k.holds + need));
  const most = (k: Holder) => (k.holds > 0 ? Math.min(k.count, timesNeeded(need, k.holds)) : 0);
  const bought = kinds.reduce((sum, k) => sum + most(k) * k.cost, 0);
  return whole && isWhole(need) && isWhole(bought);
}

/**
 * Cheapest way to hold so much when sheets may be bought in part, up to a whole cost; kinds in order of cost for what
 * they hold, whole numbers that add up exactly.
 */
function poured(kinds: readonly Holder[], need: number, from = 0): number {
  let left = need;
  let cost = 0;
  for (let k = from; k < kinds.length && left > 0; k += 1) {
    const kind = kinds[k];
    if (!kind || kind.holds <= 0) continue;
    if (kind.count * kind.holds >= left) return cost + shareUp(kind.cost, { part: left, whole: kind.holds });
    cost += kind.count * kind.cost;
    left -= kind.count * kind.holds;
  }
  return left > 0 ? Number.POSITIVE_INFINITY : cost;
}

/** The same where sums are not exact, a little below what is true. */
function pouredRoughly(kinds: readonly Holder[], need: number): number {
  let left = need;
  let cost = 0;
  const inOrder = [...kinds].sort((a, b) => a.cost * b.holds - b.cost * a.holds);
  for (const kind of inOrder.filter((k) => k.holds > 0)) {
    const taken = Math.min(kind.count, left / kind.holds);
    cost += taken * kind.cost;
    left -= taken * kind.holds;
    if (left <= 0) break;
  }
  return left > need * 1e-9 + 1e-9 ? Number.POSITIVE_INFINITY : Math.max(0, cost * (1 - 1e-9) - 1e-9);
}

/** Branches on how many of each kind; the cost of the cheapest way, or nothing when there are too many ways. */
function cheapest(kinds: readonly Holder[], need: number): number | undefined {
  let branches = 0;
  let best = Number.POSITIVE_INFINITY;
  const go = (k: number, left: number, cost: number): void => {
    branches += 1;
    if (left <= 0) best = Math.min(best, cost);
    const kind = kinds[k];
    if (left <= 0 || !kind || branches > mostBranches) return;
    if (cost + poured(kinds, left, k) >= best) return;
    const most = kind.holds > 0 ? Math.min(kind.count, timesNeeded(left, kind.holds)) : 0;
    for (let n = most; n >= 0; n -= 1) {
      go(k + 1, left - n * kind.holds, cost + n * kind.cost);
    }
  };
  go(0, need, 0);
  return branches > mostBranches ? undefined : best;
}

/**
 * A quick lower bound on the cost of sheets that hold so much together. Costs and measures that are whole and add up
 * exactly are compared in whole numbers alone.
 *
 * @param kinds holds >= 0, whole; count >= 0 or Infinity; cost > 0
 * @param need whole, >= 0
 * @returns cost; Infinity when all there are do not hold it
 * @example leastCostQuick([{ holds: 6, count: Infinity, cost: 2 }], 13) // 6
 */
export function leastCostQuick(kinds: readonly Holder[], need: number): number {
  const [only] = kinds;
  if (kinds.length === 1 && only) {
    const times = only.holds > 0 ? timesNeeded(need, only.holds) : need > 0 ? Number.POSITIVE_INFINITY : 0;
    return times > only.count ? Number.POSITIVE_INFINITY : times * only.cost;
  }
  return upToStep(
    kinds,
    addsUp(kinds, need) ? poured([...kinds].sort(perHold), need) : pouredRoughly(kinds, need),
  );
}

/**
 * As `leastCostQuick`, with whole sheets of every kind where that can be worked out in a few thousand steps.
 *
 * @example leastCost([{ holds: 6, count: 1, cost: 2 }, { holds: 5, count: 9, cost: 2 }], 12) // 6
 */
export function leastCost(kinds: readonly Holder[], need: number): number {
  const quick = leastCostQuick(kinds, need);
  if (kinds.length === 1 || quick === Number.POSITIVE_INFINITY || !addsUp(kinds, need)) return quick;
  const exact = cheapest([...kinds].sort(perHold), need);
  return exact === undefined || exact === Number.POSITIVE_INFINITY ? quick : Math.max(quick, exact);
}
