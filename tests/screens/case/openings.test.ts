import { describe, expect, test } from 'vitest';
import { writeLength } from '../../../src/length/write';
import { placeNames } from '../../../src/screens/case/built-words';
import { openingsOf } from '../../../src/screens/case/openings';
import { framedCase, plainCase, work } from '../../trade/carcass/sample-case';

const rows = (c: typeof plainCase) =>
  openingsOf(work(c)).map((o) => `${o.key}: ${o.name} ${o.planned ? writeLength(o.planned) : 'not planned'}`);

describe('what is measured of a case that is dry-fitted', () => {
  test('each bay, the height, the back and the frame before each bay; the keys readings are kept under', () => {
    expect(openingsOf(work(framedCase)).map(({ key, name }) => [key, name])).toEqual([
      ['bay1', 'Bay 1'],
      ['bay2', 'Bay 2'],
      ['clear', 'Clear height'],
      ['backw', 'Back, rabbet to rabbet'],
      ['backh', 'Back, height to cover'],
      ['frame1w', 'Frame opening, bay 1'],
      ['frame2w', 'Frame opening, bay 2'],
    ]);
  });

  test('each bay with shelves on pins has the four pins of one, which nothing is planned for', () => {
    const pins = { id: 'p', kind: 'loose', bay: 2, heldBy: 'lines' } as const;
    const found = rows({
      ...plainCase,
      inside: [...plainCase.inside, pins, { id: 'q', kind: 'loose', bay: 1 }],
    });
    expect(found.filter((row) => row.startsWith('pins'))).toEqual([
      'pins2: Four pins of a shelf, bay 2 not planned',
    ]);
  });

  test('one bay has no number', () => {
    const { inside: _, ...bare } = plainCase;
    expect(rows({ ...bare, inside: [], partitions: 0, hasBack: false })[0]).toMatch(/^bay1: Clear width /);
  });

  test('from rabbet to rabbet is the outside less what stands of each side: 38 3/8 - 2 × (23/32 - 11/32)', () =>
    expect(rows(plainCase)).toContain('backw: Back, rabbet to rabbet 37 5/8'));
});

test('a width is read low and high, a height left and right', () => {
  expect(placeNames(true).frontA).toBe('front, low');
  expect(placeNames(false).frontA).toBe('front, left');
});
