import { describe, expect, test } from 'vitest';
import { better, leftStep, measuresOf } from '../../../../src/trade/sheets/two-d/measures';
import { narrowed } from '../../../../src/trade/sheets/two-d/narrow';
import type { Tree } from '../../../../src/trade/sheets/two-d/two-d';

const rank = { cost: 2, left: 100, settings: 4, cuts: 9 };

describe('better', () => {
  test.each([
    ['cheaper, though worse in all else', { cost: 1, left: 0, settings: 9, cuts: 99 }, true],
    ['a leftover larger by a whole step', { ...rank, left: 120, settings: 9 }, true],
    ['a leftover larger by less than a step, with more settings', { ...rank, left: 119, settings: 5 }, false],
    ['fewer settings, more cuts', { ...rank, settings: 3, cuts: 20 }, true],
    ['fewer cuts', { ...rank, cuts: 8 }, true],
    ['the same', rank, false],
  ])('%s', (_, other, wanted) => {
    expect(better(other, rank, 20)).toBe(wanted);
    if (wanted) expect(better(rank, other, 20)).toBe(false);
  });

  test('a step is 2 % of the largest sheet', () => {
    const sheets = [
      { w: 10, h: 10, cost: 1 },
      { w: 20, h: 10, cost: 1 },
    ];
    expect(leftStep({ sheets, pieces: [] })).toBe(4);
  });
});

describe('measuresOf', () => {
  test('one size cut off along and across is two settings, cut off twice it is one', () => {
    const left = (w: number, h: number): Tree => ({ w, h, is: 'left' });
    const rip = (h: number, b: Tree): Tree => ({ w: 9, h, is: 'cut', across: true, at: 3, a: left(9, 3), b });
    const end: Tree = { w: 9, h: 3, is: 'cut', across: false, at: 3, a: left(3, 3), b: left(6, 3) };
    expect(measuresOf([{ kind: 0, tree: rip(9, rip(6, end)) }])).toEqual({ left: 27, settings: 2, cuts: 3 });
  });
});

describe('narrowed', () => {
  test('one sheet of the kind gives up the strip, the others stay', () => {
    const kinds = [{ of: 0, w: 10, h: 5, count: 3, cost: 1 }];
    expect(narrowed(kinds, { of: 0, right: false, off: 2 })).toEqual([
      { of: 0, w: 10, h: 3, count: 1, cost: 1 },
      { of: 0, w: 10, h: 5, count: 2, cost: 1 },
    ]);
  });
});
