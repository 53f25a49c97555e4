import { expect, test } from 'vitest';
import { withMitres } from '../../../src/screens/case/drawn-mitres';

const piece = { part: 'c~top', x: 0, y: 47, w: 30, h: 1, kind: 'ply' as const };

test('a mitred top is whole at its upper edge, and shorter by its thickness at each end of its lower', () => {
  expect(withMitres(piece, 'top', { mitres: ['left', 'right'] }).outline).toEqual([
    [0, 1],
    [30, 1],
    [29, 0],
    [1, 0],
  ]);
  expect(withMitres(piece, 'bottom', { mitres: ['left', 'right'] }).outline).toEqual([
    [0, 0],
    [30, 0],
    [29, 1],
    [1, 1],
  ]);
  expect(withMitres(piece, 'top', {})).toBe(piece);
});

test('a side mitred at its top alone is whole outside, and square below', () => {
  const side = { ...piece, w: 1, h: 48 };
  expect(withMitres(side, 'left', { mitres: ['top'] }).outline).toEqual([
    [0, 0],
    [0, 48],
    [1, 47],
    [1, 0],
  ]);
  expect(withMitres(side, 'right', { mitres: ['top'] }).outline).toEqual([
    [1, 0],
    [1, 48],
    [0, 47],
    [0, 0],
  ]);
});
