import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Stair, upStair } from '../../../src/trade/room/stair';
import { runs } from '../../runs';
import { between, l, refusal, spelled, value, w } from './sample';

const stair: Stair = {
  flight: 'straight',
  headroom: l('78'),
  going: l('10 1/2'),
  rise: l('7'),
  between: l('36'),
};
const size = { width: l('38 3/8'), height: l('64 1/4'), depth: l('17 1/2') };
const sixteenth = l('1/16');
const up = (more: Partial<Stair>, sizes: Partial<typeof size> = {}) =>
  value(upStair({ ...stair, ...more }, { ...size, ...sizes }, sixteenth));

describe('upStair', () => {
  test('Example 11 of room: square 4212, 64 7/8 clear: 64 1/4 passes, 5/8 to spare', () => {
    // 78 × 10 1/2 = 819, squared 670761, over 110 1/4 + 49
    const found = up({});
    expect([w(found.square as never), w(found.clear)]).toEqual(['4212', '64 7/8']);
    const ways = found.ways.filter((way) => way.up === 'height');
    expect(spelled(ways)).toEqual(
      [
        // 36 - 17 1/2 and 36 - 38 3/8
        {
          across: 'depth',
          up: 'height',
          trailing: 'width',
          sideways: '18 1/2',
          overhead: '5/8',
          passes: true,
        },
        {
          across: 'width',
          up: 'height',
          trailing: 'depth',
          sideways: '-2 3/8',
          overhead: '5/8',
          passes: false,
        },
      ].sort(() => (ways[0]?.across === 'depth' ? 0 : -1)),
    );
  });

  test.each([
    // 6² + 8² = 10²: of 80 plumb over a going of 8 and a rise of 6 just 64 is clear
    ['64', true, '0'],
    ['64 1/1000', false, '-1/16'],
    ['63 15/16', true, '1/16'],
  ])('under 64 clear a height of %s passes: %s', (height, passes, overhead) => {
    const found = up({ headroom: l('80'), going: l('8'), rise: l('6') }, { height: l(height) });
    const way = found.ways.find((x) => x.up === 'height' && x.across === 'depth');
    expect(spelled(way)).toMatchObject({ passes, overhead });
  });

  test('a rail just as far off as the case is wide lets it by', () => {
    const passes = (between: string) =>
      up({ between: l(between) }).ways.find((x) => x.up === 'height' && x.across === 'depth')?.passes;
    expect([passes('17 1/2'), passes('17 31/64')]).toEqual([true, false]);
  });

  test.each([
    [{ flight: 'winders' as const }, {}, { code: 'winders' }],
    [{ headroom: l('0') }, {}, { code: 'not-positive', what: 'headroom' }],
    [{ going: l('-1') }, {}, { code: 'not-positive', what: 'going' }],
    [{ rise: l('0') }, {}, { code: 'not-positive', what: 'rise' }],
    [{ between: l('0') }, {}, { code: 'not-positive', what: 'between' }],
    [{}, { width: l('0') }, { code: 'not-positive', what: 'width' }],
  ])('%o, %o is refused', (more, sizes, want) => {
    expect(refusal(upStair({ ...stair, ...more }, { ...size, ...sizes }, sixteenth))).toEqual(want);
  });

  test('laid on the nosings in floats, a case that passes has all corners under the ceiling; one that jams has not', () => {
    const stairs = fc.record({
      headroom: between(60, 110),
      going: between(7, 13),
      rise: between(5, 10),
    });
    fc.assert(
      fc.property(stairs, between(10, 100), ({ headroom, going, rise }, height) => {
        const found = up({ headroom, going, rise, between: l('60') }, { height });
        const way = found.ways.find((x) => x.up === 'height' && x.across === 'depth');
        const [v, g, r, h] = [headroom, going, rise, height].map((x) => Number(x.valueOf()));
        const slope = Math.atan2(r ?? 0, g ?? 0);
        // along the slope 38 3/8, square to it h; the ceiling is v over the line of the nosings
        const corners = [0, 38.375].map((along) => [
          along * Math.cos(slope) - (h ?? 0) * Math.sin(slope),
          along * Math.sin(slope) + (h ?? 0) * Math.cos(slope),
        ]);
        const under = corners.map(([x, y]) => (x ?? 0) * Math.tan(slope) + (v ?? 0) - (y ?? 0));
        if (way?.passes) expect(Math.min(...under)).toBeGreaterThan(-1e-9);
        else expect(Math.min(...under)).toBeLessThan(1e-9);
      }),
      { numRuns: runs(200) },
    );
  });
});
