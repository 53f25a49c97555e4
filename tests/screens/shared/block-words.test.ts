import { expect, test } from 'vitest';
import { editBoard, tickOf } from '../../../src/job/edits';
import { checklistOf } from '../../../src/plan/checklist';
import { blockWords } from '../../../src/screens/shared/block-words';
import { l } from '../../length/write-figures';
import { worked } from '../../plan/job-of';

const shelf = editBoard('shelf', { name: 'Shelf', copies: 1, length: l('30'), across: l('12') });

test('a length names the rip that comes first, and nothing once that is cut', () => {
  const { plan, folded } = worked(shelf);
  const [rip, length] = plan.operations;
  if (!rip || !length) throw new Error('a rip and a length are wanted');
  expect(blockWords(checklistOf(plan, folded), length)).toBe('Shelf, rip, comes first');
  expect(blockWords(checklistOf(plan, folded), rip)).toBe('');
  const cut = worked([...shelf, ...tickOf(rip.id, rip.figure)]);
  expect(blockWords(checklistOf(cut.plan, cut.folded), length)).toBe('');
});
