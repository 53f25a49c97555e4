import { describe, expect, test } from 'vitest';
import { editBoard, editJob, editRun } from '../../../src/job/edits';
import { checklistOf } from '../../../src/plan/checklist';
import { changeWords, heldWords } from '../../../src/screens/shared/held-words';
import type { Operation } from '../../../src/trade/setups/operation';
import { l } from '../../length/write-figures';
import { worked } from '../../plan/job-of';

function grooveOn(machine: 'stop' | 'router') {
  const { plan, folded } = worked([
    ...editJob({ name: 'Cabinet' }),
    ...editBoard('side', { name: 'Side', length: l('30'), across: l('12'), machine }),
    ...editRun('side', 'r', { spacing: 'pitch', count: 1, first: l('3'), pitch: l('4'), width: l('3/4') }),
  ]);
  const op = plan.operations.find((one) => one.groove);
  if (!op) throw new Error('a groove is wanted');
  return { list: checklistOf(plan, folded), op };
}

describe('why a cut cannot be ticked', () => {
  const { list, op } = grooveOn('stop');
  const at = (machine: Operation['setup']['machine']) =>
    changeWords({ ...op, setup: { ...op.setup, machine } });

  test('what comes first is named, and how much more there is', () => {
    // the length, and the test cut of the stack
    expect(heldWords(list, { by: 'what-comes-first', op })).toBe(
      'Blocked: Side, length, comes first and 1 more',
    );
  });

  test('a stack, a bit or a height that is not set is named as it is on the machine', () => {
    expect(heldWords(list, { by: 'change', to: op })).toBe('Blocked: change the stack first');
    expect([at('stop'), at('router'), at('rip')]).toEqual([
      'Change the stack',
      'Change the bit',
      'Put the blade on',
    ]);
  });

  test('where nothing has its turn, the whole of it is said', () => {
    expect(heldWords(list, { by: 'ring' })).toMatch(/wait for one another in a ring/);
    expect(heldWords(list, { by: 'too-many' })).toMatch(/not worked out/);
  });
});
