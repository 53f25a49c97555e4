import { describe, expect, test } from 'vitest';
import { ratio } from '../../../src/length/length';
import * as words from '../../../src/screens/sheets/words';
import { l } from '../../length/write-figures';
import { at, opened } from '../../plan/laid-sample';

const { found } = at(opened.entries);
const [piece] = [...found.pieces.values()];
if (!piece) throw new Error('a piece is wanted');
const named = (...names: readonly string[]) =>
  names.map((named) => ({ ...piece, name: { of: { role: 'board', named } } as const }));

describe('how many of a thing', () => {
  test.each([
    [words.pieceCount(1), '1 piece'],
    [words.pieceCount(3), '3 pieces'],
    [words.unitOf('stick', 1), '1 stick'],
    [words.unitOf('sheet', 2), '2 sheets'],
    [words.cutsDone(0, 1), '1 cut'],
    [words.cutsDone(0, 4), '4 cuts'],
    [words.cutsDone(2, 4), '2 of 4'],
    [words.cutsDone(4, 4), 'all cut'],
    [words.unwanted(1), '1 piece on the plan is no longer needed.'],
    [words.rough(1), 'one, rough'],
    [words.rough(2), '2 of them, rough'],
  ])('%s is “%s”', (says, expected) => expect(says).toBe(expected));
});

describe('names in a row', () => {
  test.each([
    [[], ''],
    [['a'], 'a'],
    [['a', 'b'], 'a and b'],
    [['a', 'b', 'c', 'd', 'e'], 'a, b, c and 2 more'],
  ])('%j', (names, says) => expect(words.listed(names)).toBe(says));
});

describe('a piece laid at another size than it is wanted', () => {
  const rough = {
    ...piece,
    name: { of: { role: 'board', named: 'Shelf' } } as const,
    long: l('30'),
    wide: l('12'),
  };
  const misfit = { sheet: 's', piece: rough, laid: { long: l('29'), wide: l('12') } };

  test.each([
    ['still on its sheet: the rest is laid out anew', false, false, 'now needs 30 × 12: lay out the rest.'],
    ['cut out and larger than finished: it is said alone', true, false, 'now needs 30 × 12.'],
    ['cut out and too small for its finished size: it is spoiled', true, true, 'spoil it and cut another.'],
  ])('%s', (_, out, short, says) => {
    const text = words.misfit({ ...misfit, short }, out, '1/32');
    expect(text).toMatch(/^Shelf is laid out at 29 × 12, /);
    expect(text).toContain(says);
  });
});

test('pieces without a sheet are named once each and counted', () => {
  expect(words.noSheetSaid(named('Shelf', 'Shelf', 'Rail'))).toBe(
    'No sheet chosen for 3 pieces: Shelf and Rail.',
  );
});

describe('a search', () => {
  test.each([
    [true, true, 'Looking for fewer settings'],
    [true, false, 'Still looking.'],
    [false, false, 'may be a better one'],
  ])('running %s, proved %s', (running, proved, says) =>
    expect(words.searchState(running, proved)).toContain(says),
  );

  test('that is over and proved says no more', () => expect(words.searchState(false, true)).toBe(''));
});

describe('which sheet a piece must come out of', () => {
  test.each([
    [undefined, undefined, 'on any sheet'],
    ['mates', undefined, 'on one sheet with its mates'],
    ['mates', 'B', 'on one sheet with all of B'],
    [undefined, 'anywhere', 'on any sheet'],
  ])('together with %s, sharing %s', (together, share, says) =>
    expect(words.shareWords({ together }, share)).toBe(says),
  );
});

test('a cut too heavy for one says what its halves weigh', () => {
  expect(words.heavy(ratio(80n), [ratio(50n), ratio(30n)])).toBe(
    'About 80 lb: two people, or cut it where it lies. Then 50 and 30 lb.',
  );
});
