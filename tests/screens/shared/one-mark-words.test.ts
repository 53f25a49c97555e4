import { expect, test } from 'vitest';
import * as words from '../../../src/screens/shared/one-mark-words';

const trays = { names: ['Tray'], mates: ['Bottom', 'Top', 'Partition'], way: 'width' } as const;

test('what is equal to what is named, and what is to be said of it', () => {
  expect(words.question(trays, 'asked')).toBe(
    'Tray: as wide as Bottom, Top and Partition, but of other stock or grain. One mark for all, or each its own? Until you say, they share one.',
  );
  expect(words.question({ ...trays, mates: ['Rail'], way: 'length' }, 'asked')).toMatch(
    /^Tray: as long as Rail, but/,
  );
});

test('once it is said it is no question any more', () => {
  expect(words.question(trays, 'together')).toMatch(/They share one mark\.$/);
  expect(words.question(trays, 'apart')).toMatch(/Each has its own mark\.$/);
  expect(words.act(['Tray', 'Back'], 'apart')).toBe('Each its own: Tray and Back');
});
