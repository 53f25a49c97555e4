import { expect, test } from 'vitest';
import type { Entry } from '../../src/job/entry';
import { viewOf } from '../../src/store/combined-reads';
import type { Row } from '../../src/store/journal/row';
import { keeperOf, type StoreContext } from '../../src/store/store-context';

const now = () => '2026-11-25T10:00:00.000Z';
const unasked = () => Promise.reject(new Error('the database was asked'));

/** A page whose database is empty, and whose journal is silent. */
const page = (): StoreContext => ({
  ...keeperOf(undefined, now),
  connection: { use: unasked, write: unasked, readOnly: () => false, close: () => undefined },
  device: 'phone',
  aloneName: 'phone00000001',
  now,
  pages: { tell: () => undefined, hear: () => undefined, close: () => undefined },
});

let looks = 0;

/** A tick that counts how often somebody looks which count it has. */
function watched(job: string, count: number): Row {
  const entry: Entry = {
    ...({ job, device: 'd', at: now(), act: `d.${count}`, label: 'x' } as const),
    ...({ kind: 'tick', op: `cut/b1/o${count}/1`, figure: '3/4' } as const),
    count,
  };
  return [
    'log',
    Object.defineProperty(entry, 'count', {
      get: () => {
        looks += 1;
        return count;
      },
    }),
  ];
}

/** How often entries are looked at while so many jobs of ten entries are listed. */
async function looksFor(jobs: number): Promise<number> {
  const here = page();
  const rows = Array.from({ length: jobs * 10 }, (_, k) => watched(`j${k % jobs}`, 1 + Math.floor(k / jobs)));
  here.ahead.show(rows, 'all');
  looks = 0;
  expect(await viewOf(here).jobs()).toHaveLength(jobs);
  return looks;
}

test('listing the jobs that only the journal has looks at the entries of each job for that job alone', async () => {
  const ten = await looksFor(10);
  expect(ten).toBeGreaterThan(0);
  expect(await looksFor(30)).toBe(3 * ten);
});
