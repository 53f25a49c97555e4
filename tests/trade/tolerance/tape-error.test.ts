import { describe, expect, test } from 'vitest';
import { fromMillimetres, inches } from '../../../src/length/length';
import { tapeError } from '../../../src/trade/tolerance/tape-error';

test('tapeError: a reach below nothing is a mistake in the program', () => {
  expect(() => tapeError('II', inches(-1n), false)).toThrow(RangeError);
  expect(tapeError('II', inches(0n), false).equals(fromMillimetres(3n, 10n))).toBe(true);
});

describe('tapeError', () => {
  test('grows by whole metres begun, not in proportion', () => {
    const at = (mm: bigint) => tapeError('II', fromMillimetres(mm), false).toFraction();
    expect(at(2001n)).toBe(at(3000n));
    expect(at(3001n)).not.toBe(at(3000n));
  });
});
