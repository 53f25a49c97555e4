import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { lookAt } from '../../src/app/looking';
import { editBoard, editRun } from '../../src/job/edits';
import type { Change, Entry } from '../../src/job/entry';
import { writeJobFile } from '../../src/job/file';
import { type Job, jobOf } from '../../src/job/job';
import { fold } from '../../src/job/log';
import { planOf, tooMuchOf } from '../../src/plan/plan';
import { fileText } from '../../src/screens/job/import-words';
import { leastOperations, mostOperations } from '../../src/trade/setups/most';
import { l } from '../length/write-figures';

const boardOf = (id: string, copies: number, count: number): readonly Change[] => [
  ...editBoard(id, { name: `Board ${id}`, made: 'alike', copies, length: l('96'), machine: 'stop' }),
  ...editRun(id, 'r1', {
    ...{ spacing: 'pitch', face: 'A', point: 'near', count },
    ...{ width: l('1/128'), pitch: l('1/64'), first: l('1') },
  }),
];

const entriesOf = (changes: readonly Change[], from = 1): readonly Entry[] =>
  changes.map((change, k) => ({
    job: 'big',
    device: 'p1',
    count: from + k,
    at: '2026-11-28T08:00:00.000Z',
    act: `p1.${from + k}`,
    label: 'made',
    ...change,
  }));

const boards = (n: number, copies: number, count: number): readonly Change[] =>
  Array.from({ length: n }, (_, k) => boardOf(`b${k}`, copies, count)).flat();

const jobWith = (changes: readonly Change[]): Job => jobOf('big', fold(entriesOf(changes)).values);

const sample = (): Job => {
  const file = path.resolve(import.meta.dirname, '../../demo-data/mineral-and-shell-cabinet.json');
  const { job, entries } = JSON.parse(readFileSync(file, 'utf8'));
  return jobOf(job, fold(entries).values);
};

describe('planOf', () => {
  test('works out no more operations than a job takes, and says how many there are', () => {
    const { operations, over, order, parts } = planOf(jobWith(boards(60, 10, 100)), {});
    expect([operations.length, over, parts.length]).toEqual([0, 60 * 10 * 101, 60]);
    expect(order).toMatchObject({ ok: true, value: { runs: [] } });
  });

  test('works out as many as it takes', () => {
    const { operations, over } = planOf(jobWith(boards(9, 10, 100)), {});
    expect([operations.length, over]).toEqual([9 * 10 * 101 + 1, undefined]); // and a test cut
  });

  test('one board of more cuts than a layout takes stands as not set out', () => {
    const { operations, over } = planOf(jobWith(boardOf('b', 1000, 900)), {});
    expect([operations.length, over]).toEqual([2000, undefined]);
    expect(operations.filter(({ what }) => what === 'groove').every(({ cannot }) => cannot)).toBe(true);
  });

  test('of more things than there may be operations nothing is worked out', () => {
    const changes = Array.from({ length: mostOperations + 1 }, (_, k) =>
      editBoard(`b${k}`, { name: 'Board', made: 'alike' }),
    ).flat();
    const { parts, over } = planOf(jobWith(changes), {});
    expect([parts, over]).toEqual([[], mostOperations + 1]);
  });
});

describe('leastOperations', () => {
  test('counts no more than there are: the sample', () => {
    const { parts, operations } = planOf(sample(), {});
    const least = parts.reduce((n, part) => n + leastOperations(part), 0);
    expect(least).toBeGreaterThan(operations.length / 2);
    expect(least).toBeLessThanOrEqual(operations.length);
  });
});

describe('lookAt', () => {
  const text = (entries: readonly Entry[]) => writeJobFile({ job: 'big', entries });
  const nobody = { logOf: async () => undefined, shop: {} };

  test('refuses a job with a board of too many cuts, by its name', async () => {
    const found = await lookAt(text(entriesOf(boardOf('b', 1000, 900))), nobody);
    expect(found).toMatchObject({ code: 'too-many-cuts', board: 'Board b' });
    expect('code' in found && fileText(found)).toBe(
      'Board b of this job is too much to be worked out. 1000 boards of 900 grooves: 898000 cuts over the 2000 of one layout. At most 2 grooves each, or fewer boards.',
    );
  });

  test('refuses a job of too many operations, by how many', async () => {
    const found = await lookAt(text(entriesOf(boards(11, 10, 100))), nobody);
    expect('code' in found && fileText(found)).toBe(
      'The job would be too much to be worked out. It comes to at least 11110 operations, 1110 over the 10000 that one job takes. Share it out over several jobs.',
    );
  });

  test('refuses what would be too much together with the job that is here', async () => {
    const ours = entriesOf(boards(6, 10, 100));
    const theirs = entriesOf(boards(11, 10, 100).slice(ours.length), ours.length + 1);
    expect(await lookAt(text(theirs), nobody)).toMatchObject({ file: { job: 'big' } });
    expect(await lookAt(text(theirs), { logOf: async () => ours, shop: {} })).toMatchObject({
      code: 'too-many-operations',
    });
  });

  test('takes a job as large as it may be, and the sample', async () => {
    expect(await lookAt(text(entriesOf(boards(9, 10, 100))), nobody)).toHaveProperty('file');
    expect(tooMuchOf(sample(), {})).toBeUndefined();
  });
});
