import { describe, expect, test } from 'vitest';
import { editBoard, editJob, tickOf } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import {
  blocks,
  checklistOf,
  cutCount,
  groupsOf,
  isDone,
  misfits,
  standingCard,
} from '../../src/plan/checklist';
import { l, w } from '../length/write-figures';
import { worked } from './job-of';

/** Two shelves alike, ripped to 12 and cut to 30: one card for the rip, one for the length. */
const shelves: readonly Change[] = editBoard('shelf', {
  ...({ name: 'Shelf', copies: 2 } as const),
  length: l('30'),
  across: l('12'),
});

function at(changes: readonly Change[]) {
  const { plan, folded } = worked(changes);
  return checklistOf(plan, folded);
}

const [rip, long] = ['rip', 'len'].map((what) =>
  at(shelves).cards.find(({ operations }) => operations[0]?.id.includes(`/${what}/`)),
);
if (!rip || !long) throw new Error('no cards');
const ticked = (ids: readonly string[]): readonly Change[] =>
  at(shelves).plan.operations.flatMap((op) => (ids.includes(op.id) ? tickOf(op.id, op.figure) : []));
const ripped = [...shelves, ...ticked(rip.operations.map(({ id }) => id))];

describe('checklistOf', () => {
  test('counts what is cut, of all there is to cut', () => {
    expect(cutCount(at(shelves))).toEqual({ cut: 0, of: 4 });
    expect(cutCount(at(ripped))).toEqual({ cut: 2, of: 4 });
  });

  test('a length waits for the rip of its own piece', () => {
    const [first, second] = long.operations;
    const [one] = rip.operations;
    if (!first || !second || !one) throw new Error('no operations');
    const list = at([...shelves, ...ticked([one.id])]);
    const open = [first, second].map((op) => blocks(list, op).length);
    expect(open.sort()).toEqual([0, 1]);
  });
});

describe('standingCard', () => {
  test('stands at the rip, then at the length once every rip is ticked', () => {
    expect(standingCard(at(shelves))?.id).toBe(rip.id);
    expect(isDone(at(ripped), rip)).toBe(true);
    expect(standingCard(at(ripped))?.id).toBe(long.id);
  });

  test('stays at the setup on its machine while something is ready for it', () => {
    const [one] = rip.operations;
    const begun = [...shelves, ...ticked([one?.id ?? '']), ...editJob({ standing: long.id })];
    expect(standingCard(at(begun))?.id).toBe(long.id);
    expect(standingCard(at([...shelves, ...editJob({ standing: long.id })]))?.id).toBe(rip.id);
  });

  test('is none when everything is cut', () => {
    expect(standingCard(at([...ripped, ...ticked(long.operations.map(({ id }) => id))]))).toBeUndefined();
  });
});

describe('misfits', () => {
  test('a piece ripped to 12 no longer fits once the shelf is 12 1/2 wide; one not ripped is not named', () => {
    const [one] = rip.operations;
    const list = at([...shelves, ...ticked([one?.id ?? '']), ...editBoard('shelf', { across: l('12 1/2') })]);
    expect(misfits(list).map(({ op, was, now }) => [op.id, w(was), w(now)])).toEqual([
      [one?.id, '12', '12 1/2'],
    ]);
  });
});

describe('groupsOf', () => {
  test('pieces of one part stand together, each with its letter', () => {
    const groups = groupsOf(rip, at(shelves).plan).map(({ name, pieces }) => [
      name,
      pieces.map((p) => p.letter),
    ]);
    expect(groups).toEqual([[{ of: { role: 'board', named: 'Shelf' } }, ['a', 'b']]]);
  });
});
