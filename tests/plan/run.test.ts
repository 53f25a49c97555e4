import { describe, expect, test } from 'vitest';
import { editBank, editBoard, editJob, editRun, editStock, tickOf } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { checklistOf } from '../../src/plan/checklist';
import { cardOfGroove, changeFor, passedBy, runOf, runsOfBuild, unmadeAt } from '../../src/plan/run';
import { l } from '../length/write-figures';
import { worked } from './job-of';

const run = (id: string, width: string, first: string) =>
  editRun('side', id, {
    spacing: 'pitch',
    width: l(width),
    depth: l('1/4'),
    count: 2,
    pitch: l('6'),
    first: l(first),
    face: 'A',
  });

/** A pair of sides with narrow grooves and wide ones: two stacks after rip and length. */
const sides: readonly Change[] = [
  ...editBoard('side', { name: 'Side', made: 'pair', length: l('34'), across: l('11'), thickness: l('3/4') }),
  ...run('r', '3/8', '3'),
  ...run('w', '3/4', '20'),
];

function at(...more: readonly Change[]) {
  const { plan, folded } = worked([...sides, ...more]);
  const list = checklistOf(plan, folded);
  const grooves = list.cards.filter((c) => c.operations.some((op) => op.groove));
  return { plan, list, grooves };
}

test('a run is the settings of one stack at one height; the stacks are two runs', () => {
  const { list, grooves } = at();
  expect(grooves).toHaveLength(4);
  const [first] = grooves;
  if (!first) throw new Error('a groove is wanted');
  expect(runOf(list, first)).toHaveLength(2);
  expect(runsOfBuild(grooves).map((cards) => cards.length)).toEqual([2, 2]);
});

test('left and right share one card', () => {
  const { grooves } = at();
  for (const card of grooves)
    expect(card.operations.filter((op) => op.groove).map((op) => op.copy)).toEqual(['left', 'right']);
});

describe('a change of stack', () => {
  // what stands on a machine stays there while a story stick is marked: no change of it could ever be kept
  test('is none to what a stick is marked with or cut at', () => {
    const opening = { width: l('17'), height: l('24'), depth: l('20'), count: 2, slideLong: l('14') };
    const stocks = { frontStock: 'ply', sideStock: 'ply', boxBottomStock: 'ply' };
    const bank = [...editStock('ply', { used: l('1/2') }), ...editBank('d', { ...opening, ...stocks })];
    const [groove] = at(...bank).grooves;
    const { list } = at(...bank, ...editJob({ standing: groove?.id }));
    const sticks = list.cards.filter(({ operations: [op] }) => op?.setup.machine === 'stick');
    expect(sticks.length).toBeGreaterThan(1);
    for (const card of sticks) expect(changeFor(list, card)).toBeUndefined();
  });

  test('comes before the first cut, and again before the other stack; not within a run', () => {
    const before = at();
    const [first, second, other] = before.grooves;
    if (!first || !second || !other) throw new Error('grooves are wanted');
    expect(changeFor(before.list, first)).toBeDefined();
    const stands = at(...editJob({ standing: first.id }));
    expect(changeFor(stands.list, first)).toBeUndefined();
    expect(changeFor(stands.list, second)).toBeUndefined();
    expect(changeFor(stands.list, other)?.from?.setup.build).toBe(first.operations[0]?.setup.build);
  });

  test('is none from rip to crosscut, and is one from a stack back to the blade', () => {
    const { list, grooves } = at();
    const [rip, length] = (['rip', 'length'] as const).map((what) =>
      list.cards.find((c) => c.operations[0]?.what === what),
    );
    if (!rip || !length || !grooves[0]) throw new Error('a rip and a length are wanted');
    expect(changeFor(list, rip)).toBeUndefined();
    expect(changeFor(at(...editJob({ standing: rip.id })).list, length)).toBeUndefined();
    expect(changeFor(at(...editJob({ standing: grooves[0].id })).list, rip)).toBeDefined();
  });

  test('is none where the figure alone has changed since', () => {
    const { grooves } = at();
    const [first] = grooves;
    if (!first) throw new Error('a groove is wanted');
    const moved = at(...editJob({ standing: first.id }), ...editRun('side', 'r', { first: l('3 1/2') }));
    const same = moved.grooves.filter(
      (c) => c.operations[0]?.setup.build === first.operations[0]?.setup.build,
    );
    expect(same.map((card) => changeFor(moved.list, card))).toEqual([undefined, undefined]);
  });
});

describe('what is unmade when a setting is left', () => {
  test('nothing before it was begun, the other side once one is cut, nothing when both are', () => {
    const [card] = at().grooves;
    const cuts = card?.operations.filter((op) => op.groove) ?? [];
    const [left, right] = cuts.map((op) => tickOf(op.id, op.figure));
    if (!card || !left || !right) throw new Error('two cuts are wanted');
    const unmade = (...more: readonly Change[]) => {
      const now = at(...more);
      const same = now.list.cards.find((c) => c.id === card.id);
      return same ? unmadeAt(now.list, same).flatMap((op) => (op.groove ? [op.copy] : [])) : undefined;
    };
    expect(unmade()).toEqual([]);
    expect(unmade(...left)).toEqual(['right']);
    expect(unmade(...left, ...right)).toEqual([]);
  });

  test('a card passed by in its run is told, the ones after it are not', () => {
    const [first, second] = at().grooves;
    if (!first || !second) throw new Error('grooves are wanted');
    const cut = second.operations.flatMap((op) => tickOf(op.id, op.figure));
    const now = at(...cut);
    const again = now.list.cards.find((c) => c.id === first.id);
    expect(again && passedBy(now.list, runOf(now.list, again)).map((c) => c.id)).toEqual([first.id]);
    expect(again && passedBy(at().list, runOf(now.list, again))).toEqual([]);
  });
});

test('a groove is found by its board and setting; without one the first of the board with work left', () => {
  const { list, grooves } = at();
  const [first, second] = grooves;
  const setting = second?.operations.find((op) => op.groove)?.groove?.setting;
  expect(cardOfGroove(list, 'side', setting)).toBe(second);
  expect(cardOfGroove(list, 'side', undefined)).toBe(first);
  expect(cardOfGroove(list, 'door', undefined)).toBeUndefined();
});
