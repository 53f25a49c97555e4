import { expect, test } from 'vitest';
import { byJob } from '../../src/job/by-job';
import type { Entry } from '../../src/job/entry';

test('entries of two logs, mixed, come apart in their order', () => {
  const of = (job: string, count: number) => ({ job, count }) as Entry;
  const jobs = byJob([of('a', 1), of('b', 7), of('a', 2)]);
  expect([...jobs].map(([job, own]) => [job, own.map(({ count }) => count)])).toEqual([
    ['a', [1, 2]],
    ['b', [7]],
  ]);
});
