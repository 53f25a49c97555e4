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

/** The smallest step between sums of costs, when they are whole: a relaxed sum may be rounded up to it. */
function stepOf(kinds: readonly Holder[]): number {
  return kinds.every((k) => Number.isSafeInteger(k.cost)) ? kinds.reduce((g, k) => gcd(g, k.cost), 0) : 0;
}

/** Cheapest way to hold so much when sheets may be bought in part; kinds in order of cost for what they hold. */
function relaxed(kinds: readonly Holder[], need: number, from = 0): number {
  let left = need;
  let cost = 0;
  for (let k = from; k < kinds.length && left > 0; k += 1) {
    const kind = kinds[k];
    if (!kind || kind.holds <= 0) continue;
    const taken = Math.min(kind.count, left / kind.holds);
    cost += taken * kind.cost;
    left -= taken * kind.holds;
  }
  return left > need * 1e-9 + 1e-9 ? Number.POSITIVE_INFINITY : cost;
}

const inOrder = (kinds: readonly Holder[]): readonly Holder[] =>
  [...kinds].sort((a, b) => a.cost * b.holds - b.cost * a.holds);

/** A little below the relaxed sum, so that no error of the last place lifts it over a whole number; then up to a step. */
function raised(cost: number, step: number): number {
  const safe = cost * (1 - 1e-9) - 1e-9;
  if (cost === Number.POSITIVE_INFINITY) return cost;
  return step > 0 ? Math.max(0, Math.ceil(safe / step)) * step : Math.max(0, safe);
}

/** Branches on how many of each kind; `best` is the cost of the cheapest way found, no lower than what is true. */
function cheapest(kinds: readonly Holder[], need: number): number | undefined {
  let branches = 0;
  let best = Number.POSITIVE_INFINITY;
  const go = (k: number, left: number, cost: number): void => {
    branches += 1;
    if (left <= 0) best = Math.min(best, cost);
    const kind = kinds[k];
    if (left <= 0 || !kind || branches > mostBranches) return;
    if (cost + relaxed(kinds, left, k) * (1 - 1e-9) >= best) return;
    const most = kind.holds > 0 ? Math.min(kind.count, timesNeeded(left, kind.holds)) : 0;
    for (let n = most; n >= 0; n -= 1) {
      go(k + 1, left - n * kind.holds, cost + n * kind.cost);
    }
  };
  go(0, need, 0);
  return branches > mostBranches ? undefined : best;
}

/**
 * A quick lower bound on the cost of sheets that hold so much together.
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
  return raised(relaxed(inOrder(kinds), need), stepOf(kinds));
}

/**
 * As `leastCostQuick`, with whole sheets of every kind where that can be worked out in a few thousand steps.
 *
 * @example leastCost([{ holds: 6, count: 1, cost: 2 }, { holds: 5, count: 9, cost: 2 }], 12) // 6
 */
export function leastCost(kinds: readonly Holder[], need: number): number {
  const quick = leastCostQuick(kinds, need);
  if (kinds.length === 1 || quick === Number.POSITIVE_INFINITY) return quick;
  const exact = cheapest(inOrder(kinds), need);
  return exact === undefined || exact === Number.POSITIVE_INFINITY ? quick : Math.max(quick, exact);
}
