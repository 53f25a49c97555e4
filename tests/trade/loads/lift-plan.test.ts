import { describe, expect, test } from 'vitest';
import { ratio } from '../../../src/length/length';
import { fullWeight, liftPlan, shopMost } from '../../../src/trade/loads/lift-plan';

const load = (id: string, pounds: bigint, d = 1n) => ({ id, pounds: ratio(pounds, d) });
const lower = {
  ...load('lower', 183n, 2n),
  drawers: [load('d1', 40n), load('d2', 51n)],
  loose: [load('tray', 3n)],
};
const upper = { ...load('upper', 50n), drawers: [], loose: [load('shelf', 6n)] };

const steps = (units: Parameters<typeof liftPlan>[0], most = shopMost) => {
  const found = liftPlan(units, most);
  if (!found.ok) throw new Error(found.error.code);
  return found.value;
};

describe('liftPlan', () => {
  test('Example 3 of loads: drawers out first, the lower case anchored before the upper is set, drawers in last', () => {
    expect(steps([lower, upper]).map((s) => `${s.code} ${s.id}`)).toEqual([
      'drawer-out d1',
      'drawer-out d2',
      'loose-out tray',
      'loose-out shelf',
      'set lower',
      'level lower',
      'anchor lower',
      'set upper',
      'anchor upper',
      'loose-in tray',
      'drawer-in d1',
      'drawer-in d2',
      'loose-in shelf',
    ]);
  });

  // 91 1/2 is 41 1/2 over 50; 51 is 1 over; 50 is just one person's
  test('over 50 lb two people, and by how much; at 50 one', () => {
    const said = steps([lower, upper]).flatMap((s) =>
      'people' in s ? [[s.id, s.people, s.over?.toString()]] : [],
    );
    expect(said).toContainEqual(['lower', 2, '41.5']);
    expect(said).toContainEqual(['d2', 2, '1']);
    expect(said).toContainEqual(['upper', 1, undefined]);
    expect(said).toContainEqual(['d1', 1, undefined]);
  });

  test('no drawer goes back in before its own case is anchored', () => {
    const codes = steps([lower, upper]).map((s) => s.code);
    expect(codes.indexOf('drawer-in')).toBeGreaterThan(codes.lastIndexOf('anchor'));
  });

  test('a case by itself: what it weighs full is what taking out saves', () => {
    expect(fullWeight(lower).toString()).toBe('185.5');
  });

  test('no cases, a weight below nothing or no limit are refused', () => {
    const code = (units: Parameters<typeof liftPlan>[0], most = shopMost) => {
      const found = liftPlan(units, most);
      return found.ok ? 'ok' : found.error;
    };
    expect(code([])).toEqual({ code: 'no-units' });
    expect(code([{ ...upper, loose: [load('bad', -1n)] }])).toEqual({ code: 'pounds-negative', id: 'bad' });
    expect(code([upper], ratio(0n))).toEqual({ code: 'most-not-positive' });
  });
});
