import { readFileSync } from 'node:fs';
import path from 'node:path';
import { editBoard, editRun } from '../../src/job/edits';
import type { Change, Entry } from '../../src/job/entry';
import { type Job, jobOf } from '../../src/job/job';
import { fold } from '../../src/job/log';
import { l } from '../length/write-figures';

export const boardOf = (id: string, copies: number, count: number): readonly Change[] => [
  ...editBoard(id, { name: `Board ${id}`, made: 'alike', copies, length: l('96'), machine: 'stop' }),
  ...editRun(id, 'r1', {
    ...{ spacing: 'pitch', face: 'A', point: 'near', count },
    ...{ width: l('1/128'), pitch: l('1/64'), first: l('1') },
  }),
];

export const entriesOf = (changes: readonly Change[], from = 1): readonly Entry[] =>
  changes.map((change, k) => ({
    job: 'big',
    device: 'p1',
    count: from + k,
    at: '2026-11-28T08:00:00.000Z',
    act: `p1.${from + k}`,
    label: 'made',
    ...change,
  }));

export const boards = (n: number, copies: number, count: number): readonly Change[] =>
  Array.from({ length: n }, (_, k) => boardOf(`b${k}`, copies, count)).flat();

export const sample = (): Job => {
  const file = path.resolve(import.meta.dirname, '../../demo-data/mineral-and-shell-cabinet.json');
  const { job, entries } = JSON.parse(readFileSync(file, 'utf8'));
  return jobOf(job, fold(entries).values);
};
