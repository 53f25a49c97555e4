import { describe, expect, test } from 'vitest';
import { liesThreeWays, noSize, ways } from '../../../src/trade/room/lying';
import { l, spelled } from './sample';

const size = { width: l('38 3/8'), height: l('64 1/4'), depth: l('17 1/2') };

test('a case goes straight on in six ways, every size across, up and trailing twice', () => {
  expect(new Set(ways.map((x) => `${x.across} ${x.up} ${x.trailing}`)).size).toBe(6);
  for (const name of ['width', 'height', 'depth'] as const) {
    expect(ways.filter((x) => x.across === name).length).toBe(2);
    expect(ways.filter((x) => x.up === name).length).toBe(2);
    expect(ways.filter((x) => x.trailing === name).length).toBe(2);
  }
  for (const x of ways) expect(new Set([x.across, x.up, x.trailing]).size).toBe(3);
});

describe('liesThreeWays', () => {
  test('upright, on its back and on its side, the longer size of the plan first', () => {
    expect(spelled(liesThreeWays(size))).toEqual([
      { lies: 'upright', plan: { long: '38 3/8', wide: '17 1/2' }, up: '64 1/4' },
      { lies: 'on-back', plan: { long: '64 1/4', wide: '38 3/8' }, up: '17 1/2' },
      { lies: 'on-side', plan: { long: '64 1/4', wide: '17 1/2' }, up: '38 3/8' },
    ]);
  });
});

test.each([
  [{}, undefined],
  [{ depth: l('0') }, 'depth'],
  [{ width: l('-1'), depth: l('0') }, 'width'],
])('of a case with %o the size that is none is %s', (more, want) => {
  expect(noSize({ ...size, ...more })).toBe(want);
});
