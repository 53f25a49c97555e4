import { describe, expect, test } from 'vitest';
import { ratio } from '../../../src/length/length';
import { goneText } from '../../../src/screens/buy/gone-words';
import * as words from '../../../src/screens/buy/words';
import type { SheetNeed } from '../../../src/trade/buying/need';
import { l } from '../../length/write-figures';

describe('the head of the list', () => {
  test('counts what is got; a list without lines counts nothing', () => {
    expect(words.gotOf(0, 0)).toBe('');
    expect(words.gotOf(1, 4)).toBe('1 of 4 got');
  });

  test('with no line open all is got, or there was nothing', () => {
    expect(words.noneOpen(3)).toBe('Everything on the list is bought.');
    expect(words.noneOpen(0)).toBe('Nothing here to buy.');
  });
});

describe('one of a thing', () => {
  const need: SheetNeed = {
    ...{ stock: 's', name: 'Birch', kind: 'sheet', long: l('96'), wide: l('48'), have: 0 },
    ...{ count: 1, how: 'laid', pieces: 1 },
  };
  const why = (over: Partial<SheetNeed>) => words.whyText({ code: 'layout', need: { ...need, ...over } });

  test('a piece comes, pieces come', () => {
    expect(why({})).toMatch(/^1 piece comes out of 1 sheet as laid out/);
    expect(why({ pieces: 6, count: 2 })).toMatch(/^6 pieces come out of 2 sheets as laid out/);
    expect(why({ kind: 'stick', how: 'least', pieces: 1, count: 2 })).toBe(
      '1 piece not laid out yet: 2 sticks at least.',
    );
  });

  test('of no stock nothing is counted for it, or for them', () => {
    const not = (pieces: number) =>
      words.notText({ code: 'no-stock', pieces, names: [{ role: 'board', named: 'Side' }] });
    expect(not(1)).toBe('1 piece of no stock (Side): nothing is counted for it.');
    expect(not(2)).toBe('2 pieces of no stock (Side): nothing is counted for them.');
  });

  test('a pair for a drawer, pairs for more', () => {
    const not = (drawers: number) =>
      words.notText({ code: 'slides-not-said', name: 'Shell drawers', drawers });
    expect(not(1)).toContain('1 pair, if they run on slides.');
    expect(not(5)).toContain('5 pairs, if they run on slides.');
  });
});

test('what was got and is wanted no more keeps its number and its unit', () => {
  const gone = (n: bigint) => goneText({ op: 'buy/sheets/birch', ticked: ratio(n) }, () => 'Birch');
  expect(gone(1n)).toBe('1 sheet, Birch: nothing in the job asks for it now.');
  expect(gone(2n)).toBe('2 sheets, Birch: nothing in the job asks for it now.');
});
