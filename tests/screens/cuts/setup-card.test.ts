import { expect, test } from 'vitest';
import { editBoard, editJob, letAheadOf, tickOf } from '../../../src/job/edits';
import type { Change } from '../../../src/job/entry';
import { checklistOf } from '../../../src/plan/checklist';
import { plainCuts } from '../../../src/screens/cuts/plain';
import { blockWords, nextCard, pieceNote, readyOn, tickChanges } from '../../../src/screens/cuts/setup-card';
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

test('after the rip comes the length; after the last setup what is still open', () => {
  const { list, rip, long } = at();
  expect(nextCard(list, rip)).toBe(long);
  expect(nextCard(list, long)).toBe(rip);
});

test('a length is ready once its piece is ripped, and until then says what it waits for', () => {
  const before = at();
  const [first] = before.long.operations;
  if (!first) throw new Error('no operation');
  expect(readyOn(before.list, before.long)).toBeUndefined();
  expect(blockWords(before.list, first)).toContain('rip');
  expect(pieceNote(before.list, [first])).toMatch(/^blocked by /);
  const after = at(...ticked);
  expect(readyOn(after.list, after.long)?.id).toBe(first.id);
});

test('what was let go ahead says why; what is cut in part says how much', () => {
  const { list, long } = at(...ticked);
  const [first] = long.operations;
  if (!first) throw new Error('no operation');
  const ahead = at(...ticked, ...letAheadOf(first.id, 'already done'));
  expect(pieceNote(ahead.list, ahead.long.operations)).toBe('already done');
  const one = at(...ticked, ...tickOf(first.id, first.figure));
  expect(pieceNote(one.list, one.long.operations)).toBe('1 of 2');
  expect(pieceNote(list, list.cards[0]?.operations ?? [])).not.toContain('of 2');
});

test('a piece cut to another figure says both', () => {
  const { list, rip } = at(...ticked, ...editBoard('shelf', { across: l('11 1/2') }));
  expect(pieceNote(list, rip.operations)).toBe('cut at 12, now wants 11 1/2');
});

test('a tick says what stands on the machine, once; a second tap takes the tick back', () => {
  const { list, rip } = at();
  const [op] = rip.operations;
  if (!op) throw new Error('no operation');
  expect(tickChanges(list, rip, op)).toContainEqual(editJob({ standing: rip.id })[0]);
  const standing = at(...editJob({ standing: rip.id }));
  expect(tickChanges(standing.list, standing.rip, op)).toHaveLength(1);
  const done = at(...ticked);
  expect(tickChanges(done.list, done.rip, op)).toEqual([{ kind: 'untick', op: op.id }]);
});

test('the plain list has a box for every piece, crossed where it is cut', () => {
  const text = plainCuts(at(...ticked).list);
  expect(text.split('\n')[0]).toBe('Cabinet, 2 of 4 cut');
  expect(text.match(/\[x\]/g)).toHaveLength(2);
  expect(text.match(/\[ \]/g)).toHaveLength(2);
});
