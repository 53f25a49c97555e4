import { describe, expect, test } from 'vitest';
import { cameText, fileText, hereAlready, holds, refused } from '../../../src/screens/job/import-words';

test.each([
  ['chosen', undefined],
  ['opened', 'This file was opened with Knifeline, not chosen here.'],
  ['shared', 'Another app shared this. Take it in only if you sent it here yourself.'],
] as const)('of a file that was %s', (by, says) => expect(cameText(by)).toBe(says));

test('what a file holds, each thing in its number', () => {
  expect(holds({ boards: 1, stocks: 1, ticks: 1, entries: 1 })).toBe('1 board, 1 stock, 1 tick, in 1 entry.');
  expect(holds({ boards: 0, stocks: 2, ticks: 3, entries: 40 })).toBe(
    '0 boards, 2 stocks, 3 ticks, in 40 entries.',
  );
});

describe('a job that is here already', () => {
  test.each([
    [0, 0, '0 of these entries are new.'],
    [1, 0, '1 of these entries is new.'],
    [4, 1, '4 of these entries are new; 1 differs from the ones here, and would be set aside.'],
    [1, 2, '1 of these entries is new; 2 differ from the ones here, and would be set aside.'],
  ])('%i new, %i otherwise', (fresh, differing, says) =>
    expect(hereAlready(fresh, differing)).toBe(`This job is here already. ${says}`),
  );
});

describe('why a file is not taken', () => {
  test('its entries are counted as a person counts, from one', () =>
    expect(fileText({ code: 'bad-entry', at: 0, why: 'no path' })).toBe(
      'Entry 1 of the file is damaged (no path).',
    ));

  test('changes that stand on entries not here: one, or more', () => {
    const lacking = (entries: number) => fileText({ code: 'earlier-missing', entries });
    expect(lacking(1)).toContain('follow 1 earlier entry that never reached this phone');
    expect(lacking(2)).toContain('follow 2 earlier entries that never reached this phone');
  });

  test('a newer version says which one, and that nothing was changed', () =>
    expect(refused(fileText({ code: 'newer-file', version: 9 }))).toBe(
      'The file was written by a newer Knifeline (file version 9). Bring this one up to date first. Nothing was changed.',
    ));
});
