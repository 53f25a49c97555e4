import { describe, expect, test } from 'vitest';
import { ratio } from '../../../src/length/length';
import { type BuyingFor, buyingOf } from '../../../src/trade/buying/buying';
import type { BuyingStock } from '../../../src/trade/buying/solid';
import { l } from '../grooves/sample';
import { n, need, oak, part, stick, twoFronts } from './sample';

const bare: BuyingFor = { needs: [], stocks: [], parts: [], banks: [], screws: [] };
const of = (over: Partial<BuyingFor>) => buyingOf({ ...bare, ...over });
const lines = (over: Partial<BuyingFor>) => of(over).lines.map((x) => [x.id, n(x.amount)]);
const ply: BuyingStock = { id: 'a', name: 'Sheet A', kind: 'sheet', thickness: l('23/32'), measured: true };
const board = part({ long: '96', wide: '6' });

describe('buyingOf', () => {
  test('a job that asks for nothing buys nothing, and leaves nothing unsaid', () => {
    expect(buyingOf(bare)).toEqual({ lines: [], not: [] });
  });

  test('lines stand by group, sheets first', () => {
    const all = lines({
      needs: [stick({ stock: 'ash', name: 'Ash', count: 1 }), need({ count: 2 })],
      stocks: [{ ...oak, rough: l('1') }],
      parts: [board],
      banks: [
        {
          name: 'Drawers',
          fronts: twoFronts('17', '20', { fromBlank: true, band: l('1/16') }),
          thick: l('23/32'),
          slideLong: l('16'),
        },
      ],
      screws: [{ bank: 'Drawers', long: l('1'), pieces: 2, each: 4 }],
    });
    expect(all).toEqual([
      ['sheets/a', '2'],
      ['sheets/a~tests', '1'],
      ['sticks/ash', '1'],
      ['solid/oak', '4 4/5'],
      ['edging/1~16x23~32', '10'],
      ['slides/16', '2'],
      ['screws/1', '50'],
    ]);
  });

  test('wood bought in sticks is not bought by the board foot as well; its board feet stand beside it', () => {
    const found = of({ needs: [stick()], stocks: [{ ...oak, rough: l('1') }], parts: [board] });
    expect(found.lines.map((x) => x.id)).toEqual(['sticks/oak']);
    const why = found.lines[0]?.why;
    expect(why?.code === 'layout' && n(why.solid?.buy)).toBe('4 4/5');
  });

  test('a waste of the caller’s own is used, and none is none', () => {
    const stocks = [{ ...oak, rough: l('1') }];
    expect(lines({ stocks, parts: [board], waste: ratio(3n, 20n) })).toEqual([['solid/oak', '4 3/5']]);
    expect(lines({ stocks, parts: [board], waste: ratio(0n) })).toEqual([['solid/oak', '4']]);
  });

  test('sheet stuff is never bought by the board foot; with no layout it is named as not counted', () => {
    const parts = [part({ long: '64 1/4', wide: '17 1/2', stuff: 'a', copies: 2 })];
    const found = of({ stocks: [ply], parts });
    expect(found.lines).toEqual([]);
    expect(found.not).toEqual([{ code: 'not-laid-out', name: 'Sheet A', pieces: 2 }]);
    expect(of({ needs: [need()], stocks: [ply], parts }).not).toEqual([]);
  });

  test('parts of no stock, and of one that is gone, are named as not counted', () => {
    const parts = [
      part({
        long: '34',
        wide: '11',
        stuff: undefined,
        copies: 2,
        name: { role: 'board', named: 'Shell case' },
      }),
      board,
    ];
    expect(of({ parts }).not).toEqual([
      {
        code: 'no-stock',
        pieces: 3,
        names: [
          { role: 'board', named: 'Shell case' },
          { role: 'board', named: 'Piece' },
        ],
      },
    ]);
  });

  test('a bank that does not work out, or says no slides, is named as not counted', () => {
    expect(of({ banks: [{ name: 'Low', slideLong: l('16') }] })).toEqual({
      lines: [],
      not: [{ code: 'bank-not-worked', name: 'Low' }],
    });
    expect(of({ banks: [{ name: 'Low', fronts: twoFronts('17', '20') }] }).not).toEqual([
      { code: 'slides-not-said', name: 'Low', drawers: 2 },
    ]);
  });

  test('a changed count keeps the id of its line', () => {
    const id = (count: number) => lines({ needs: [need({ count })] })[0]?.[0];
    expect(id(2)).toBe(id(3));
  });
});
