import { fill } from './fill';
import { addUpTallies, better, type Rank, type Tally, tallyOf } from './measures';
import { orders, sortLoose } from './order';
import { workOfTree } from './plan';
import { ruin } from './ruin';
import { breakEvery } from './search';
import { begin, type State, takeBack } from './state';
import { treeOf } from './tree';
import type { TwoD } from './two-d';

/** Tallies of the sheets as they lie; those of sheets touched in a step are worked out again. */
type Tallies = { now: (Tally | undefined)[]; next: (Tally | undefined)[] };

function tallyAt(state: State, problem: TwoD, place: number): Tally | undefined {
  const lay = state.lays[place];
  const size = problem.sheets[state.kinds[lay?.kind ?? -1]?.of ?? -1];
  return lay && size && lay.kind >= 0 ? tallyOf(treeOf(lay, size)) : undefined;
}

const rankOf = (state: State, tallies: readonly (Tally | undefined)[]): Rank => ({
  ...addUpTallies(tallies.flatMap((t) => t ?? [])),
  cost: state.cost,
});

function touchedTallies(state: State, problem: TwoD, { now }: Tallies): (Tally | undefined)[] {
  const next = state.lays.map((_, place) => now[place]);
  for (let k = 0; k < state.touchedCount; k += 1) {
    const place = state.touchedList[k] ?? 0;
    next[place] = tallyAt(state, problem, place);
    state.work += workOfTree(state.lays[place]?.n ?? 0);
  }
  return next;
}

/** Work to add up the settings of all sheets, for each piece. Measured, no source. */
const workOfSettings = 5;

/** One step; the rank it leads to, or undefined when a piece found no place. */
function change(state: State, problem: TwoD, tallies: Tallies): Rank | undefined {
  begin(state);
  ruin(state);
  sortLoose(state, orders[state.dice.next(orders.length)] ?? 'area', 0.2);
  fill(state);
  state.work += 20 + 20 * state.lays.length;
  if (state.looseCount > 0) return undefined;
  state.work += workOfSettings * state.stock.total;
  tallies.next = touchedTallies(state, problem, tallies);
  return rankOf(state, tallies.next);
}

/** Work without gain after which there is nothing more to be had. */
type Limits = { readonly until: number; readonly patience: number; readonly step: number };

/**
 * Changes a plan in which all pieces lie, a little at a time, and keeps what is no worse: a larger leftover, fewer
 * settings, fewer cuts. Yields true at each gain, undefined at each break.
 */
export function* tidy(
  state: State,
  problem: TwoD,
  { until, patience, step }: Limits,
): Generator<true | undefined> {
  const tallies: Tallies = { now: [], next: [] };
  tallies.now = state.lays.map((_, place) => tallyAt(state, problem, place));
  let rank = rankOf(state, tallies.now);
  let gained = state.work;
  let pause = state.work + breakEvery;
  while (state.work < Math.min(until, gained + patience)) {
    const next = change(state, problem, tallies);
    if (!next || better(rank, next, step)) takeBack(state);
    else {
      tallies.now = tallies.next;
      if (better(next, rank, step)) {
        gained = state.work;
        yield true;
      }
      rank = next;
    }
    if (state.work < pause) continue;
    yield undefined;
    pause = state.work + breakEvery;
  }
}
