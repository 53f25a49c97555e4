import { fill } from './fill';
import { better, leftStep, measuresOf, type Rank } from './measures';
import { kindsIn, type Narrowing, narrowed } from './narrow';
import { orders, sortLoose } from './order';
import { costOf, sheetsOf } from './plan';
import { searchWithin } from './search';
import { stage, stripWays } from './staged';
import { clearAll, emptyState, restore, type Saved, type State, saved } from './state';
import type { Kind } from './stock';
import { tidy } from './tidy';
import type { Laid, TwoD } from './two-d';

/** The work of one planning: how much there is of it, and what has been done. */
type Work = { readonly until: number; readonly patience: number; readonly problem: TwoD };

const rankOf = (laid: Laid): Rank => ({ ...measuresOf(laid.sheets), cost: laid.cost });

function laidAs(state: State, problem: TwoD, laid: Laid): Laid {
  const sheets = sheetsOf(state, problem);
  const cost = costOf(problem, sheets);
  const bound = Math.min(laid.bound, cost);
  return { sheets, cost, bound, proved: cost === bound };
}

/** A state with other kinds of sheets, all pieces loose; the work done so far goes on counting. */
function stateWith(state: State, kinds: readonly Kind[], budget: number): State {
  return { ...emptyState(state.stock, kinds, state.dice), budget, work: state.work };
}

/** Everything laid by strips or by one of the orders, each in turn; yields true when all pieces found a place. */
export function* starts(state: State): Generator<true | undefined> {
  for (const way of stripWays) {
    clearAll(state);
    stage(state, way);
    yield state.looseCount === 0 || undefined;
  }
  for (const order of orders) {
    clearAll(state);
    sortLoose(state, order, 0);
    fill(state);
    yield state.looseCount === 0 || undefined;
  }
}

/** The best of the starts left lying in the state; false when none got all pieces in. */
function* bestStart(state: State, problem: TwoD, laid: Laid): Generator<undefined, boolean> {
  let best: { readonly kept: Saved; readonly rank: Rank } | undefined;
  for (const done of starts(state)) {
    yield undefined;
    if (!done) continue;
    const rank = rankOf(laidAs(state, problem, laid));
    if (!best || better(rank, best.rank, leftStep(problem))) best = { kept: saved(state), rank };
  }
  if (best) restore(state, best.kept);
  return best !== undefined;
}

/** The ways to give up a strip of some sheet as large as `area`, as far as there is so much room left at all. */
function narrowingsFor(kinds: readonly Kind[], area: number, free: number): readonly Narrowing[] {
  return kinds.flatMap(({ of, w, h }) =>
    [
      { of, right: true, off: Math.ceil(area / h), side: w, other: h },
      { of, right: false, off: Math.ceil(area / w), side: h, other: w },
    ].filter((n) => n.off < n.side && n.off * n.other <= free),
  );
}

function freeOn(kinds: readonly Kind[], { stock }: State): number {
  const all = kinds.reduce((sum, k) => sum + k.count * k.w * k.h, 0);
  return all - stock.count.reduce((sum, count, k) => sum + count * (stock.area[k] ?? 0), 0);
}

/** Looks for a plan on these sheets: the starts first, then the search. */
function* fits(
  state: State,
  problem: TwoD,
  { laid, until }: { readonly laid: Laid; readonly until: number },
): Generator<undefined, boolean> {
  if (yield* bestStart(state, problem, laid)) return true;
  return yield* searchWithin(state, until);
}

/** Keeps an ever larger strip of one sheet whole; returns the state with the largest it got. */
function* keepWhole(from: State, first: Laid, work: Work): Generator<Laid | undefined, State> {
  const { problem } = work;
  const kinds = kindsIn(problem, first.sheets);
  const step = leftStep(problem);
  const free = freeOn(kinds, from);
  let state = from;
  let laid = first;
  // Each failure halves the leap, from an eighth of the sheet to one step.
  for (let leap = 8; leap >= 1 && state.work < work.until; ) {
    const area = (Math.floor(rankOf(laid).left / step) + leap) * step;
    let found = false;
    for (const narrowing of narrowingsFor(kinds, area, free)) {
      const next = stateWith(state, narrowed(kinds, narrowing), first.cost);
      const until = Math.min(work.until, next.work + work.patience / 4);
      found = yield* fits(next, problem, { laid, until });
      if (!found) {
        state.work = next.work;
        continue;
      }
      state = next;
      laid = laidAs(next, problem, laid);
      yield laid;
      break;
    }
    if (!found) leap = Math.floor(leap / 2);
  }
  return state;
}

/**
 * Makes a plan of least cost a better one to cut by: a large leftover first, then few settings, then few cuts. The work
 * goes on counting in `from`.
 */
export function* polish(from: State, first: Laid, work: Work): Generator<Laid | undefined, Laid> {
  if (first.sheets.length === 0) return first;
  const { problem } = work;
  const step = leftStep(problem);
  let best = first;
  const take = (laid: Laid): Laid | undefined => {
    if (!better(rankOf(laid), rankOf(best), step)) return undefined;
    best = laid;
    return laid;
  };
  from.budget = first.cost;
  const whole = keepWhole(from, first, work);
  let state = from;
  for (;;) {
    const next = whole.next();
    if (next.done) {
      state = next.value;
      break;
    }
    yield next.value && take(next.value);
  }
  for (const gain of tidy(state, problem, { ...work, step })) {
    yield gain && take(laidAs(state, problem, best));
  }
  from.work = state.work;
  return best;
}
