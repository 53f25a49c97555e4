import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { equals, isNegative, less } from '../../../src/length/length';
import { wedgeIn } from '../../../src/trade/room/wedge';
import { runs } from '../../runs';
import { between, l, refusal, value, w } from './sample';

const wedge = { thin: l('1/32'), thick: l('5/16'), long: l('7') };

describe('wedgeIn', () => {
  test('Example 12 of room: 1/32 to 5/16 over 7 goes in 3 8/9 for 3/16', () => {
    expect(w(value(wedgeIn(wedge, l('3/16'))))).toBe('3 8/9');
  });

  test.each([
    ['1/32', '0'],
    ['5/16', '7'],
    // halfway up the taper: 1/32 + 9/64
    ['11/64', '3 1/2'],
  ])('for %s it goes in %s', (lift, want) => {
    expect(w(value(wedgeIn(wedge, l(lift))))).toBe(want);
  });

  test.each([
    ['21/64', {}, { code: 'too-thin', by: '1/64' }],
    ['1/64', {}, { code: 'too-thick', by: '1/64' }],
    ['3/16', { long: l('0') }, { code: 'not-positive' }],
    ['3/16', { thin: l('-1/64') }, { code: 'negative-thin', by: '1/64' }],
    ['3/16', { thin: l('5/16') }, { code: 'no-taper', by: '0' }],
    ['3/16', { thick: l('0') }, { code: 'no-taper', by: '1/32' }],
  ])('for %s with %o it is refused', (lift, more, want) => {
    expect(refusal(wedgeIn({ ...wedge, ...more }, l(lift)))).toEqual(want);
  });

  test('so far in, the wedge is as thick as the lift, and never further in than it is long', () => {
    fc.assert(
      fc.property(between(0, 1), between(0, 2), between(1, 12), between(0, 2), (thin, thick, long, lift) => {
        const found = wedgeIn({ thin, thick, long }, lift);
        if (!found.ok) return;
        const here = thin.add(found.value.mul(thick.sub(thin)).div(long)) as typeof thin;
        expect(equals(here, lift)).toBe(true);
        expect(isNegative(found.value) || less(long, found.value)).toBe(false);
      }),
      { numRuns: runs(200) },
    );
  });
});
