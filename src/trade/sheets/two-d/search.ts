import { fill } from './fill';
import { lateAcceptanceFrom, step } from './late-acceptance';
import { orders, sortLoose } from './order';
import { clearAll, type State, takeOff, widenMarks } from './state';

/** Steps without gain after which the search begins anew. */
const patience = 10_000;

/** Work between two breaks at which the caller may stop: a few milliseconds. */
export const breakEvery = 200_000;

/** Puts back the sheet with least on it until the sheets cost no more than they may. */
export function dropTo(state: State, budget: number): void {
  while (state.cost > budget) {
    let worst = -1;
    let least = Number.POSITIVE_INFINITY;
    for (const [place, lay] of state.lays.entries()) {
      const used = lay.w * lay.h - lay.free;
      if (lay.kind < 0 || used >= least) continue;
      worst = place;
      least = used;
    }
    const lay = state.lays[worst];
    if (!lay) return;
    widenMarks(state, lay.n);
    state.gone.fill(1, 0, lay.n);
    takeOff(state, worst);
  }
}

/** Lays everything anew in a rough order. */
function anew(state: State): void {
  clearAll(state);
  sortLoose(state, orders[state.dice.next(orders.length)] ?? 'area', 0.5);
  fill(state);
}

/**
 * Looks for a plan within the budget of the state, until its work comes to `until`.
 *
 * @returns true when all pieces have a place
 */
export function* searchWithin(state: State, until: number): Generator<undefined, boolean> {
  let seek = lateAcceptanceFrom(state);
  let pause = state.work + breakEvery;
  while (state.work < until && state.looseCount > 0) {
    if (step(state, seek)) return true;
    state.least = Math.min(state.least, state.looseCount);
    if (seek.since > patience) {
      anew(state);
      seek = lateAcceptanceFrom(state);
    }
    if (state.work < pause) continue;
    yield undefined;
    pause = state.work + breakEvery;
  }
  return state.looseCount === 0;
}
