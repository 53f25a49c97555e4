import { expect, test } from 'vitest';
import { footId } from '../../src/job/room';
import { feetPlaces } from '../../src/plan/feet-places';

test('two feet in front and two at the back until more are said', () => {
  expect(feetPlaces({ feet: [], gaps: [] }).map(footId)).toEqual(['front1', 'front2', 'back1', 'back2']);
  expect(feetPlaces({ feet: [], gaps: [], across: 3, middleRow: true })).toHaveLength(9);
  expect(feetPlaces({ feet: [], gaps: [], across: 0 })).toHaveLength(2);
});
