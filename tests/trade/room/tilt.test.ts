import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, less, subtract } from '../../../src/length/length';
import { greatestHeight, tiltUp } from '../../../src/trade/room/tilt';
import { runs } from '../../runs';
import { between, l, refusal, spelled, value, w } from './sample';

const sixteenth = l('1/16');
const tilt = (height: string, depth: string, ceiling: string) =>
  tiltUp({ height: l(height), depth: l(depth), ceiling: l(ceiling) }, sixteenth);

describe('tiltUp', () => {
  test('Example 5 of room: 64 1/4 × 18 1/4 under 66 1/2 does not go up, though it is 2 1/4 lower', () => {
    // 4128 1/16 + 333 1/16 = 4461 1/8, root 66.79; 66 1/2 is .29 short, UP 5/16
    expect(spelled(value(tilt('64 1/4', '18 1/4', '66 1/2')))).toEqual({
      passes: false,
      diagonal: '66 13/16',
      spare: '-5/16',
    });
  });

  // 30 and 40 have a diagonal of 50
  test.each([
    ['49 63/64', false, '-1/16', undefined],
    ['50', true, '0', { want: '1/2', by: '1/2' }],
    ['50 31/64', true, '7/16', { want: '1/2', by: '1/16' }],
    ['50 1/2', true, '1/2', undefined],
    ['60', true, '10', undefined],
  ])('a diagonal of 50 under %s: passes %s', (ceiling, passes, spare, close) => {
    expect(spelled(value(tilt('40', '30', ceiling)))).toEqual({
      passes,
      diagonal: '50',
      spare,
      ...(close ? { close } : {}),
    });
  });

  test('in millimetres close is under 12', () => {
    const at = (ceiling: string) =>
      value(tiltUp({ height: l('400 mm'), depth: l('300 mm'), ceiling: l(ceiling) }, l('1 mm'), 'mm')).close;
    expect([at('511 mm') !== undefined, at('512 mm')]).toEqual([true, undefined]);
  });

  test.each([
    ['0', '18', '66', { code: 'not-positive', what: 'height' }],
    ['64', '-1', '66', { code: 'not-positive', what: 'depth' }],
    ['64', '18', '0', { code: 'not-positive', what: 'ceiling' }],
    ['66 9/16', '18', '66 1/2', { code: 'ceiling-below', by: '1/16' }],
  ])('%s × %s under %s is refused', (height, depth, ceiling, want) => {
    expect(refusal(tilt(height, depth, ceiling))).toEqual(want);
  });

  test('as floats turn it, a corner of the case passes under the ceiling just where it is said to', () => {
    fc.assert(
      fc.property(between(20, 90), between(8, 30), between(20, 110), (height, depth, ceiling) => {
        fc.pre(!less(ceiling, height));
        const { passes } = value(tiltUp({ height, depth, ceiling }, sixteenth));
        const [h, d, c] = [height, depth, ceiling].map((x) => x.valueOf());
        // stood up from its back over its bottom back edge: the highest of its corners in 2000 steps
        const highest = Array.from({ length: 2001 }, (_, k) => ((Math.PI / 2) * k) / 2000).map(
          (t) => (h ?? 0) * Math.sin(t) + (d ?? 0) * Math.cos(t),
        );
        const most = Math.max(...highest);
        // steps of .0008 rad miss the top by under diagonal × step² / 8, below a hundred-thousandth
        if (passes) expect(most).toBeLessThan((c ?? 0) + 1e-9);
        else expect(most).toBeGreaterThan((c ?? 0) - 1e-4);
      }),
      { numRuns: runs(60) },
    );
  });
});

describe('greatestHeight', () => {
  test('Example 4 of room: 95 7/8 less 1/4 is 95 5/8; DOWN to the mark', () => {
    expect(spelled(value(greatestHeight(l('95 7/8'), { gap: l('1/4') }, l('1/32'))))).toEqual({
      value: '95 5/8',
      limit: 'ceiling-gap',
    });
    // 95 43/64: 95 21/32 and a 64th
    expect(w(value(greatestHeight(l('95 59/64'), { gap: l('1/4') }, l('1/32'))).value)).toBe('95 21/32');
  });

  test('Example 5 of room: a case 18 1/4 deep that is tilted up may be 63 15/16 high', () => {
    const at = { gap: l('1/4'), depth: l('18 1/4') };
    expect(spelled(value(greatestHeight(l('66 1/2'), at, sixteenth)))).toEqual({
      value: '63 15/16',
      limit: 'tilt',
    });
  });

  test('a shallow case is held by the gap, not by the tilt', () => {
    // 50² - 5² = 2475, root 49.75, which is 49 3/4 - .0013; a gap of 1 leaves 49
    expect(spelled(value(greatestHeight(l('50'), { gap: l('1'), depth: l('5') }, sixteenth)))).toEqual({
      value: '49',
      limit: 'ceiling-gap',
    });
  });

  test.each([
    ['50', { gap: l('-1/8') }, { code: 'negative-gap', by: '1/8' }],
    ['0', { gap: l('0') }, { code: 'not-positive' }],
    ['50', { gap: l('0'), depth: l('0') }, { code: 'not-positive' }],
    ['50', { gap: l('50') }, { code: 'no-room', limit: 'ceiling-gap', by: '0' }],
    ['50', { gap: l('51') }, { code: 'no-room', limit: 'ceiling-gap', by: '1' }],
    ['50', { gap: l('0'), depth: l('52') }, { code: 'no-room', limit: 'tilt', by: '2' }],
    ['50', { gap: l('0'), depth: l('50') }, { code: 'no-room', limit: 'tilt', by: '0' }],
  ])('%s with %o is refused', (height, at, want) => {
    expect(refusal(greatestHeight(l(height), at, sixteenth))).toEqual(want);
  });

  test('the highest goes up and stands; a mark higher does not', () => {
    fc.assert(
      fc.property(between(40, 110), between(6, 30), between(0, 2), (room, depth, gap) => {
        const { value: high } = value(greatestHeight(room, { gap, depth }, sixteenth));
        const stands = (height: typeof high) =>
          !less(subtract(room, gap), height) &&
          value(tiltUp({ height, depth, ceiling: room }, sixteenth)).passes;
        expect(stands(high)).toBe(true);
        expect(less(room, add(high, sixteenth)) || stands(add(high, sixteenth))).toBe(false);
      }),
      { numRuns: runs(100) },
    );
  });
});
