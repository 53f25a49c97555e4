import highs from 'highs';
import { expect } from 'vitest';
import { stickLowerBound } from '../../../../src/trade/sheets/one-d/bounds';
import { kindsOf, type OneD } from '../../../../src/trade/sheets/one-d/kinds';
import { relaxation } from '../../../../src/trade/sheets/one-d/relax';
import { run } from './verify';

// Reference: HiGHS (MIT), Q. Huangfu, J. A. J. Hall, Mathematical Programming Computation 10 (2018) 119–142, on the
// programme of P. C. Gilmore and R. E. Gomory (1961) written out over every stick that has no room for one piece more.
const solver = await highs();

const patternsAtMost = 4000;
const patternsProvedAtMost = 400;

type Full = readonly (readonly number[])[];
type Named = { readonly name: string; readonly problem: OneD };
export type Written = Named & { readonly full: Full };

/** Every full stick, as counts a kind; undefined when there are too many. */
function patterns({ capacity, items }: OneD): Full | undefined {
  const found: number[][] = [];
  const counts = items.map(() => 0);
  const go = (from: number, room: number): boolean => {
    const isFull = items.every(({ size, count }, k) => (counts[k] ?? 0) >= count || size > room);
    if (isFull) found.push([...counts]);
    if (found.length > patternsAtMost) return false;
    for (let k = from; k < items.length; k += 1) {
      const { size = 0, count = 0 } = items[k] ?? {};
      if (size > room || (counts[k] ?? 0) >= count) continue;
      counts[k] = (counts[k] ?? 0) + 1;
      const goesOn = go(k, room - size);
      counts[k] = (counts[k] ?? 0) - 1;
      if (!goesOn) return false;
    }
    return true;
  };
  return go(0, capacity) ? found : undefined;
}

function model({ items }: OneD, full: Full, integer: boolean): string {
  const names = full.map((_, p) => `x${p}`);
  const lines = (list: readonly string[]) => list.join('\n + ');
  const rows = items.map(({ count }, k) => {
    const terms = full.flatMap((counts, p) => ((counts[k] ?? 0) > 0 ? [`${counts[k]} x${p}`] : []));
    return ` c${k}: ${lines(terms)} >= ${count}`;
  });
  const whole = integer ? `General\n ${names.join('\n ')}\n` : '';
  return `Minimize\n obj: ${lines(names)}\nSubject To\n${rows.join('\n')}\n${whole}End\n`;
}

/** Sizes that differ, so that the reference and the app speak of the same sticks. */
function merged(problem: OneD): OneD {
  const { capacity, sizes, wanted } = kindsOf(problem);
  return { capacity, items: [...sizes].map((size, k) => ({ size, count: wanted[k] ?? 0 })) };
}

/** Those problems whose full sticks are few enough to write out. */
export const writtenOut = (all: readonly Named[]): readonly Written[] =>
  all.flatMap(({ name, problem }) => {
    const sizes = merged(problem);
    const full = patterns(sizes);
    return full ? [{ name, problem: sizes, full }] : [];
  });

/** Those of them that are small enough to be proved in whole numbers. */
export const provable = (written: readonly Written[]): readonly Written[] =>
  written.filter(({ full }) => full.length <= patternsProvedAtMost);

/** The app's relaxation has the value HiGHS finds, and its lower bound is not above that value rounded up. */
export function expectSameValue({ problem, full }: Written): void {
  const { Status, ObjectiveValue } = solver.solve(model(problem, full, false));
  expect(Status).toBe('Optimal');
  expect(Math.abs(relaxation(problem) - ObjectiveValue)).toBeLessThan(1e-6);
  expect(stickLowerBound(problem)).toBeLessThanOrEqual(Math.ceil(ObjectiveValue - 1e-6));
}

/** The app's plan takes the fewest sticks HiGHS proves, and no bound is above them. */
export function expectFewest({ problem, full }: Written): void {
  const { Status, ObjectiveValue } = solver.solve(model(problem, full, true), { time_limit: 60 });
  expect(Status).toBe('Optimal');
  const { sticks, bound } = run(problem, { seed: 1, effort: 300 });
  expect(bound).toBeLessThanOrEqual(Math.round(ObjectiveValue));
  expect(sticks.length).toBe(Math.round(ObjectiveValue));
}
