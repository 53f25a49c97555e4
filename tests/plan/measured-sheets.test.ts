import { expect, test } from 'vitest';
import { editReading, editStock } from '../../src/job/edits';
import { sheetsOf } from '../../src/plan/measured-sheets';
import { l, w } from '../length/write-figures';
import { worked } from './job-of';

const read = (...sizes: readonly string[]) =>
  sheetsOf(
    worked([
      ...editStock('a', { name: 'Birch' }),
      ...editStock('b', { name: 'Oak' }),
      ...sizes.flatMap((size, k) => editReading('a', `r${k}`, { size: l(size) })),
    ]).job,
  ).map(({ name, thickest, thinnest, spread, says }) => [name, ...[thickest, thinnest, spread].map(w), says]);

test('a sheet with readings is told by its greatest, its least and what lies between; one without is not told', () => {
  // 0.712 − 0.709 = 0.003
  expect(read('.710', '.712', '.709')).toEqual([
    ['Birch', '89/125', '709/1000', '3/1000', '0.709 to 0.712, 3 readings'],
  ]);
  expect(read('.710')).toEqual([['Birch', '71/100', '71/100', '0', '0.710, one reading']]);
  expect(read()).toEqual([]);
  expect(sheetsOf(undefined)).toEqual([]);
});
