import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { stickLowerBound } from '../../../../src/trade/sheets/one-d/bounds';
import type { OneD } from '../../../../src/trade/sheets/one-d/kinds';
import { expectFewest, expectSameValue, provable, writtenOut } from './beside-highs';
import { instancesIn } from './instances';
import { run } from './verify';

// All invented. Those of data/ are sticks cut up at random with a kerf, so that the fewest are known.
const made = instancesIn(path.join(import.meta.dirname, 'data'));

describe('sticks cut up at random', () => {
  test('there are five', () => expect(made).toHaveLength(5));

  test.each(made)('$name takes $optimum sticks', ({ problem, optimum }) => {
    const { sticks, bound } = run(problem, { seed: 1, effort: 1500 });
    expect(sticks.length).toBe(optimum);
    expect(bound).toBeLessThanOrEqual(optimum);
    expect(stickLowerBound(problem)).toBeLessThanOrEqual(bound);
  });
});

const jobs: readonly { readonly name: string; readonly problem: OneD }[] = [
  {
    name: 'seven slats off three sticks',
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
    name: 'many equal pieces',
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

describe('invented sticks, beside HiGHS', () => {
  const written = writtenOut([...made, ...jobs]);

  test('all seven can be written out', () => expect(written).toHaveLength(7));

  test.each(written)('$name has the value HiGHS finds', (one) => expectSameValue(one));

  test.each(provable(written))('$name takes the fewest sticks HiGHS proves', (one) => expectFewest(one));
});
