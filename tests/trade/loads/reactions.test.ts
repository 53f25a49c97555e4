import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, ratio } from '../../../src/length/length';
import { endsCarry } from '../../../src/trade/loads/reactions';
import { runs } from '../../runs';
import { l } from '../grooves/sample';

type Loads = Parameters<typeof endsCarry>[1];
const load = (pounds: bigint, at: string) => ({ pounds: ratio(pounds), at: l(at) });
const found = (span: string, loads: Loads) => {
  const result = endsCarry(l(span), loads);
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
};
const refused = (span: string, loads: Loads) => {
  const result = endsCarry(l(span), loads);
  return result.ok ? 'ok' : result.error;
};

describe('endsCarry', () => {
  // 50 × (18.109375 - 6) / 18.109375 = 33.434; 50 × 6 / 18.109375 = 16.566
  test('Example 7 of loads: 50 lb 6 from the left of 18 7/64: 33.4 left, 16.6 right', () => {
    const { left, right } = found('18 7/64', [load(50n, '6')]);
    expect([left.valueOf().toFixed(1), right.valueOf().toFixed(1)]).toEqual(['33.4', '16.6']);
  });

  test('over an end, that end carries all of it; in the middle, half each', () => {
    const at = (x: string) => found('24', [load(30n, x)]);
    expect(
      [at('0'), at('24'), at('12')].map(({ left, right }) => [left.toString(), right.toString()]),
    ).toEqual([
      ['30', '0'],
      ['0', '30'],
      ['15', '15'],
    ]);
  });

  test('bad input is refused, and a load beyond the span says by how much', () => {
    expect(refused('0', [load(1n, '0')])).toEqual({ code: 'span-not-positive' });
    expect(refused('24', [])).toEqual({ code: 'no-load' });
    expect(refused('24', [load(1n, '1'), load(0n, '2')])).toEqual({ code: 'load-not-positive', load: 2 });
    expect(refused('24', [load(1n, '24 1/64')])).toMatchObject({
      code: 'beyond',
      load: 1,
      end: 'right',
      by: l('1/64'),
    });
    expect(refused('24', [load(1n, '-1/2')])).toMatchObject({
      code: 'beyond',
      load: 1,
      end: 'left',
      by: l('1/2'),
    });
  });

  test('both ends together carry all, and a load moved right moves its share right', () => {
    const span = inches(2400n, 64n);
    const one = fc.record({
      pounds: fc.bigInt({ min: 1n, max: 300n }).map((n) => ratio(n)),
      at: fc.bigInt({ min: 0n, max: 2399n }).map((n) => inches(n, 64n)),
    });
    fc.assert(
      fc.property(fc.array(one, { minLength: 1, maxLength: 6 }), (loads) => {
        const a = endsCarry(span, loads);
        const b = endsCarry(
          span,
          loads.map((x) => ({ ...x, at: x.at.add(inches(1n, 64n)) as typeof x.at })),
        );
        if (!a.ok || !b.ok) throw new Error('refused');
        const all = loads.reduce((so, x) => so.add(x.pounds) as typeof so, ratio(0n));
        expect(a.value.left.add(a.value.right).equals(all)).toBe(true);
        expect(a.value.right.lt(b.value.right)).toBe(true);
      }),
      { numRuns: runs(100) },
    );
  });
});
