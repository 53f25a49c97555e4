import { describe, expect, test } from 'vitest';
import { editBoard, editJob, tickOf } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { checklistOf } from '../../src/plan/checklist';
import { isSetFor, letterAt, opCodes, setupCodes } from '../../src/plan/setup-codes';
import { l } from '../length/write-figures';
import { worked } from './job-of';

const shelves: readonly Change[] = [
  ...editJob({ name: 'Cabinet' }),
  ...editBoard('shelf', { name: 'Shelf', copies: 2, length: l('30'), across: l('12') }),
];

function at(...more: readonly Change[]) {
  const { plan, folded } = worked([...shelves, ...more]);
  return checklistOf(plan, folded);
}

describe('the code of a setup', () => {
  test('its number is its place in the order, and stays when something is ticked; so do its two signs', () => {
    const [rip, cross] = setupCodes(at());
    expect([rip?.no, cross?.no]).toEqual([1, 2]);
    const done = rip?.card.operations.flatMap((op) => tickOf(op.id, op.figure)) ?? [];
    expect(setupCodes(at(...done)).map(({ check }) => check)).toEqual([rip?.check, cross?.check]);
    expect(rip?.check).toMatch(/^[2-9A-HJ-NP-Z]{2}$/);
  });

  test('its signs are others once its figure is another, or it has a piece more', () => {
    const [rip] = setupCodes(at());
    const [wider] = setupCodes(at(...editBoard('shelf', { across: l('12 1/2') })));
    const [more] = setupCodes(at(...editBoard('shelf', { copies: 3 })));
    expect(new Set([rip?.check, wider?.check, more?.check]).size).toBe(3);
  });

  test('each box of a setup has a letter', () => {
    const list = at();
    const codes = opCodes(list);
    expect(list.cards.flatMap(({ operations }) => operations.map((op) => codes.get(op)))).toEqual([
      '1 A',
      '1 B',
      '2 A',
      '2 B',
    ]);
  });
});

test.each([
  [0, 'A'],
  [25, 'Z'],
  [26, 'AA'],
  [51, 'AZ'],
  [52, 'BA'],
  // 26 of one letter and 676 of two come before
  [702, 'AAA'],
])('box %i is %s', (k, letter) => expect(letterAt(k)).toBe(letter));

test('a blade is set before it cuts; a step at the bench has nothing to set', () => {
  const [rip] = at().cards;
  const [op] = rip?.operations ?? [];
  if (!rip || !op) throw new Error('a rip is wanted');
  const bench = { ...rip, operations: [{ ...op, setup: { ...op.setup, machine: 'bench' as const } }] };
  expect([isSetFor(rip), isSetFor(bench)]).toEqual([true, false]);
});
