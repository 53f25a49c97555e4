import { expect, test } from 'vitest';
import { gapsOf } from '../../../src/screens/bank/gaps-of';
import { l, w } from '../../trade/grooves/sample';
import { firstColumn, twoFronts } from './sample';

test('the gap over every front and the one under the last are named by what they lie at', () => {
  const gaps = gapsOf(firstColumn(twoFronts)).map(({ name, left, right }) => [name, w(left), w(right)]);
  expect(gaps).toEqual([
    ['Over front 1', '1/8', '1/8'],
    ['Between 1 and 2', '1/16', '1/16'],
    ['Under front 2', '3/32', '3/32'],
  ]);
});

test('an opening higher at the right leaves that under the last front', () => {
  const column = firstColumn(twoFronts);
  const [left, right] = [column.opening.left, l('24 13/32')];
  const last = gapsOf({ ...column, opening: { ...column.opening, left, right } })[2];
  expect([w(last?.left), w(last?.right)]).toEqual(['3/32', '7/32']);
});
