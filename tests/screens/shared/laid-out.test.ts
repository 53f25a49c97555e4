import { describe, expect, test } from 'vitest';
import { jobOf } from '../../../src/job/job';
import { planOf } from '../../../src/plan/plan';
import { laidOut } from '../../../src/screens/shared/laid-out';
import type { GrooveMachineId } from '../../../src/trade/machines/stored-ids';
import { placingOf } from '../../../src/trade/setups/placing';
import { l } from '../../length/write-figures';

const shop = { single: l('1/8'), bit: l('3/8'), routerBase: l('3'), kerf: l('1/8'), shoeKeep: l('5') };

/** A pair of sides 30 × 12 with a groove, on the machine. */
function pair(machine: GrooveMachineId, stopSide: 'left' | 'right') {
  const board = {
    'boards/b/made': 'pair',
    'boards/b/name': 'Side',
    'boards/b/machine': machine,
    'boards/b/stopSide': stopSide,
    'boards/b/length': '30',
    'boards/b/across': '12',
    'boards/b/thickness': '3/4',
    'boards/b/runs/r/count': 1,
    'boards/b/runs/r/first': '8',
    'boards/b/runs/r/pitch': '2',
    'boards/b/runs/r/width': '3/8',
    'boards/b/runs/r/depth': '1/4',
  };
  const plan = planOf(jobOf('j', new Map(Object.entries(board))), shop);
  return plan.operations
    .filter((op) => op.groove)
    .map((op) => ({ op, drawn: laidOut(placingOf(op), op, plan) }));
}

describe('laidOut', () => {
  test.each<readonly [GrooveMachineId, 'left' | 'right']>([
    ['stop', 'left'],
    ['stop', 'right'],
    ['sliding', 'left'],
    ['fence', 'left'],
    ['router', 'left'],
  ])('%s, stop %s: left and right show the front edge, one near and one far', (machine, stopSide) => {
    const [left, right] = pair(machine, stopSide);
    expect([left?.drawn?.word, right?.drawn?.word]).toEqual(['front', 'front']);
    expect(new Set([left?.drawn?.band, right?.drawn?.band])).toEqual(new Set(['near', 'far']));
    expect(left?.drawn?.block).toBe(right?.drawn?.block);
  });

  test('the picture says what the words say: the front is drawn at the fence just if it lies on it', () => {
    for (const { op, drawn } of pair('stop', 'left')) {
      const { onFence } = placingOf(op);
      expect(drawn?.band).toBe(onFence?.named === 'front' ? 'near' : 'far');
    }
  });

  // the near wall of the first groove is at 8 of 30; the guide stands off it by the shoe, the teeth do not
  test('along a guide the red line is where the teeth are, not where the guide is', () =>
    expect(pair('saw', 'left')[0]?.drawn?.blade).toBeCloseTo(8 / 30, 6));
});
