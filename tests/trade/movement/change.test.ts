import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, equals, inches, ratio, zero } from '../../../src/length/length';
import { changeOf } from '../../../src/trade/movement/change';
import { runs } from '../../runs';
import { l } from '../grooves/sample';
import { n } from './sample';

const fir = {
  size: inches(915n, 100n),
  way: 'across' as const,
  coefficient: n('.00245'),
  from: n('8'),
  to: n('11'),
};
const found = (more: Partial<Parameters<typeof changeOf>[0]> = {}) => {
  const result = changeOf({ ...fir, ...more });
  if (!result.ok) throw new Error(result.error.code);
  return result.value;
};
const code = (more: Partial<Parameters<typeof changeOf>[0]>) => {
  const result = changeOf({ ...fir, ...more });
  return result.ok ? 'ok' : result.error.code;
};

describe('changeOf', () => {
  // 9.15 × .00245 × 3 = .0672525; 9.15 + .0672525 = 9.2172525
  test('Example 1 of movement: white fir 9.15 wide from 8 to 11 % grows .06725 to 9.217', () => {
    expect([found().change.toString(), found().size.toString()]).toEqual(['0.0672525', '9.2172525']);
    expect([found().beyond, found().still]).toEqual([false, false]);
  });

  test('it shrinks back by as much of the size it was given', () => {
    expect(equals(found({ from: n('11'), to: n('8') }).change, found().change.neg() as typeof zero)).toBe(
      true,
    );
  });

  test('along the grain, and in a sheet, nothing is reckoned, and that is said', () => {
    for (const way of ['along', 'sheet'] as const) {
      const { change, size, still, beyond } = found({ way, to: n('20') });
      expect([equals(change, zero), equals(size, fir.size), still, beyond]).toEqual([
        true,
        true,
        true,
        false,
      ]);
    }
  });

  test('outside 6 to 14 % it is reckoned and marked', () => {
    expect([
      found({ to: n('14') }).beyond,
      found({ to: n('14.1') }).beyond,
      found({ from: n('5.9') }).beyond,
    ]).toEqual([false, true, true]);
  });

  test('no size, no coefficient, or moisture below nothing is refused', () => {
    expect([
      code({ size: l('0') }),
      code({ coefficient: n('.01') }),
      code({ coefficient: ratio(0n) }),
      code({ from: ratio(-1n) }),
    ]).toEqual(['not-positive', 'coefficient', 'coefficient', 'moisture-negative']);
  });

  test('two steps change what one does, and a board in two halves what it does whole', () => {
    const m = fc.bigInt({ min: 60n, max: 140n }).map((x) => ratio(x, 10n));
    const size = fc.bigInt({ min: 1n, max: 3000n }).map((x) => inches(x, 64n));
    fc.assert(
      fc.property(m, m, m, size, size, (a, b, c, p, q) => {
        const step = (from: typeof a, to: typeof a, of: typeof p) => found({ from, to, size: of }).change;
        expect(equals(add(step(a, b, p), step(b, c, p)), step(a, c, p))).toBe(true);
        expect(equals(add(step(a, b, p), step(a, b, q)), step(a, b, add(p, q)))).toBe(true);
      }),
      { numRuns: runs(100) },
    );
  });
});
