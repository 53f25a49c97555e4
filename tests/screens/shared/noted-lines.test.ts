import { expect, test } from 'vitest';
import { jobOf } from '../../../src/job/job';
import { fold } from '../../../src/job/log';
import { editNote } from '../../../src/job/notes';
import { planOf } from '../../../src/plan/plan';
import { notedLines } from '../../../src/screens/shared/noted-lines';
import { jobId, sampleLog, withMore } from '../../plan/laid-sample';

test('what is noted of a setting, then of the parts on it by name; of what has no note there is no line', () => {
  const log = withMore(sampleLog, [
    ...editNote({ of: 'setup', id: 'rip' }, 'fence drifts'),
    ...editNote({ of: 'part', id: 'case~right' }, 'knot at the front'),
  ]);
  const job = jobOf(jobId, fold(log).values);
  const at = { job, plan: planOf(job, {}), place: { of: 'setup', id: 'rip' } } as const;
  expect(notedLines({ ...at, parts: ['case~left', 'case~right'] })).toEqual([
    'Note: fence drifts',
    'Right side: knot at the front',
  ]);
  expect(notedLines({ ...at, place: { of: 'setup', id: 'other' }, parts: ['case~left'] })).toEqual([]);
});
