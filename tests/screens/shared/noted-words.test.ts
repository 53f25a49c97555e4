import { expect, test } from 'vitest';
import { jobOf } from '../../../src/job/job';
import { fold } from '../../../src/job/log';
import { planOf } from '../../../src/plan/plan';
import { placeWord } from '../../../src/screens/shared/noted-words';
import { jobId, sampleLog } from '../../plan/laid-sample';

const plan = planOf(jobOf(jobId, fold(sampleLog).values), {});

test('a place by the name it has in the shop', () => {
  expect(placeWord({ of: 'part', id: 'case~left' }, plan)).toBe('Left side');
  expect(placeWord({ of: 'drawer', id: 'drawers~c1d2' }, plan)).toBe('Drawer 2');
  expect(placeWord({ of: 'room' }, plan)).toBe('The room');
});

test('of what is no longer there, what kind of thing it was', () => {
  expect(placeWord({ of: 'part', id: 'gone' }, plan)).toBe('A part no longer in the job');
  expect(placeWord({ of: 'setup', id: 'gone' }, plan)).toBe('A setting no longer in use');
});
