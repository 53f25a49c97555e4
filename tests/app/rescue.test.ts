import { expect, test } from 'vitest';
import { rescue } from '../../src/app/rescue';
import { readBackup } from '../../src/job/backup';
import type { Entry } from '../../src/job/entry';
import { memoryFolder } from '../store/journal/memory-folder';
import { memoryJournal } from '../store/journal/memory-journal';

const entry = (job: string, count: number): Entry => ({
  job,
  device: 'phone',
  count,
  at: '2026-11-25T10:00:00.000Z',
  act: `phone.${count}`,
  label: 'Cut: Left',
  kind: 'tick',
  op: 'cut/b1/s1/1',
  figure: '3/4',
});

test('what the second copy holds goes out as a copy of everything when the database does not open', async () => {
  const journal = memoryJournal(memoryFolder());
  await journal.append([
    ['log', entry('j1', 1)],
    ['log', entry('j2', 1)],
    ['log', entry('j1', 2)],
    ['shop', 'kerf', '1/8'],
    ['settings', 'theme', 'blued'],
    ['settings', 'device', 'phone'],
  ]);
  const found = await rescue(journal);
  expect(found?.lost).toEqual([]);
  const read = await readBackup(found?.text ?? '');
  if (!read.ok) throw new Error(read.error.code);
  expect(read.value.jobs.map(({ job, entries }) => [job, entries.length])).toEqual([
    ['j1', 2],
    ['j2', 1],
  ]);
  expect(read.value.shop.kerf?.toFraction()).toBe('1/8');
  expect(read.value.likes).toEqual({ theme: 'blued' });
});

test('a second copy that holds nothing, or does not answer, offers nothing', async () => {
  expect(await rescue(memoryJournal(memoryFolder()))).toBeUndefined();
  const broken = memoryFolder();
  broken.fail = () => {
    throw new Error('no');
  };
  expect(await rescue(memoryJournal(broken))).toBeUndefined();
});

test('what could not be read of the second copy is named beside what goes out', async () => {
  const journal = memoryJournal(memoryFolder());
  const why = 'a damaged line of “Cut: Left”';
  await journal.append([
    ['log', entry('j1', 1)],
    ['aside', { from: 'the journal', why, row: '…' }],
  ]);
  expect((await rescue(journal))?.lost).toEqual([why]);
});
