import { describe, expect, test } from 'vitest';
import { editBank, editBoard, editJob, editRun, letAheadOf, tickOf } from '../../../src/job/edits';
import type { Change } from '../../../src/job/entry';
import { blocks, checklistOf } from '../../../src/plan/checklist';
import { figuresOf, nextCard, readyOn, waitsFor } from '../../../src/screens/machine/setting-in-hand';
import { cutOtherwise } from '../../../src/screens/shared/at-setup';
import type { Operation } from '../../../src/trade/setups/operation';
import { l } from '../../length/write-figures';
import { caseDecided } from '../../plan/carried-cabinet-case';
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

describe('where nothing can be done at the card in hand', () => {
  /** A case with drawers in it, all but what waits for its opening ticked. */
  const cased = (...more: readonly Change[]) => {
    const bank = [
      ...caseDecided,
      ...editBank('d', { of: 'case', bay: 2, count: 2, frontStock: 'sheeta', sideStock: 'boxply' }),
      ...editBank('d', { boxBottomStock: 'backply', slideLong: l('14') }),
      ...more,
    ];
    const { plan, folded } = worked(bank);
    const list = checklistOf(plan, folded);
    const waiting = new Set(
      plan.operations.filter((op) => blocks(list, op).some(({ by }) => by === 'opening')).map(({ id }) => id),
    );
    const first = plan.operations.find((op) => waiting.has(op.id));
    const reached = (op: Operation) => waiting.has(op.id) || op.after.some((id) => waiting.has(id));
    for (let before = 0; before < waiting.size; ) {
      before = waiting.size;
      for (const op of plan.operations) if (reached(op)) waiting.add(op.id);
    }
    const done = plan.operations.filter((op) => !waiting.has(op.id));
    return { bank, done, first };
  };

  test('once all that is left waits for the opening, that is what is asked for', () => {
    const { bank, done, first } = cased();
    const { plan, folded } = worked([...bank, ...done.flatMap((op) => tickOf(op.id, op.figure))]);
    const list = checklistOf(plan, folded);
    const card = list.cards.find(({ operations }) => operations.some((op) => op.id === first?.id));
    if (!card) throw new Error('no card');
    expect(waitsFor(list, card)?.by).toEqual({ by: 'opening', bank: 'd' });
    // with one thing left that can be done at a machine it is not
    const [last] = done.slice(-1);
    const some = worked([
      ...bank,
      ...done.flatMap((op) => (op.id === last?.id ? [] : tickOf(op.id, op.figure))),
    ]);
    const open = checklistOf(some.plan, some.folded);
    const same = open.cards.find(({ operations }) => operations.some((op) => op.id === first?.id));
    if (!same) throw new Error('no card');
    expect(waitsFor(open, same)).toBeUndefined();
    expect(nextCard(open, same)?.operations.map(({ id }) => id)).toContain(last?.id);
  });
});
