import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ratio } from '../../../src/length/length';
import { moistureInAir } from '../../../src/trade/movement/air';

const at = (n: bigint, d = 1n) => {
  const found = moistureInAir(ratio(n, d));
  if (!found.ok) throw new Error(found.error.code);
  return found.value;
};

describe('moistureInAir', () => {
  // 33 lies 3/5 from 30 (6.2) to 35 (6.9): 6.2 + .42; 62 lies 2/5 from 60 (11.0) to 65 (12.0): 11.0 + .4
  test('Example 2 of movement: 33 % is 6.62, 62 % is 11.4', () => {
    expect([at(33n).toFraction(), at(62n).toFraction()]).toEqual(['331/50', '57/5']);
  });

  test('a printed column is what is printed, the first and the last too', () => {
    expect([at(20n), at(50n), at(95n)].map((x) => x.toString())).toEqual(['4.5', '9.2', '23.9']);
  });

  test('drier or damper than the table a meter is asked for, and by how much it is beyond', () => {
    const dry = moistureInAir(ratio(199n, 10n));
    const damp = moistureInAir(ratio(97n));
    expect([dry.ok, damp.ok]).toEqual([false, false]);
    if (dry.ok || damp.ok) return;
    expect([dry.error.code, dry.error.by.toString(), dry.error.limit.toString()]).toEqual([
      'too-dry',
      '0.1',
      '20',
    ]);
    expect([damp.error.code, damp.error.by.toString(), damp.error.limit.toString()]).toEqual([
      'too-damp',
      '2',
      '95',
    ]);
  });

  test('damper air never makes drier wood', () => {
    const h = fc.bigInt({ min: 2000n, max: 9500n });
    fc.assert(
      fc.property(h, h, (a, b) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        expect(at(low, 100n).lte(at(high, 100n))).toBe(true);
      }),
      { numRuns: 200 },
    );
  });
});
