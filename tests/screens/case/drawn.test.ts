import { describe, expect, test } from 'vitest';
import { frontOf, sectionOf } from '../../../src/screens/case/drawn';
import type { Inside } from '../../../src/trade/carcass/case';
import { l } from '../../length/write-figures';
import { plainCase, work } from '../../trade/carcass/sample-case';

const fixed = (id: string, at: string): Inside => ({ id, kind: 'fixed', bay: 1, at: l(at) });
const shelved = work({
  ...plainCase,
  partitions: 0,
  hasToe: true,
  inside: [fixed('a', '40'), fixed('b', '20'), { id: 'p', kind: 'loose', bay: 1, count: 2 }],
});

describe.each([
  ['from the front', frontOf],
  ['cut through', sectionOf],
] as const)('a case %s', (_, drawn) => {
  const { pieces, high } = drawn(shelved);

  test('shows its toe board under the bottom', () => {
    const [toe] = pieces.filter((p) => p.kind === 'toe');
    expect(toe && [toe.y, toe.y + toe.h]).toEqual([0, 4.125]);
  });

  test('shows each loose shelf in an opening of its own, clear of what is fixed', () => {
    const loose = pieces.filter((p) => p.kind === 'loose');
    expect(loose).toHaveLength(2);
    const others = pieces.filter((p) => p.kind === 'ply' && p.h < 1);
    for (const p of loose) {
      expect(p.y + p.h).toBeLessThan(high);
      expect(others.some((o) => p.y < o.y + o.h && o.y < p.y + p.h)).toBe(false);
    }
    const fixedTop = 4.125 + 0.71875 + 20;
    expect(loose.filter((p) => p.y > fixedTop)).toHaveLength(1);
  });
});

test('two fixed shelves are told apart from the bottom up', () => {
  const shelf = (id: string) => frontOf(shelved).pieces.find((p) => p.part === `c1~${id}`);
  expect([shelf('b')?.no, shelf('a')?.no]).toEqual([1, 2]);
});

test('more loose shelves than there are openings stand evenly in them', () => {
  const three = work({ ...plainCase, partitions: 0, inside: [{ id: 'p', kind: 'loose', bay: 1, count: 3 }] });
  const ys = frontOf(three)
    .pieces.filter((p) => p.kind === 'loose')
    .map((p) => p.y);
  expect(ys).toHaveLength(3);
  const [a = 0, b = 0, c = 0] = ys;
  expect(c - b).toBeCloseTo(b - a);
});
