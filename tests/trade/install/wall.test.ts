import { expect, test } from 'vitest';
import { screwHoles } from '../../../src/trade/install/holes';
import { leastWall, screwWall } from '../../../src/trade/install/wall';
import { l, w } from '../../length/write-figures';

test('a screw in the middle of an edge: half of what it leaves at each side', () => {
  // number 8: .060 + 8 × .013 = .164. (.750 − .164) ÷ 2 = .293, more than 1/4
  const { shank } = screwHoles(8, 'hard');
  expect(screwWall(l('3/4'), shank, leastWall)).toEqual({ left: l('.293') });
  // (.625 − .164) ÷ 2 = .2305, .0195 short; (.500 − .164) ÷ 2 = .168, .082 short
  expect(screwWall(l('5/8'), shank, leastWall)).toEqual({ left: l('.2305'), short: l('.0195') });
  expect(screwWall(l('1/2'), shank, leastWall)).toEqual({ left: l('.168'), short: l('.082') });
  // .664 leaves 1/4 just
  expect(screwWall(l('.664'), shank, leastWall).short).toBeUndefined();
  expect(w(leastWall)).toBe('1/4');
});
