import { expect, test } from 'vitest';
import { drawerId, type NotedPlace, placeCode, placeOfCode } from '../../src/job/place-code';

test('a place is found again by its code; what reads as none is the job', () => {
  const places: readonly NotedPlace[] = [
    { of: 'job' },
    { of: 'room' },
    { of: 'part', id: 'case~left' },
    { of: 'setup', id: 'rip~r35d2~wtrue0edge' },
    { of: 'drawer', id: drawerId('drawers', { column: 1, no: 2 }) },
  ];
  expect(places.map((place) => placeOfCode(placeCode(place)))).toEqual(places);
  expect(['', 'part', 'moon~x', 'part~'].map(placeOfCode).slice(0, 3)).toEqual([
    { of: 'job' },
    { of: 'job' },
    { of: 'job' },
  ]);
});

test('the spellings in old logs stay', () => {
  expect(placeCode({ of: 'drawer', id: drawerId('drawers', { column: 1, no: 2 }) })).toBe(
    'drawer~drawers~c1d2',
  );
  expect(placeCode({ of: 'part', id: 'case~left' })).toBe('part~case~left');
});
