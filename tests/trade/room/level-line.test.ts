import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { equals, isNegative, less, sum } from '../../../src/length/length';
import { heightAt, levelHeight } from '../../../src/trade/room/level-line';
import { rowOf } from '../../../src/trade/room/row';
import { runs } from '../../runs';
import { back, between, figures, l, refusal, row, rows, value, w } from './sample';

const line = {
  drops: row('36 1/8', '35 15/16', '36 1/4'),
  rises: row('60 1/16', '60 3/8', '59 15/16'),
};

describe('levelHeight', () => {
  test('Example 4 of room: the least height is 96 3/16, a level case has 95 7/8', () => {
    const found = value(levelHeight(line));
    expect(figures(found.heights)).toEqual(['96 3/16', '96 5/16', '96 3/16']);
    expect([found.least, found.height, found.less].map(w)).toEqual(['96 3/16', '95 7/8', '5/16']);
    // 36 1/4 - 35 15/16 and 60 3/8 - 59 15/16
    expect([found.leastDrop, found.leastRise, found.floorOut, found.ceilingOut].map(w)).toEqual([
      '35 15/16',
      '59 15/16',
      '5/16',
      '7/16',
    ]);
  });

  test('a height measured straight that says less holds it down', () => {
    const upright = value(rowOf(row('95 1/2', '96 5/16', '96 3/16'), {}));
    expect([value(levelHeight({ ...line, upright })).height].map(w)).toEqual(['95 1/2']);
  });

  test('drops 3 apart are believed, a 64th more are misread; a ceiling may slope as it will', () => {
    const rises = row('60', '20');
    expect(w(value(levelHeight({ drops: row('36', '39'), rises })).floorOut)).toBe('3');
    expect(refusal(levelHeight({ drops: row('36', '39 1/64'), rises }))).toEqual({
      code: 'misread',
      least: { at: '0', plane: 'front', value: '36' },
      greatest: { at: '40', plane: 'front', value: '39 1/64' },
      by: '1/64',
      most: '3',
    });
  });

  test.each([
    ['no reading', { drops: [], rises: [] }, { code: 'no-readings' }],
    [
      'a drop of nothing',
      { drops: row('36', '0', '36') },
      { code: 'not-positive', side: 'drop', spot: { at: '40', plane: 'front' } },
    ],
    [
      'a rise below 0',
      { rises: row('60', '60', '-1') },
      { code: 'not-positive', side: 'rise', spot: { at: '80', plane: 'front' } },
    ],
    [
      'a spot twice',
      { rises: [...row('60'), ...line.rises] },
      { code: 'twice', side: 'rise', spot: { at: '0', plane: 'front' } },
    ],
    [
      'no rise where a drop is',
      { rises: row('60', '60') },
      { code: 'spots-differ', missing: 'rise', spot: { at: '80', plane: 'front' } },
    ],
    [
      'no drop where a rise is',
      { rises: [...line.rises, ...back('60')] },
      { code: 'spots-differ', missing: 'drop', spot: { at: '0', plane: 'back' } },
    ],
  ])('%s is refused', (_, more, want) => {
    expect(refusal(levelHeight({ ...line, ...more }))).toEqual(want);
  });
});

describe('heightAt', () => {
  test('Example 4 of room: over a case of 95 5/8 there are 3/8, 11/16 and 1/4, under it 3/16, 0 and 5/16', () => {
    const { under, over } = heightAt(value(levelHeight(line)), l('95 5/8'));
    expect([figures(over), figures(under)]).toEqual([
      ['3/8', '11/16', '1/4'],
      ['3/16', '0', '5/16'],
    ]);
  });

  test('a case of 96 binds where the ceiling is low, by 1/8', () => {
    expect(figures(heightAt(value(levelHeight(line)), l('96')).over)).toEqual(['0', '5/16', '-1/8']);
  });

  test('what is under, the case, and what is over are the height at every spot; one as high as found just goes', () => {
    fc.assert(
      fc.property(rows(30, 33, 4), rows(40, 60, 4), between(60, 100), (drops, rises, high) => {
        const level = value(levelHeight({ drops, rises }));
        const { under, over } = heightAt(level, high);
        for (const [k, { value: clear }] of level.heights.entries())
          expect(equals(sum([under[k]?.value ?? l('0'), high, over[k]?.value ?? l('0')]), clear)).toBe(true);
        expect(under.some((x) => isNegative(x.value))).toBe(false);
        expect(over.some((x) => isNegative(x.value))).toBe(less(level.height, high));
      }),
      { numRuns: runs(100) },
    );
  });
});
