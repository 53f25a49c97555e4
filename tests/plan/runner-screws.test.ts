import { expect, test } from 'vitest';
import { editJob, editStock } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { editHanging } from '../../src/job/hanging';
import { runnerRow, runnerScrew, runnerScrewsToBuy } from '../../src/plan/runner-screws';
import type { Hanging } from '../../src/trade/fronts/hanging';
import { l, w } from '../length/write-figures';
import { worked } from './job-of';
import { twoColumns } from './two-columns';

const shelf = ['1', '1 1/4', '1 1/2', '1 3/4'].map(l);

function hung(said: Hanging, ...more: readonly Change[]) {
  const { plan } = worked([...twoColumns, ...editHanging('b', said), ...more]);
  const bank = plan.banks.get('b');
  if (!bank) throw new Error('no bank');
  return { plan, bank };
}

// (17 − 3) / 6 is three steps: 14/3 apart
test('a runner is screwed 1 1/2 from both ends, no more than 6 apart', () => {
  expect(runnerRow(l('17'), undefined)?.marks.map(w)).toEqual(['1 1/2', '6 1/6', '10 5/6', '15 1/2']);
});

// through 3/4 it wants 3/8 of a wall 3/4 thick, and 1/8 before its tip: 1 1/8 to 1 3/8
test('the longest on the shelf that stays in the thinnest wall', () => {
  const { plan, bank } = hung({ hung: 'runners' });
  const screw = runnerScrew(plan, bank, shelf);
  expect([screw?.least, screw?.most, screw?.pick].flatMap((x) => (x ? [w(x)] : []))).toEqual([
    '1 1/8',
    '1 3/8',
    '1 1/4',
  ]);
  const on = hung({});
  expect(runnerScrew(on.plan, on.bank, shelf)).toBe(undefined);
});

// through 19 it wants 10 of a wall 19 thick, and 3 before its tip: 29 to 35. Common practice, no source.
test('a metric shop has round limits: a screw of 35 goes', () => {
  const metric = [...editJob({ tape: '1 mm' }), ...editStock('s', { planned: l('19 mm') })];
  const { plan, bank } = hung({ hung: 'runners' }, ...metric);
  const screw = runnerScrew(plan, bank, ['28 mm', '35 mm', '36 mm'].map(l));
  expect([screw?.least, screw?.most, screw?.pick]).toEqual(['29 mm', '35 mm', '35 mm'].map(l));
});

/**
 * Runners 17 long, four screws each, two to each of four drawers: 32. Each lower drawer has two blocks of two screws on
 * the runners over it and two that turn on one, all through 3/4 into 3/4: 6 of 1 1/4. Over each upper one they lie
 * flat, 1/32 + 3/4 + 1/2 = 1 9/32 through into the wall: 1 21/32 to 1 29/32, four of 1 3/4; two more of 1 1/4.
 */
test('screws of runners and of stop blocks are bought', () => {
  const { plan, bank } = hung({ hung: 'runners' });
  const bought = runnerScrewsToBuy(plan, bank, 'Shells', shelf);
  expect(bought.map(({ bank: of, long, pieces, each }) => [of, w(long), pieces * each])).toEqual([
    ['Shells, runners', '1 1/4', 32],
    ['Shells, stop blocks', '1 3/4', 8],
    ['Shells, stop blocks', '1 1/4', 16],
  ]);
  expect(runnerScrewsToBuy(plan, bank, 'Shells', [])).toEqual([]);
});

// kickers over the upper two drawers alone: four more of four screws, and no block on the wall
test('kickers are screwed as runners are', () => {
  const { plan, bank } = hung({ hung: 'runners', kickers: 'over' });
  const bought = runnerScrewsToBuy(plan, bank, 'Shells', shelf);
  expect(bought.map(({ long, pieces, each }) => [w(long), pieces * each])).toEqual([
    ['1 1/4', 48],
    ['1 1/4', 24],
  ]);
});
