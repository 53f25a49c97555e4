import { expect, test } from 'vitest';
import { editBoard, editJob, editRun, letAheadOf, tickOf } from '../../../src/job/edits';
import type { Change } from '../../../src/job/entry';
import { checklistOf } from '../../../src/plan/checklist';
import { figuresOf, nextCard, readyOn } from '../../../src/screens/machine/setting-in-hand';
import { cutOtherwise } from '../../../src/screens/shared/at-setup';
import { l } from '../../length/write-figures';
import { worked } from '../../plan/job-of';

/** Two shelves alike: ripped first, then cut to length. */
const shelves: readonly Change[] = [
  ...editJob({ name: 'Cabinet' }),
  ...editBoard('shelf', { name: 'Shelf', copies: 2, length: l('30'), across: l('12') }),
];

function at(...more: readonly Change[]) {
  const { plan, folded } = worked([...shelves, ...more]);
  const list = checklistOf(plan, folded);
  const [rip, long] = (['rip', 'length'] as const).map((what) =>
    list.cards.find(({ operations }) => operations[0]?.what === what),
  );
  if (!rip || !long) throw new Error('a card for the rip and one for the length are wanted');
  return { list, rip, long };
}
const ticked = at().rip.operations.flatMap((op) => tickOf(op.id, op.figure));

test('after the rip comes the length; after the last setting what is still open; after all, nothing', () => {
  const { list, rip, long } = at();
  expect(nextCard(list, rip)).toBe(long);
  expect(nextCard(list, long)).toBe(rip);
  const all = at(...ticked, ...long.operations.flatMap((op) => tickOf(op.id, op.figure)));
  expect(nextCard(all.list, all.rip)).toBeUndefined();
});

test('a length is ready once its piece is ripped, or once it is let go ahead', () => {
  const before = at();
  const [first] = before.long.operations;
  if (!first) throw new Error('no operation');
  expect(readyOn(before.list, before.long)).toBeUndefined();
  const after = at(...ticked);
  expect(readyOn(after.list, after.long)?.id).toBe(first.id);
  const ahead = at(...letAheadOf(first.id, 'measured another way'));
  expect(readyOn(ahead.list, ahead.long)?.id).toBe(first.id);
});

test('a piece cut to another figure says both', () => {
  const { list, rip } = at(...ticked, ...editBoard('shelf', { across: l('11 1/2') }));
  expect(rip.operations.map((op) => cutOtherwise(list, op))).toEqual([
    'cut at 12, but should now be 11 1/2',
    'cut at 12, but should now be 11 1/2',
  ]);
  const same = at(...ticked);
  expect(same.rip.operations.map((op) => cutOtherwise(same.list, op))).toEqual(['', '']);
});

test('while the test cut of a groove comes first, the further figures are those of its first piece', () => {
  const { plan, folded } = worked([
    ...editJob({ name: 'Cabinet' }),
    ...editBoard('side', { name: 'Side', length: l('30'), across: l('12') }),
    ...editRun('side', 'r', {
      spacing: 'pitch',
      count: 1,
      first: l('3'),
      pitch: l('4'),
      width: l('3/4'),
      depth: l('1/4'),
    }),
  ]);
  const list = checklistOf(plan, folded);
  const card = list.cards.find(({ operations }) => operations.some((op) => op.groove));
  if (!card) throw new Error('a card for the groove is wanted');
  expect(card.operations[0]?.what).toBe('test');
  expect(figuresOf(list, card)?.groove?.board).toBe('side');
});
