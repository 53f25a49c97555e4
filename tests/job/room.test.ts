import { expect, test } from 'vitest';
import { footId, footOf } from '../../src/job/room';

test('a foot and its id say the same', () => {
  for (const row of ['front', 'middle', 'back'] as const)
    for (const number of [1, 2, 9]) expect(footOf(footId({ row, number }))).toEqual({ row, number });
  expect(footId({ row: 'back', number: 2 })).toBe('back2');
});
