import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { equals, inches, type Length, times, zero } from '../../../src/length/length';
import { type LaidStick, stickUse, useOf } from '../../../src/trade/sheets/stick-use';
import type { SheetStock } from '../../../src/trade/sheets/stock';
import type { Branch } from '../../../src/trade/sheets/tree';
import { l, w } from '../../length/write-figures';

const kerf = l('1/8');

describe('stickUse', () => {
  test('parts and the kerfs between them: three of them have two', () => {
    expect(w(stickUse([l('35 3/8'), l('35 3/8'), l('17')], kerf))).toBe('88');
  });

  test('Example 4 of sheets: the frame’s three sticks of 96 are used up to 95 5/8, 95 5/8 and 90 3/4', () => {
    const pair = stickUse([l('60 1/8'), l('35 3/8')], kerf);
    const three = stickUse([l('56 1/2'), l('17'), l('17')], kerf);
    expect([pair, pair, three].map(w)).toEqual(['95 5/8', '95 5/8', '90 3/4']);
  });

  test('one part has no kerf, none use nothing', () => {
    expect(stickUse([l('56 1/2')], kerf)).toEqual(l('56 1/2'));
    expect(stickUse([], kerf)).toEqual(zero);
  });

  test('equal parts and their kerfs make equal pitches, the last without its kerf', () => {
    const whole = fc.integer({ min: 1, max: 9999 });
    fc.assert(
      fc.property(whole, fc.integer({ min: 1, max: 40 }), (long, count) => {
        const part = inches(BigInt(long), 64n);
        const used = stickUse(new Array<Length>(count).fill(part), kerf);
        const pitches = times(part.add(kerf) as Length, BigInt(count)).sub(kerf) as Length;
        expect(equals(used, pitches)).toBe(true);
      }),
    );
  });
});

describe('useOf', () => {
  const stock = (own: Partial<SheetStock> = {}): SheetStock => ({
    id: 'f',
    name: 'Frame',
    kind: 'stick',
    long: l('96'),
    wide: l('2'),
    trim: zero,
    grain: 'long',
    have: 0,
    noMore: false,
    bad: [],
    ...own,
  });
  const leaf = (id: string): Branch => ({ is: 'piece', piece: id, turned: false });
  const cut = (at: string, near: Branch, far: Branch): Branch => ({
    is: 'cut',
    way: 'cross',
    at: l(at),
    near,
    far,
  });
  const left: Branch = { is: 'left' };
  const waste: Branch = { is: 'waste' };
  const size = { long: l('96'), wide: l('2') };
  const of = (tree: Branch, own: Partial<LaidStick> = {}) => {
    const found = useOf({ size, tree, kerf, stock: stock(), offcut: false, ...own });
    return found && [w(found.used), w(found.usable)];
  };

  test('of a whole stick', () => {
    expect(of(cut('60 1/8', leaf('a'), cut('35 3/8', leaf('b'), left)))).toEqual(['95 5/8', '96']);
  });

  test('a piece that is the stick uses all of it; nothing cut uses none', () => {
    expect(of(leaf('a'))).toEqual(['96', '96']);
    expect(of(left)).toEqual(['0', '96']);
  });

  test('of what is between the trims', () => {
    const tree = cut('3/8', waste, cut('60', leaf('a'), left));
    expect(of(tree, { stock: stock({ trim: l('1/2') }) })).toEqual(['60', '95']);
  });

  test('each good run by itself: no kerf is counted across a bad place', () => {
    const tree = cut('40', leaf('a'), cut('2 3/4', waste, cut('30', leaf('b'), leaf('c'))));
    expect(of(tree, { stock: stock({ bad: [l('40'), l('43')] }) })).toEqual(['93', '93']);
  });

  test('an offcut has no trims', () => {
    const offcut = { size: { long: l('40'), wide: l('2') }, stock: stock({ trim: l('1/2') }), offcut: true };
    expect(of(cut('17', leaf('a'), cut('17', leaf('b'), left)), offcut)).toEqual(['34 1/8', '40']);
  });

  test('side by side no sum of lengths says it', () => {
    const tree: Branch = {
      is: 'cut',
      way: 'rip',
      at: l('7/8'),
      near: cut('60', leaf('a'), left),
      far: leaf('b'),
    };
    expect(of(tree)).toBeUndefined();
  });
});
