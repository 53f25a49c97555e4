import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Doorway, throughDoorway } from '../../../src/trade/room/doorway';
import { runs } from '../../runs';
import { between, l, refusal, spelled, value } from './sample';

const door: Doorway = { width: l('30'), height: l('79 1/2') };
const size = { width: l('38 3/8'), height: l('64 1/4'), depth: l('17 1/2') };
const hand = l('1');

const told = (more: Partial<Doorway>, given = size) =>
  value(throughDoorway({ ...door, ...more }, given, hand))
    .filter((way) => way.passes)
    .map((way) => `${way.across} across, ${way.up} up`);

describe('throughDoorway', () => {
  test('Example 9 of room: with its depth across it goes, the height up or the width up', () => {
    expect(told({})).toEqual(['depth across, height up', 'depth across, width up']);
    const all = value(throughDoorway(door, size, hand));
    // depth across: 30 - 17 1/2 - 2; height up: 79 1/2 - 64 1/4 - 1; height across: 30 - 64 1/4 - 2
    expect(spelled(all.find((way) => way.across === 'depth' && way.up === 'height'))).toEqual({
      across: 'depth',
      up: 'height',
      trailing: 'width',
      sideways: '10 1/2',
      overhead: '14 1/4',
      passes: true,
    });
    expect(spelled(all.find((way) => way.across === 'height' && way.up === 'width'))).toMatchObject({
      sideways: '-36 1/4',
      passes: false,
    });
  });

  test.each([
    // 17 1/2 + 2, 64 1/4 + 1, 38 3/8 + 1
    [{ width: l('19 1/2') }, 2],
    [{ width: l('19 31/64') }, 0],
    [{ height: l('65 1/4') }, 2],
    [{ height: l('65 15/64') }, 1],
    [{ height: l('39 3/8') }, 1],
    [{ height: l('39 23/64') }, 0],
    [{ beyond: l('64 1/4') }, 2],
    [{ beyond: l('64 15/64') }, 1],
    [{ beyond: l('38 3/8') }, 1],
    [{ beyond: l('38') }, 0],
    [{ leaf: l('30 1/64') }, 2],
  ])('with %o it goes in so many ways: %i', (more, many) => {
    expect(told(more).length).toBe(many);
  });

  test('what the room beyond is short of is told', () => {
    const all = value(throughDoorway({ ...door, beyond: l('60') }, size, hand));
    expect(all.filter((way) => way.trailing === 'height').map((way) => spelled(way.behind))).toEqual([
      '-4 1/4',
      '-4 1/4',
    ]);
  });

  test.each([
    [{ width: l('0') }, {}, '1', { code: 'not-positive', what: 'clear-width' }],
    [{ height: l('-1') }, {}, '1', { code: 'not-positive', what: 'clear-height' }],
    [{ beyond: l('0') }, {}, '1', { code: 'not-positive', what: 'beyond' }],
    [{ leaf: l('0') }, {}, '1', { code: 'not-positive', what: 'leaf' }],
    [{}, { depth: l('0') }, '1', { code: 'not-positive', what: 'depth' }],
    [{}, {}, '-1/2', { code: 'negative-hand', by: '1/2' }],
    // stop to stop is always less than the leaf that lies against the stops
    [{ leaf: l('30') }, {}, '1', { code: 'leaf-not-opening', by: '0' }],
    [{ leaf: l('29 1/2') }, {}, '1', { code: 'leaf-not-opening', by: '1/2' }],
  ])('%o, %o, a hand of %s is refused', (more, sizes, given, want) => {
    expect(refusal(throughDoorway({ ...door, ...more }, { ...size, ...sizes }, l(given)))).toEqual(want);
  });

  test('a way said to pass has its box within the doorway in floats, with hands; one that does not stands out', () => {
    const sizes = fc.record({ width: between(8, 60), height: between(8, 90), depth: between(8, 30) });
    fc.assert(
      fc.property(
        sizes,
        between(20, 40),
        between(60, 90),
        between(20, 90),
        (given, width, height, beyond) => {
          const found = value(throughDoorway({ width, height, beyond }, given, hand));
          for (const way of found) {
            const [x, z, y] = [way.across, way.up, way.trailing].map((name) => given[name].valueOf());
            // centred sideways, on the threshold, its front at the far wall of the room beyond
            const left = (width.valueOf() - (x ?? 0)) / 2;
            const corners = [left, width.valueOf() - left - (x ?? 0), height.valueOf() - (z ?? 0)];
            const clear = corners.every((room) => room >= 1 - 1e-9) && (y ?? 0) <= beyond.valueOf() + 1e-9;
            expect(clear).toBe(way.passes);
          }
        },
      ),
      { numRuns: runs(200) },
    );
  });
});
