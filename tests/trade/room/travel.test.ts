import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, inches, less } from '../../../src/length/length';
import { type FootDrop, levelFeet } from '../../../src/trade/room/feet';
import { feetSet } from '../../../src/trade/room/travel';
import { runs } from '../../runs';
import { between, l, refusal, spelled, value } from './sample';

const levelled = (...drops: readonly string[]) =>
  value(
    levelFeet(drops.map((x, k): FootDrop => ({ row: k < 2 ? 'front' : 'back', number: k + 1, drop: l(x) }))),
  );
const floor = levelled('34 9/16', '34 3/8', '34 11/16', '34 7/16');
const travel = { shortest: l('3/4'), longest: l('1 1/4') };

describe('feetSet', () => {
  test('Example 13 of room: the third foot would stand 1/16 past its end; from 3/4 to 15/16 all are within', () => {
    expect(spelled(value(feetSet(floor, { high: l('1'), travel })))).toEqual({
      feet: [
        { row: 'front', number: 1, set: '1 3/16' },
        { row: 'front', number: 2, set: '1' },
        { row: 'back', number: 3, set: '1 5/16', past: '1/16' },
        { row: 'back', number: 4, set: '1 1/16' },
      ],
      between: { least: '3/4', most: '15/16' },
    });
  });

  test('a foot just at either end is within; one shorter than it goes is told below 0', () => {
    const at = (high: string) =>
      spelled(value(feetSet(floor, { high: l(high), travel })).feet.map((x) => x.past));
    expect(at('15/16')).toEqual([undefined, undefined, undefined, undefined]);
    expect(at('3/4')).toEqual([undefined, undefined, undefined, undefined]);
    // 11/16, and 11/16 + 1/16 = 3/4
    expect(at('11/16')).toEqual([undefined, '-1/16', undefined, undefined]);
  });

  test('a floor that falls more than the feet travel has no length for them, and by how much is told', () => {
    // 1/2 of travel against 9/16
    const found = value(feetSet(levelled('34', '34', '34 9/16'), { high: l('3/4'), travel }));
    expect(spelled([found.between, found.fallsMore])).toEqual([undefined, '1/16']);
    const just = value(feetSet(levelled('34', '34', '34 1/2'), { high: l('3/4'), travel }));
    expect(spelled(just.between)).toEqual({ least: '3/4', most: '3/4' });
  });

  test.each([
    [
      { shortest: l('-1/8'), longest: l('1') },
      { code: 'negative', by: '1/8' },
    ],
    [
      { shortest: l('1 1/4'), longest: l('3/4') },
      { code: 'turned-round', by: '1/2' },
    ],
  ])('%o is refused', (given, want) => {
    expect(refusal(feetSet(floor, { high: l('1'), travel: given }))).toEqual(want);
  });

  test('any length between least and most sets every foot, one outside does not', () => {
    fc.assert(
      fc.property(fc.array(between(30, 32), { minLength: 1, maxLength: 6 }), between(0, 3), (drops, high) => {
        const level = value(levelFeet(drops.map((drop, k): FootDrop => ({ row: 'front', number: k, drop }))));
        const at = { shortest: inches(1n, 2n), longest: inches(2n) };
        const { feet, between: range, fallsMore } = value(feetSet(level, { high, travel: at }));
        const all = feet.every((foot) => foot.past === undefined);
        const said = range !== undefined && !less(high, range.least) && !less(range.most, high);
        expect(all).toBe(said);
        expect(range === undefined).toBe(fallsMore !== undefined);
        for (const { set, past } of feet)
          expect(past !== undefined).toBe(less(set, at.shortest) || less(at.longest, set));
        expect(feet.every((foot) => !less(foot.set, high) && !less(add(high, level.most), foot.set))).toBe(
          true,
        );
      }),
      { numRuns: runs(200) },
    );
  });
});
