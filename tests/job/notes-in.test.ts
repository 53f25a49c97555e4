import { expect, test } from 'vitest';
import { editNextTime, editScrews } from '../../src/job/edits';
import { jobOf } from '../../src/job/job';
import { fold } from '../../src/job/log';
import { notesIn } from '../../src/job/notes-in';
import { logOf } from '../plan/job-of';

const { values } = fold(
  logOf([
    ...editNextTime('a', { said: 'Measure the back first' }),
    ...editNextTime('b', { said: 'Buy one sheet more' }),
    ...editNextTime('c', { said: '' }),
    ...editNextTime('a', { gone: true }),
    ...editScrews('x', { of: 'c1' }),
    ...editScrews('y', { kind: 'cleat' }),
    ...editScrews('y', { gone: true }),
  ]),
);

test('notes for next time that stand and say something', () => {
  expect(notesIn(values)).toEqual(['Buy one sheet more']);
});

test('the job has its notes and screws by id; what is gone is not there', () => {
  const job = jobOf('j', values);
  expect(job.nextTime.map((note) => note.id)).toEqual(['b', 'c']);
  expect(job.screws).toEqual([{ id: 'x', kind: 'other', of: 'c1' }]);
});
