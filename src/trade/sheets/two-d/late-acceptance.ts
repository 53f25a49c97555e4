import { fill } from './fill';
import { orders, sortLoose } from './order';
import { ruin } from './ruin';
import { begin, type State, takeBack } from './state';

/** Length of the history, noise in the orders, and the weight of room left together. Tuned on samples. */
const lookBack = 30;
const roughness = 0.1;
const roomTogether = 0.02;

/** Late acceptance: a step is taken when it is no worse than where the search was so many steps ago, or than now. */
type LateAcceptance = {
  readonly history: Float64Array;
  now: number;
  best: number;
  steps: number;
  since: number;
};

/** A search that begins where the state is. */
export function lateAcceptanceFrom(state: State): LateAcceptance {
  const now = value(state);
  return { history: new Float64Array(lookBack).fill(now), now, best: now, steps: 0, since: 0 };
}

/** What the search lowers: area without a place; less when the room left lies on few sheets rather than on many. */
function value(state: State): number {
  let together = 0;
  for (const lay of state.lays) {
    if (lay.kind >= 0) together += (lay.free / (lay.w * lay.h)) * lay.free;
  }
  return state.looseArea - roomTogether * together;
}

/** One step: take some off, put all back as well as it goes; true when nothing is loose any more. */
export function step(state: State, seek: LateAcceptance): boolean {
  begin(state);
  ruin(state);
  sortLoose(state, orders[state.dice.next(orders.length)] ?? 'area', roughness);
  fill(state);
  state.work += 20;
  if (state.looseCount === 0) return true;
  const next = value(state);
  const slot = seek.steps % seek.history.length;
  seek.steps += 1;
  if (next <= seek.now || next <= (seek.history[slot] ?? 0)) seek.now = next;
  else takeBack(state);
  seek.history[slot] = seek.now;
  seek.since += 1;
  if (seek.now < seek.best) {
    seek.best = seek.now;
    seek.since = 0;
  }
  return false;
}
