import { describe, expect, test } from 'vitest';
import { factorsOf, faultOf, isBeyond, usualYear } from '../../../src/trade/movement/season';
import { n, year } from './sample';

describe('faultOf', () => {
  const oak = n('.00369');
  const fault = (low: string, now: string, high: string, c = oak) => {
    const found = faultOf(year(low, now, high), c);
    return found && ('by' in found ? [found.code, found.by.toString()] : [found.code]);
  };

  test('now may stand at either end of the year; past it by a tenth it is asked again', () => {
    expect([fault('6', '6', '12'), fault('6', '12', '12'), fault('8', '8', '8')]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    expect([fault('6', '5.9', '12'), fault('6', '12.1', '12')]).toEqual([
      ['below-low', '0.1'],
      ['above-high', '0.1'],
    ]);
  });

  test('a coefficient of nothing, or of .01, is none', () => {
    const code = (c: string) => fault('6', '8', '12', n(c));
    expect([code('0'), code('.01'), code('.02'), code('.00999'), code('.00001')]).toEqual([
      ['coefficient'],
      ['coefficient'],
      ['coefficient'],
      undefined,
      undefined,
    ]);
    expect(faultOf(year('6', '8', '12'), n('.00369').neg() as typeof oak)?.code).toBe('coefficient');
  });

  test('moisture below nothing is none', () => {
    const low = n('1').neg() as typeof oak;
    expect(faultOf({ ...year('6', '8', '12'), low }, oak)?.code).toBe('moisture-negative');
  });
});

test('6 and 14 % lie within the table, a tenth past them beyond', () => {
  expect([isBeyond(n('6'), n('14')), isBeyond(n('5.9')), isBeyond(n('9'), n('14.1'))]).toEqual([
    false,
    true,
    true,
  ]);
});

test('the usual year is 6 to 12 (common practice, no source)', () => {
  expect([usualYear.low.toString(), usualYear.high.toString()]).toEqual(['6', '12']);
});

// 1 + .00369 × 4 = 1.01476; 1 - .00369 × 2 = .99262
test('what a size is multiplied by in the dampest and the driest', () => {
  const { damp, dry } = factorsOf(year('6', '8', '12'), n('.00369'));
  expect([damp.toString(), dry.toString()]).toEqual(['1.01476', '0.99262']);
});
