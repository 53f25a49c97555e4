import { type Filled, type Filling, fillSticks } from '../../../../src/trade/sheets/one-d/fill-sticks';
import type { OneD } from '../../../../src/trade/sheets/one-d/kinds';

/** Runs the generator to its end; every plan on the way is checked too. */
export function run(problem: OneD, filling: Filling): Filled {
  const steps = fillSticks(problem, filling);
  let last = Number.POSITIVE_INFINITY;
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.value) {
      const said = faults(problem, step.value);
      if (said.length > 0) throw new Error(said.join(', '));
      if (step.value.sticks.length > last) throw new Error('a worse plan after a better');
      last = step.value.sticks.length;
    }
    if (step.done) return step.value;
  }
}

/** What is wrong with a plan, reckoned anew from the problem alone. */
export function faults({ capacity, items }: OneD, { sticks, bound, proved }: Filled): readonly string[] {
  const cut = items.map(() => 0);
  const said: string[] = [];
  for (const stick of sticks) {
    const sum = stick.items.reduce((s, k) => s + (items[k]?.size ?? Number.NaN), 0);
    if (!(sum <= capacity)) said.push(`a stick of ${sum}`);
    if (stick.items.length === 0) said.push('an empty stick');
    for (const k of stick.items) cut[k] = (cut[k] ?? 0) + 1;
  }
  items.forEach(({ count }, k) => {
    if (cut[k] !== count) said.push(`item ${k} cut ${cut[k]} times, not ${count}`);
  });
  if (bound > sticks.length) said.push('a bound above the plan');
  if (proved !== (bound === sticks.length)) said.push('proved is not what it says');
  return said;
}

/** The fewest sticks, by trying every set of pieces for the last stick: for a dozen pieces at most. */
export function fewest({ capacity, items }: OneD): number {
  const sizes = items.flatMap(({ size, count }) => new Array<number>(count).fill(size));
  const sets = 1 << sizes.length;
  const sums = new Array<number>(sets).fill(0);
  for (let set = 1; set < sets; set += 1) {
    const low = 31 - Math.clz32(set & -set);
    sums[set] = (sums[set & (set - 1)] ?? 0) + (sizes[low] ?? 0);
  }
  const least = new Array<number>(sets).fill(Number.POSITIVE_INFINITY);
  least[0] = 0;
  for (let set = 1; set < sets; set += 1) {
    for (let last = set; last > 0; last = (last - 1) & set) {
      if ((sums[last] ?? 0) <= capacity) {
        least[set] = Math.min(least[set] ?? 0, (least[set ^ last] ?? 0) + 1);
      }
    }
  }
  return least[sets - 1] ?? 0;
}
