import { expect, test } from 'vitest';
import { newBoard, newRun } from '../../../src/job/job';
import { viewOf } from '../../../src/plan/board-layout';
import { tickChange } from '../../../src/screens/saw/card-in-hand';
import { l } from '../../length/write-figures';

test('tickChange keeps the figure it was cut to, and takes a tick back without one', () => {
  const run = { ...newRun('r'), width: l('3/4'), count: 1, first: l('3 1/8') };
  const { settings } = viewOf({ ...newBoard('b'), length: l('30'), runs: [run] }, {}, '1/32').settings;
  const [setting] = settings;
  if (!setting) throw new Error('a setting is wanted');
  expect(tickChange('op', false, setting)).toContainEqual(
    expect.objectContaining({ kind: 'tick', op: 'op', figure: '25/8' }),
  );
  expect(tickChange('op', true, setting)).toEqual([{ kind: 'untick', op: 'op' }]);
});
