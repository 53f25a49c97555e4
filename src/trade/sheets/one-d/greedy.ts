import { type Kinds, pieceCount, type Stick } from './kinds';
import type { Meter } from './meter';

const inOrder = (a: number, b: number): number => a - b;

/**
 * Longest piece first, each into a stick that has room: the first such stick, or the one it fills best.
 *
 * @param kinds sizes in whole grid steps, longest first
 * @param how `first` room found, or `best`: least left over
 * @returns sticks that hold every piece wanted
 * @example longestFirst(kindsOf({ capacity: 10, items: [{ size: 6, count: 2 }] }), 'first') // [[0], [0]]
 */
function longestFirst({ sizes, wanted, capacity }: Kinds, how: 'first' | 'best'): readonly Stick[] {
  const sticks: number[][] = [];
  const room: number[] = [];
  for (let k = 0; k < sizes.length; k += 1) {
    const size = sizes[k] ?? 0;
    for (let n = wanted[k] ?? 0; n > 0; n -= 1) {
      let into = -1;
      for (let s = 0; s < sticks.length; s += 1) {
        const here = room[s] ?? 0;
        if (here < size || (into >= 0 && here >= (room[into] ?? 0))) continue;
        into = s;
        if (how === 'first') break;
      }
      if (into < 0) into = sticks.push([]) - 1;
      sticks[into]?.push(k);
      room[into] = (room[into] ?? capacity) - size;
    }
  }
  return sticks;
}

/** One stick filled as full as a short search finds: what is taken from `left` and how much stays empty. */
type Filling = { readonly left: Int32Array; best: number[]; slack: number; steps: number };

/** Tries kinds from `from` on; stops at a full stick or when the steps are used up. */
function deepen(kinds: Kinds, to: Filling, now: { picked: number[]; room: number; from: number }): void {
  const { left } = to;
  if (now.room < to.slack) {
    to.slack = now.room;
    to.best = [...now.picked];
  }
  const { picked, room } = now;
  for (let k = now.from; k < left.length && to.slack > 0 && to.steps > 0; k += 1) {
    const size = kinds.sizes[k] ?? 0;
    if ((left[k] ?? 0) === 0 || size > room) continue;
    to.steps -= 1;
    left[k] = (left[k] ?? 0) - 1;
    picked.push(k);
    deepen(kinds, to, { picked, room: room - size, from: k });
    picked.pop();
    left[k] = (left[k] ?? 0) + 1;
  }
}

/**
 * Fills stick after stick: the longest piece left, then the set that leaves least beside it.
 *
 * Source: minimum bin slack, J. N. D. Gupta, J. C. Ho (1999); with the longest piece set first as in K. Fleszar,
 * K. S. Hindi, Computers & Operations Research 29 (2002).
 *
 * @param kinds sizes in whole grid steps, longest first
 * @param options `steps` of search a stick may cost, ≥ 1; `meter` counts the work
 * @returns sticks that hold every piece wanted
 * @example leastSlack(kinds, { steps: 1000, meter: meterOf(10) })
 */
function leastSlack(kinds: Kinds, { steps, meter }: { steps: number; meter: Meter }): readonly Stick[] {
  const left = Int32Array.from(kinds.wanted);
  const sticks: Stick[] = [];
  for (let k = 0; k < left.length; ) {
    if ((left[k] ?? 0) === 0) {
      k += 1;
      continue;
    }
    left[k] = (left[k] ?? 0) - 1;
    const room = kinds.capacity - (kinds.sizes[k] ?? 0);
    const found: Filling = { left, best: [k], slack: room + 1, steps };
    deepen(kinds, found, { picked: [k], room, from: k });
    for (const other of found.best.slice(1)) left[other] = (left[other] ?? 0) - 1;
    meter.spent += (steps - found.steps) * 4 + left.length;
    sticks.push(found.best.sort(inOrder));
  }
  return sticks;
}

/** The shortest plan of the quick ways. @example quickPlan(kinds, { steps: 1000, meter }) */
export function quickPlan(kinds: Kinds, options: { steps: number; meter: Meter }): readonly Stick[] {
  const plans = [longestFirst(kinds, 'first'), longestFirst(kinds, 'best'), leastSlack(kinds, options)];
  options.meter.spent += pieceCount(kinds) * (plans[0]?.length ?? 0) * 2;
  return plans.reduce((a, b) => (b.length < a.length ? b : a));
}
