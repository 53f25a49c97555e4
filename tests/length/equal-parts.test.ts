import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { equalParts } from '../../src/length/equal-parts';
import { add, inches, negate, times } from '../../src/length/length';
import { markAt } from '../../src/length/tape';
import { writeLength } from '../../src/length/write';
import { runs } from '../runs';
import { l, w } from './write-figures';

describe('equalParts', () => {
  test('Example 4 of length: 36 15/16 into five bays with 11/32 dividers', () => {
    const found = equalParts(l('36 15/16'), 5, l('11/32'));
    if (!found.ok) throw new Error(found.error.code);
    expect(w(found.value.each)).toBe('7 9/80');
    expect(found.value.nears.map(w)).toEqual(['7 9/80', '14 91/160', '22 1/40', '29 77/160']);
    expect(found.value.nears.map((x) => writeLength(markAt(x, '1/32').value))).toEqual([
      '7 1/8',
      '14 9/16',
      '22 1/32',
      '29 15/32',
    ]);
  });

  test('parts and dividers make the length again', () => {
    fc.assert(
      fc.property(
        fc.bigInt({ min: 1n, max: 10n ** 6n }),
        fc.integer({ min: 1, max: 60 }),
        fc.bigInt({ min: 0n, max: 999n }),
        (n, k, t) => {
          const [length, divider] = [inches(n, 64n), inches(t, 128n)];
          const found = equalParts(length, k, divider);
          if (!found.ok) {
            expect(times(divider, BigInt(k - 1)).gte(length)).toBe(true);
            return;
          }
          const all = add(times(found.value.each, BigInt(k)), times(divider, BigInt(k - 1)));
          expect(all.equals(length)).toBe(true);
          expect(found.value.nears).toHaveLength(k - 1);
        },
      ),
      { numRuns: runs(1000) },
    );
  });

  test.each([
    [0, '1/8', 'count-not-whole'],
    [2.5, '1/8', 'count-not-whole'],
    [-1, '1/8', 'count-not-whole'],
    [3, '-1/8', 'divider-negative'],
    [3, '5', 'dividers-fill-it'],
  ])('ten inches into %s with %s is refused: %s', (n, t, code) => {
    const found = equalParts(l('10'), n, l(t));
    expect(found.ok ? 'given' : found.error.code).toBe(code);
  });

  test.each(['0', '-1'])('a length of %s has no parts', (length) => {
    const negative = length.startsWith('-');
    const found = equalParts(negative ? negate(l(length.slice(1))) : l(length), 3, l('0'));
    expect(!found.ok && found.error).toEqual({ code: 'length-not-positive' });
  });

  test('dividers that fill the length say how many parts would fit', () => {
    const found = equalParts(l('10'), 4, l('5'));
    expect(!found.ok && found.error).toMatchObject({ code: 'dividers-fill-it', most: 2 });
    const exact = equalParts(l('10'), 2, l('3'));
    expect(exact.ok).toBe(true);
  });
});
