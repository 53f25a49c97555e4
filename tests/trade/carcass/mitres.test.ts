import { describe, expect, test } from 'vitest';
import type { Case } from '../../../src/trade/carcass/case';
import { checkOf } from '../../../src/trade/carcass/check';
import { rightJointsAt } from '../../../src/trade/carcass/meetings';
import { behindMitred, isMitred, mitreProblems, mitresAt } from '../../../src/trade/carcass/mitres';
import { partsOf } from '../../../src/trade/carcass/parts';
import { partOperations } from '../../../src/trade/setups/part-operations';
import { l, w } from '../../length/write-figures';
import { part, plainCase, sheets, work } from './sample-case';

/** EX: 43 5/8 wide in 23/32, mitred at both ends of bottom and top, on the floor, 66 1/2 high. */
const mitred: Case = {
  ...plainCase,
  width: l('43 5/8'),
  height: l('66 1/2'),
  feet: l('0'),
  partitions: 0,
  inside: [],
  bottomJoint: 'mitre',
  topJoint: 'mitre',
};
const long = (c: Case, role: string) => w(part(work(c), role).length.sum.value);

describe('a case mitred all round', () => {
  test('is as long and as high as its parts are to their long points: 43 5/8 and 66 1/2', () => {
    expect(['bottom', 'top', 'left', 'right'].map((role) => long(mitred, role))).toEqual([
      ...['43 5/8', '43 5/8', '66 1/2', '66 1/2'],
    ]);
    expect(checkOf(work(mitred)).filter(({ meets }) => !meets)).toEqual([]);
    expect(checkOf(work(mitred)).map(({ way }) => way)).toContain('side');
  });

  test('has both ends of every part mitred, and nothing else cut at a corner', () => {
    const ends = ['bottom', 'top', 'left'].map((role) => part(work(mitred), role).mitres);
    expect(ends).toEqual([
      ['left', 'right'],
      ['left', 'right'],
      ['bottom', 'top'],
    ]);
    expect(part(work(mitred), 'left').rabbets.map(({ id }) => id)).toEqual(['back']);
  });

  test('its back lies in a rabbet of all four, which meet in the mitres: 11/32 into each of them', () => {
    const rabbet = (role: string) =>
      part(work(mitred), role).rabbets.map((r) => `${w(r.width)} ${w(r.depth)}`);
    expect(['bottom', 'top', 'left'].map(rabbet)).toEqual([['9/32 11/32'], ['9/32 11/32'], ['9/32 11/32']]);
    expect(w(part(work(mitred), 'bottom').width.sum.value)).toBe('17 1/2');
    // clear 66 1/2 − 1 7/16 = 65 1/16, 11/32 into each, less 1/16: 65 11/16; clear 42 3/16 likewise: 42 13/16
    const back = part(work(mitred), 'back');
    expect([w(back.length.sum.value), w(back.width.sum.value)]).toEqual(['65 11/16', '42 13/16']);
    expect(w(behindMitred(work(mitred).sizes, 'top') ?? l('9'))).toBe('3/8');
  });

  test('a groove for the back runs through all four, for they meet in the mitres too', () => {
    const grooved: Case = { ...mitred, backHow: 'groove', backGroove: l('1/4'), backGrooveWide: l('1/4') };
    for (const role of ['bottom', 'top', 'left', 'right'])
      expect(part(work(grooved), role).along?.map(({ from }) => from)).toEqual([undefined]);
    expect(part(work(grooved), 'top').rabbets).toEqual([]);
  });
});

test('only the top mitred: the sides are square below, and the back stands at the bottom as before', () => {
  const c = { ...mitred, bottomJoint: undefined };
  expect([part(work(c), 'left').mitres, part(work(c), 'bottom').mitres]).toEqual([['top'], undefined]);
  // 66 1/2 less the 3/8 left of the top behind it, less 1/16
  expect(long(c, 'back')).toBe('66 1/16');
  expect(isMitred({ ...c, hasTop: false }, 'top')).toBe(false);
  expect(mitresAt({ ...c, hasTop: false }, 'left')).toEqual({});
  expect(rightJointsAt(c, 'top')).toEqual(['mitre']);
});

test('one thickness alone mitres from corner to corner: another is refused by how much', () => {
  const found = partsOf(mitred, { stuff: sheets('11/16'), tape: '1/32' });
  const codes = found.ok ? [] : found.error.map((x) => `${x.code} ${'by' in x && x.by ? w(x.by) : ''}`);
  expect(codes).toEqual(['mitre-unlike 1/32', 'mitre-unlike 1/32']);
  expect(mitreProblems(work(mitred).sizes)).toEqual([]);
});

test('a bottom mitred does not go with feet', () => {
  const found = partsOf({ ...mitred, feet: l('4') }, { stuff: sheets(), tape: '1/32' });
  expect(found.ok ? [] : found.error).toMatchObject([{ code: 'bottom-low', joint: 'mitre' }]);
});

test('cut to length square first, its rabbet next, then mitred at one figure: its length', () => {
  const ops = partOperations(part(work(mitred), 'top'), {}, { shop: {}, tape: '1/32' });
  expect(ops.map(({ what }) => what)).toEqual(['rip', 'length', 'rabbet', 'mitre']);
  const [, , rabbet, last] = ops;
  expect(last?.after).toEqual([rabbet?.id]);
  expect(last && [last.id, w(last.figure), last.which]).toEqual([
    'cut/c1~top/mitre/1',
    '43 5/8',
    { is: 'long-points', ends: ['left', 'right'] },
  ]);
});
