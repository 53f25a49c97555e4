import { expect, test } from 'vitest';
import * as words from '../../../src/screens/shared/lot-words';
import { said } from '../said';

const blanks = { many: '3', name: 'Geode', tall: '4', long: '6', heavy: '2' };

test('on a shelf a thing says how wide it is as well, and where it stands', () => {
  expect(said(words.shelfLine({ ...blanks, wide: '5', from: '9' }))).toBe(
    '3 Geode, 4 tall, 6 long, 2 lb each, 5 wide, their middle 9 from the left end.',
  );
});

test('where they live and where they go; of several alike, which', () => {
  expect(said(words.moves({ lives: 'a box', goes: 'Drawers: drawer 2', piece: undefined }))).toBe(
    'Now in a box; they go to Drawers: drawer 2.',
  );
  expect(said(words.moves({ lives: 'a box', goes: 'Tray, bay 1', piece: '4' }))).toMatch(
    /to Tray, bay 1 no\. 4\.$/,
  );
});

test('one thing, several, or none not weighed', () => {
  expect([0, 1, 2].map(words.unweighed)).toEqual([
    '',
    ' 1 thing is not weighed.',
    ' 2 things are not weighed.',
  ]);
});
