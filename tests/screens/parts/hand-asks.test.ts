import { expect, test } from 'vitest';
import { editWork } from '../../../src/job/edits';
import { handAsks } from '../../../src/screens/parts/hand-asks';
import * as words from '../../../src/screens/parts/words';
import { at, opened, withMore } from '../../plan/laid-sample';

const entries = withMore(opened.entries, [
  ...editWork('w1', { part: 'case~left', name: 'Hole', machine: 'hand' }),
  ...editWork('w2', { part: 'case~left', name: '', machine: 'hand' }),
]);
const { plan } = at(entries);
const [part] = plan.parts.filter((p) => p.id === 'case~left');
const [work] = plan.job.work.filter((w) => w.id === 'w1');
if (!part || !work) throw new Error('an operation by hand is wanted');
const asks = handAsks(work, part, plan);

test('every blank of the sentence is asked for', () => {
  const names = [...words.handSlip.matchAll(/\{(\w+)\}/g)].map((m) => m[1] ?? '');
  expect(names.map((name) => asks[name]?.title)).toEqual([
    'What is done to the left side',
    'Where: Hole',
    'Set at: Hole',
    'What comes before: Hole',
  ]);
});

test('what comes before is its length, its rip, or another by hand, with or without a name', () => {
  expect(asks.after?.as === 'choice' && asks.after.choices.map((c) => c.label)).toEqual([
    'its length',
    'its rip',
    'another by hand',
  ]);
});
