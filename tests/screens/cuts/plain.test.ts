import { expect, test } from 'vitest';
import { editBoard, editJob, tickOf } from '../../../src/job/edits';
import { checklistOf } from '../../../src/plan/checklist';
import { plainCuts } from '../../../src/screens/cuts/plain';
import { l } from '../../length/write-figures';
import { worked } from '../../plan/job-of';

const shelves = [
  ...editJob({ name: 'Cabinet' }),
  ...editBoard('shelf', { name: 'Shelf', copies: 2, length: l('30'), across: l('12') }),
];
const { plan } = worked(shelves);
const [rip, ...others] = plan.operations;
if (!rip || others.length !== 3) throw new Error('two rips and two lengths are wanted');

test('the plain list has a box for every piece, crossed where it is cut', () => {
  const { plan: now, folded } = worked([...shelves, ...tickOf(rip.id, rip.figure)]);
  const text = plainCuts(checklistOf(now, folded));
  expect(text.split('\n')[0]).toBe('Cabinet, 1 of 4 cut');
  expect(text.match(/\[x\]/g)).toHaveLength(1);
  expect(text.match(/\[ \]/g)).toHaveLength(3);
  // the length of the shelf that is not ripped yet says what it waits for; that of the other is free
  expect(text.match(/\(blocked: Shelf \d, rip, comes first\)/g)).toHaveLength(1);
});

test('a setting says its figure and the machine', () => {
  const { plan: now, folded } = worked(shelves);
  expect(plainCuts(checklistOf(now, folded))).toContain('1. Rip fence at 12\n   Table saw, single blade');
});
