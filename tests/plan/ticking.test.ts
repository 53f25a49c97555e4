import { expect, test } from 'vitest';
import { editBoard, editJob, tickOf } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { checklistOf } from '../../src/plan/checklist';
import { standChanges, tickChanges } from '../../src/plan/ticking';
import type { MachineId } from '../../src/trade/machines/machines';
import { l } from '../length/write-figures';
import { worked } from './job-of';

/** Two shelves alike: ripped first, then cut to length. */
const shelves: readonly Change[] = [
  ...editJob({ name: 'Cabinet' }),
  ...editBoard('shelf', { name: 'Shelf', copies: 2, length: l('30'), across: l('12') }),
];

function at(...more: readonly Change[]) {
  const { plan, folded } = worked([...shelves, ...more]);
  const list = checklistOf(plan, folded);
  const rip = list.cards.find(({ operations }) => operations[0]?.what === 'rip');
  if (!rip) throw new Error('a card for the rip is wanted');
  return { list, rip };
}

test('a tick says what stands on the machine, once; a second tap takes the tick back', () => {
  const { list, rip } = at();
  const [op] = rip.operations;
  if (!op) throw new Error('no operation');
  expect(tickChanges(list, rip, op)).toContainEqual(editJob({ standing: rip.id })[0]);
  const standing = at(...editJob({ standing: rip.id }));
  expect(standChanges(standing.list, standing.rip)).toEqual([]);
  expect(tickChanges(standing.list, standing.rip, op)).toHaveLength(1);
  const done = at(...rip.operations.flatMap((one) => tickOf(one.id, one.figure)));
  expect(tickChanges(done.list, done.rip, op)).toEqual([{ kind: 'untick', op: op.id }]);
});

test('work at the bench, by hand or with a circular saw takes no stack off the machine', () => {
  const { list, rip } = at();
  const on = (machine: MachineId) => {
    const [op] = rip.operations;
    if (!op) throw new Error('no operation');
    return standChanges(list, {
      ...rip,
      id: machine,
      operations: [{ ...op, setup: { ...op.setup, machine } }],
    });
  };
  for (const machine of ['bench', 'hand', 'saw', 'stick', 'jig'] as const)
    expect(on(machine), machine).toEqual([]);
  for (const machine of ['rip', 'crosscut', 'stop', 'fence', 'rabbet', 'router'] as const)
    expect(on(machine), machine).toEqual(editJob({ standing: machine }));
});
