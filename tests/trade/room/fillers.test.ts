import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, equals, isNegative, isPositive, less, subtract, sum } from '../../../src/length/length';
import { fillersFor } from '../../../src/trade/room/fillers';
import { greatestWidth } from '../../../src/trade/room/greatest-width';
import { plumbWidth } from '../../../src/trade/room/plumb';
import { runs } from '../../runs';
import { back, between, figures, l, row, rows, spelled, value, w } from './sample';

const plumb = value(
  plumbWidth({ apart: l('46'), left: row('5/8', '7/8', '1 1/4'), right: row('1 1/8', '3/4', '3/8') }),
);
const allow = { left: l('1/2'), right: l('1/2') };
const straight = value(plumbWidth({ apart: l('46'), left: row('1/2'), right: row('1/2') }));

describe('fillersFor', () => {
  test('Example 2 of room: case 46: fillers left 1/2, 3/4, 1 1/8, right 1 1/4, 7/8, 1/2', () => {
    const { left, right, spare } = fillersFor(plumb, { width: l('46'), allow });
    expect([figures(left.gaps), figures(right.gaps), w(spare)]).toEqual([
      ['1/2', '3/4', '1 1/8'],
      ['1 1/4', '7/8', '1/2'],
      '0',
    ]);
    // strips 1 1/8 + 1/8 and 1 1/4 + 1/8; off the right 1 3/8 - 1 1/4, - 7/8, - 1/2
    expect([w(left.strip), w(right.strip)]).toEqual(['1 1/4', '1 3/8']);
    expect([figures(left.off), figures(right.off)]).toEqual([
      ['3/4', '1/2', '1/8'],
      ['1/8', '1/2', '7/8'],
    ]);
    expect([left.warnings, right.warnings]).toEqual([[], []]);
  });

  test('Example 8 of room: a case of 46 5/8 binds at the top by 1/8', () => {
    const { right, spare } = fillersFor(plumb, { width: l('46 5/8'), allow });
    expect([figures(right.gaps), w(spare)]).toEqual([['5/8', '1/4', '-1/8'], '-5/8']);
    expect(spelled(right.warnings)).toEqual([
      { code: 'binds', spot: { at: '80', plane: 'front' }, by: '1/8' },
    ]);
  });

  test.each([
    // 47 wide; left allowance as given, the case 40, so right of it 7 less that
    ['3/8', '3', []],
    ['23/64', '3', [{ code: 'narrow', gap: '23/64', least: '3/8', by: '1/64' }]],
    ['3', '3/8', []],
    ['3 1/64', '3', [{ code: 'wide', gap: '3 1/64', most: '3', by: '1/64' }]],
  ])('a filler of %s left', (left, right, want) => {
    const found = fillersFor(straight, { width: l('40'), allow: { left: l(left), right: l(right) } });
    expect(spelled(found.left.warnings)).toEqual(want);
  });

  test('limits of a job in millimetres are round: 10 and 75, strip 3', () => {
    const narrow = fillersFor(
      straight,
      { width: l('40'), allow: { left: l('9.9 mm'), right: l('0') } },
      'mm',
    );
    expect(narrow.left.warnings.map((x) => x.code)).toEqual(['narrow']);
    expect(equals(narrow.left.strip ?? l('0'), l('12.9 mm'))).toBe(true);
    const well = fillersFor(straight, { width: l('40'), allow: { left: l('10 mm'), right: l('0') } }, 'mm');
    expect(well.left.warnings).toEqual([]);
  });

  test('a strip is for the front: what the back reads still binds', () => {
    const deep = value(
      plumbWidth({
        apart: l('46'),
        left: [...row('1/2'), ...back('1/2')],
        right: [...row('1/2'), ...back('1/4')],
      }),
    );
    // plumb width 46 3/4; case 46 1/2 with 1/2 left leaves 47 - 1/2 - 46 1/2 = 0 at the front, -1/4 at the back
    const { right } = fillersFor(deep, { width: l('46 1/2'), allow });
    expect([figures(right.gaps), right.strip, right.off]).toEqual([['0', '-1/4'], undefined, []]);
    expect(spelled(right.warnings)).toEqual([
      { code: 'binds', spot: { at: '0', plane: 'back' }, by: '1/4' },
      { code: 'narrow', gap: '0', least: '3/8', by: '3/8' },
    ]);
  });

  const offsets = rows(-2, 3, 5);
  const rooms = fc.tuple(between(20, 60), offsets, offsets, between(0, 2), between(0, 2));

  test('left gap, case and right gap are the width at every spot; the greatest case keeps its allowances', () => {
    fc.assert(
      fc.property(rooms, ([apart, left, right, a, b]) => {
        const found = value(plumbWidth({ apart, left, right }));
        const given = { left: a, right: b };
        const { value: width } = value(greatestWidth(found.width, given, l('1/32')));
        const fillers = fillersFor(found, { width, allow: given });
        for (const [k, { value: clear }] of found.widths.entries()) {
          const gaps = [fillers.left, fillers.right].map((side) => side.gaps[k]?.value ?? l('0'));
          expect(equals(sum([...gaps, width]), clear)).toBe(true);
        }
        expect(fillers.left.gaps.every(({ value: gap }) => !less(gap, a))).toBe(true);
        expect(fillers.right.gaps.every(({ value: gap }) => !less(gap, b))).toBe(true);
        expect(isNegative(fillers.spare) || !less(fillers.spare, l('1/32'))).toBe(false);
      }),
      { numRuns: runs(100) },
    );
  });

  test('a strip less what comes off fills its gap, and something comes off everywhere', () => {
    fc.assert(
      fc.property(rooms, between(10, 60), ([apart, left, right, a], width) => {
        const found = value(plumbWidth({ apart, left, right }));
        const fillers = fillersFor(found, { width, allow: { left: a, right: l('0') } });
        for (const side of [fillers.left, fillers.right])
          for (const { value: off, at, plane } of side.off) {
            const gap = side.gaps.find((x) => equals(x.at, at) && x.plane === plane);
            expect(gap && equals(subtract(side.strip ?? l('0'), off), gap.value)).toBe(true);
            expect(isPositive(off) && !less(off, l('1/8'))).toBe(true);
          }
        const binds = [fillers.left, fillers.right].flatMap((side) =>
          side.warnings.flatMap((x) => (x.code === 'binds' ? [x] : [])),
        );
        for (const { by } of binds) expect(isPositive(by)).toBe(true);
        // a case goes in where its room, taken off at the left, is enough
        expect(binds.some((x) => x.spot.plane)).toBe(less(found.width, add(a, width)));
      }),
      { numRuns: runs(100) },
    );
  });

  test('a strip is ripped no narrower than 3/8: under it it breaks off', () => {
    // 1/8 + 1/8 = 1/4, up to 3/8; what comes off is the more
    const { left } = fillersFor(straight, { width: l('40'), allow: { left: l('1/8'), right: l('0') } });
    expect([w(left.strip), figures(left.off)]).toEqual(['3/8', ['1/4']]);
    expect(spelled(left.width)).toEqual({ value: '3/8', terms: [{ what: 'least-strip', value: '3/8' }] });
  });

  test('a strip goes up to the mark, and what comes off is reckoned from the mark', () => {
    const at = { width: l('40'), allow: { left: l('33/64'), right: l('0') }, grain: l('1/32') };
    // 33/64 + 8/64 = 41/64, at the tape 21/32 = 42/64; off it 42/64 - 33/64
    const { left } = fillersFor(straight, at);
    expect([w(left.strip), w(left.width?.value), figures(left.off)]).toEqual(['21/32', '41/64', ['9/64']]);
  });

  test('what is read beside the case stands for what the lines make it there', () => {
    const read = { left: row('5/8') };
    const { left } = fillersFor(straight, { width: l('40'), allow: { left: l('1/2'), right: l('0') }, read });
    // 5/8 + 1/8 = 3/4; off at the one place 1/8
    expect([w(left.strip), figures(left.off), figures(left.gaps)]).toEqual(['3/4', ['1/8'], ['1/2', '5/8']]);
  });

  test('at any grain a strip covers every gap, is no narrower than 3/8, and less than a mark over what it must be', () => {
    fc.assert(
      fc.property(rooms, between(10, 60), offsets, ([apart, left, right, a], width, more) => {
        const found = value(plumbWidth({ apart, left, right }));
        const grain = l('1/16');
        const read = { left: more.filter(({ plane }) => plane === 'front'), right: [] };
        const fillers = fillersFor(found, { width, allow: { left: a, right: l('0') }, grain, read });
        for (const { strip, width: exact, gaps } of [fillers.left, fillers.right]) {
          if (!strip || !exact) continue;
          expect(gaps.some(({ value: gap, plane }) => plane === 'front' && less(strip, gap))).toBe(false);
          expect(less(strip, l('3/8')) || less(strip, exact.value)).toBe(false);
          expect(less(subtract(strip, exact.value), grain)).toBe(true);
        }
      }),
      { numRuns: runs(100) },
    );
  });
});
