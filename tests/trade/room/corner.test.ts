import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cornerMisread, cornerOf, cornerOver } from '../../../src/trade/room/corner';
import { runs } from '../../runs';
import { between, l, refusal, value, w } from './sample';

const legs = (back: string, side: string, across: string) => ({
  back: l(back),
  side: l(side),
  across: l(across),
});

describe('cornerOf', () => {
  test('Example 6 of room: 40, 30 and 50 3/16 open 4809/20480 over 30, an eighth strong over 16', () => {
    const corner = value(cornerOf(legs('40', '30', '50 3/16')));
    expect(w(corner.inAt)).toBe('-4809/20480');
    // 4809/20480 × 16/30 = 4809/38400, by 3 1603/12800; an eighth is 1600/12800
    expect(w(cornerOver(corner, l('16')))).toBe('-1603/12800');
    expect(w(cornerOver(corner, l('0')))).toBe('0');
  });

  // Euclid, Elements I.47: of a right corner the squares on the legs are the square across.
  test.each([
    ['3', '4', '5'],
    ['40', '30', '50'],
    ['12', '5', '13'],
  ])('%s, %s, %s is square', (back, side, across) => {
    expect(w(value(cornerOf(legs(back, side, across))).inAt)).toBe('0');
  });

  test('less across closes: 40, 30 and 49 13/16 come in', () => {
    // 49 13/16² = 635209/256; 2500 is 640000/256; 4791/256 over 80 = 4791/20480
    expect(w(value(cornerOf(legs('40', '30', '49 13/16'))).inAt)).toBe('4791/20480');
  });

  test.each([
    ['0', '30', '50', { code: 'not-positive', what: 'back' }],
    ['40', '-1', '50', { code: 'not-positive', what: 'side' }],
    ['40', '30', '0', { code: 'not-positive', what: 'across' }],
    ['40', '30', '70', { code: 'cannot-be', least: '10', most: '70', by: '0' }],
    ['40', '30', '70 1/2', { code: 'cannot-be', least: '10', most: '70', by: '1/2' }],
    ['40', '30', '10', { code: 'cannot-be', least: '10', most: '70', by: '0' }],
    ['30', '40', '9 3/4', { code: 'cannot-be', least: '10', most: '70', by: '1/4' }],
  ])('%s, %s, %s is refused', (back, side, across, want) => {
    expect(refusal(cornerOf(legs(back, side, across)))).toEqual(want);
  });

  test('drawn in floats, the end of the side leg lies so far in', () => {
    fc.assert(
      fc.property(between(10, 60), between(10, 60), between(10, 90), (back, side, across) => {
        const corner = cornerOf({ back, side, across });
        if (!corner.ok) return;
        const x = corner.value.inAt.valueOf();
        const [a, b, c] = [back, side, across].map((y) => y.valueOf());
        // the end of the side leg at (x, y), that of the back leg at (a, 0)
        const y = Math.sqrt(Math.max(0, (b ?? 0) ** 2 - x ** 2));
        expect(Math.hypot(x - (a ?? 0), y)).toBeCloseTo(c ?? 0, 6);
      }),
      { numRuns: runs(200) },
    );
  });
});

describe('cornerMisread', () => {
  test('Example 6 of room: on 40, 30, 50 a sixteenth moves it 5/64', () => {
    const corner = value(cornerOf(legs('40', '30', '50')));
    expect(w(cornerMisread(corner, l('1/16')))).toBe('5/64');
    // what a reading a sixteenth longer makes of it: -(100 + 1/16)/16/80 = -1601/20480, a 20480th more
    expect(w(value(cornerOf(legs('40', '30', '50 1/16'))).inAt)).toBe('-1601/20480');
  });
});
