import { expect, test } from 'vitest';
import { editBoard, tickOf } from '../../../src/job/edits';
import { checklistOf } from '../../../src/plan/checklist';
import { blockWords, feetSet, reasonsFor } from '../../../src/screens/shared/block-words';
import type { Operation } from '../../../src/trade/setups/operation';
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

test('a case read foot by foot says how many are set', () => {
  expect(feetSet({ set: 3, of: 4 })).toBe('3 of 4 feet set');
});

test('what is cut, what is done at the bench and what is put up go ahead for reasons of their own', () => {
  const [rip] = worked(shelf).plan.operations;
  if (!rip) throw new Error('a rip is wanted');
  const at = (what: Operation['what'], part = 'c1~bench') => reasonsFor({ ...rip, what, part });
  expect(at('rip', 'shelf')).toContain('cut over size, to be trimmed');
  expect(at('slide')).toContain('this comes first here');
  expect(at('level')).toContain('set by the level alone');
  const all = (
    ['slide', 'pulls', 'carry-in', 'level', 'scribe', 'anchor', 'check-again', 'cure', 'load'] as const
  ).flatMap((what) => at(what));
  expect(all.join(' ')).not.toMatch(/\bcut\b|trimmed|scrap/);
  // nothing is loaded that is not held, by anybody's word
  expect(at('load').join(' ')).not.toContain('I know');
});
