import highs from 'highs';
import { describe, expect, test } from 'vitest';
import { lowerBound } from '../../src/trade/sheets/one-d/bounds';
import { kindsOf, type OneD } from '../../src/trade/sheets/one-d/kinds';
import { relaxation } from '../../src/trade/sheets/one-d/relax';
import { run } from '../trade/sheets/one-d/verify';
import { instances } from './sticks-data';

// Reference: HiGHS (MIT), Q. Huangfu, J. A. J. Hall, Mathematical Programming Computation 10 (2018) 119–142, on the
// programme of P. C. Gilmore and R. E. Gomory (1961) written out over every stick that has no room for one piece more.
const solver = await highs();

const patternsAtMost = 4000;

/** Every full stick, as counts a kind; undefined when there are too many. */
function patterns({ capacity, items }: OneD): readonly (readonly number[])[] | undefined {
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

function model({ items }: OneD, full: readonly (readonly number[])[], integer: boolean): string {
  const names = full.map((_, p) => `x${p}`);
  const lines = (list: readonly string[]) => list.join('\n + ');
  const rows = items.map(({ count }, k) => {
    const terms = full.flatMap((counts, p) => ((counts[k] ?? 0) > 0 ? [`${counts[k]} x${p}`] : []));
    return ` c${k}: ${lines(terms)} >= ${count}`;
  });
  const whole = integer ? `General\n ${names.join('\n ')}\n` : '';
  return `Minimize\n obj: ${lines(names)}\nSubject To\n${rows.join('\n')}\n${whole}End\n`;
}

/** Sizes that differ, so that the reference and ours speak of the same sticks. */
function merged(problem: OneD): OneD {
  const { capacity, sizes, wanted } = kindsOf(problem);
  return { capacity, items: [...sizes].map((size, k) => ({ size, count: wanted[k] ?? 0 })) };
}

const ours: readonly { readonly name: string; readonly problem: OneD }[] = [
  {
    name: 'Example 3 of sheets (ours)',
    problem: {
      capacity: 769,
      items: [
        { size: 482, count: 2 },
        { size: 453, count: 1 },
        { size: 284, count: 2 },
        { size: 137, count: 2 },
      ],
    },
  },
  {
    name: 'a job of many equal pieces (ours)',
    problem: {
      capacity: 2443,
      items: [
        { size: 723, count: 17 },
        { size: 566, count: 23 },
        { size: 401, count: 9 },
        { size: 319, count: 31 },
        { size: 1204, count: 8 },
      ],
    },
  },
];

const sample = [...instances, ...ours]
  .map(({ name, problem }) => ({ name, problem: merged(problem) }))
  .flatMap(({ name, problem }) => {
    const full = patterns(problem);
    return full ? [{ name, problem, full }] : [];
  });

describe('the programme over all sticks, beside HiGHS', () => {
  test('the sample is not empty', () => expect(sample.length).toBeGreaterThanOrEqual(8));

  test.each(sample)('$name has the value HiGHS finds', ({ problem, full }) => {
    const { Status, ObjectiveValue } = solver.solve(model(problem, full, false));
    expect(Status).toBe('Optimal');
    expect(Math.abs(relaxation(problem) - ObjectiveValue)).toBeLessThan(1e-6);
    expect(lowerBound(problem)).toBeLessThanOrEqual(Math.ceil(ObjectiveValue - 1e-6));
  });

  test.each(sample.filter(({ full }) => full.length <= 400))(
    '$name: no bound of ours is above the fewest sticks HiGHS proves',
    ({ problem, full }) => {
      const { Status, ObjectiveValue } = solver.solve(model(problem, full, true), { time_limit: 5 });
      if (Status !== 'Optimal') return;
      const { sticks, bound } = run(problem, { seed: 1, effort: 300 });
      expect(bound).toBeLessThanOrEqual(Math.round(ObjectiveValue));
      expect(sticks.length).toBe(Math.round(ObjectiveValue));
    },
  );
});
