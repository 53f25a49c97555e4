import { describe, expect, test } from 'vitest';
import { lookAt } from '../../src/app/looking';
import type { Entry } from '../../src/job/entry';
import { writeJobFile } from '../../src/job/file';
import { tooMuchOf } from '../../src/plan/plan';
import { fileText } from '../../src/screens/job/import-words';
import { boardOf, boards, entriesOf, sample } from '../plan/big-job';

describe('lookAt', () => {
  const text = (entries: readonly Entry[]) => writeJobFile({ job: 'big', entries });
  const nobody = { logOf: async () => undefined, shop: {} };

  test('refuses a job with a board of too many cuts, by its name', async () => {
    const found = await lookAt(text(entriesOf(boardOf('b', 1000, 900))), nobody);
    expect(found).toMatchObject({ code: 'too-many-cuts', board: 'Board b' });
    expect('code' in found && fileText(found)).toBe(
      'Board b of this job is too much to work out. 1000 boards of 900 grooves: 898000 cuts over the 2000 of one layout. At most 2 grooves each, or fewer boards.',
    );
  });

  test('refuses a job of too many operations, by how many', async () => {
    const found = await lookAt(text(entriesOf(boards(11, 10, 100))), nobody);
    expect('code' in found && fileText(found)).toBe(
      'The job would be too much to work out. It comes to at least 11110 operations, 1110 over the 10000 that one job takes. Split it into several jobs.',
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
