import { describe, expect, test } from 'vitest';
import { trueReading } from '../../src/length/burned';
import { negate } from '../../src/length/length';
import { l, w } from './write-figures';

describe('trueReading', () => {
  test('an inch burned is taken back, the body is added', () => {
    const burned = trueReading(l('25 1/2'), { burned: l('1') });
    const body = trueReading(l('30'), { body: l('3 1/4') });
    expect(burned.ok && w(burned.value.value)).toBe('24 1/2');
    expect(body.ok && [w(body.value.value), body.value.both]).toEqual(['33 1/4', false]);
  });

  test('both at once is looked at, and less than the burned start is refused', () => {
    const both = trueReading(l('30'), { burned: l('1'), body: l('3') });
    expect(both.ok && both.value.both).toBe(true);
    const short = trueReading(l('1/2'), { burned: l('1') });
    expect(!short.ok && w(short.error.by)).toBe('1/2');
  });

  test('a burned start or a body of less than nothing is no figure', () => {
    expect(() => trueReading(l('3'), { burned: negate(l('1')) })).toThrow(RangeError);
    expect(() => trueReading(l('3'), { body: negate(l('1')) })).toThrow(RangeError);
  });
});
