import { describe, expect, test } from 'vitest';
import { editCase, editInside, editStock, tickOf } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { checklistOf, cutCount, misfits } from '../../src/plan/checklist';
import { tickChanges } from '../../src/plan/ticking';
import { l } from '../length/write-figures';
import { worked } from './job-of';

const pins = { kind: 'loose', bay: 1, heldBy: 'pins', first: l('4'), pitch: l('2') } as const;
const strips = {
  ...pins,
  heldBy: 'strips',
  width: l('5/8'),
  stripThick: l('3/16'),
  depth: l('3/16'),
} as const;

/** A case with two sets of loose shelves alike in its one bay. */
const twoSets = (own: typeof pins | typeof strips): readonly Change[] => [
  ...editStock('s', { name: 'Ply', kind: 'sheet', planned: l('3/4') }),
  ...editCase('c', { hold: 'outside', width: l('36'), height: l('60'), depth: l('16'), sideStock: 's' }),
  ...editInside('c', 'a', own),
  ...editInside('c', 'b', own),
];

/** The front row of the left side: of the first set, and as the second had it while it had rows of its own. */
const ids = { pins: 'bore', strips: 'along' } as const;
const rowOf = (by: 'pins' | 'strips', set: string) => `cut/c~left/${ids[by]}~${set}~front/1`;
const listOf = (...changes: readonly Change[]) => {
  const { plan, folded } = worked(changes);
  return checklistOf(plan, folded);
};
const second = (by: 'pins' | 'strips', at: string) => tickOf(rowOf(by, 'b'), l(at));

describe.each([
  ['pins', pins],
  ['strips', strips],
] as const)('a row that two sets on %s share', (by, own) => {
  const op = rowOf(by, 'a');

  test('is done where it was ticked as that of the second, at the figure it was ticked at', () => {
    const list = listOf(...twoSets(own), ...second(by, '2'));
    expect([list.doing.done(op), cutCount(list).cut]).toEqual([true, 1]);
    expect(misfits(list)).toEqual([]);
    // rows stand 2 from the front edge: bored at 2 1/4 it is told
    expect(misfits(listOf(...twoSets(own), ...second(by, '2 1/4'))).map((x) => x.op.id)).toEqual([op]);
  });

  test('fits where one of its ticks does', () => {
    const first = tickOf(op, l('2 1/4'));
    expect(misfits(listOf(...twoSets(own), ...first, ...second(by, '2')))).toEqual([]);
  });

  test('is ticked for both, so that either may go, and taken back for both', () => {
    const list = listOf(...twoSets(own));
    const card = list.cards.find(({ operations }) => operations.some(({ id }) => id === op));
    const row = card?.operations.find(({ id }) => id === op);
    if (!card || !row) throw new Error('a card for the row is wanted');
    const ticked = tickChanges(list, card, row);
    const alone = listOf(...twoSets(own), ...ticked, ...editInside('c', 'a', { gone: true }));
    expect(alone.doing.done(rowOf(by, 'b'))).toBe(true);
    expect(alone.plan.byId.has(op)).toBe(false);
    const done = listOf(...twoSets(own), ...second(by, '2'));
    expect(listOf(...twoSets(own), ...second(by, '2'), ...tickChanges(done, card, row)).doing.done(op)).toBe(
      false,
    );
  });
});
