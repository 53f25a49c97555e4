import { describe, expect, test } from 'vitest';
import { add, type Length } from '../../../src/length/length';
import { standingOf } from '../../../src/trade/sheets/standing';
import { cut, kerf, left, n, piece, sheet, strip } from './cutting';

describe('a plan against what is wanted now', () => {
  const planned = { id: 's', kerf, ...sheet };
  const all = ['a', 'b', 'c', 'd'].map((id) => piece(id, n(40), n(17, 3, 4)));

  test('holds while nothing has changed', () => {
    expect(standingOf({ pieces: all, sheets: [planned], cut: () => false })).toEqual({
      missing: [],
      stale: [],
      misfits: [],
      twice: [],
    });
  });

  test('names what two plans that met lay twice', () => {
    const other = { ...planned, id: 't', tree: cut('rip', n(17, 3, 4), strip('a', 'x'), left) };
    expect(
      standingOf({ pieces: all, sheets: [planned, other], cut: () => false }).twice.map((p) => p.id),
    ).toEqual(['a/1']);
  });

  test('names a piece on no sheet unless it is cut, one nobody wants, and one that has grown', () => {
    const more = [...all.slice(1), piece('e', n(10), n(10))];
    const found = standingOf({ pieces: more, sheets: [planned], cut: () => false });
    expect([found.missing.map((p) => p.id), found.stale.map((s) => s.piece)]).toEqual([['e/1'], ['a/1']]);
    expect(standingOf({ pieces: more, sheets: [planned], cut: (id) => id === 'e/1' }).missing).toEqual([]);
    // laid with 1/4 over: 1/8 more leaves it 1/8, 7/32 more only 1/32, less than a final cut takes
    const misfits = (more: Length) => {
      const grown = [piece('a', add(n(40), more), n(17, 3, 4)), ...all.slice(1)];
      return standingOf({ pieces: grown, sheets: [planned], cut: () => false }).misfits;
    };
    expect(misfits(n(0, 1, 8))).toEqual([]);
    expect(misfits(n(0, 3, 16))).toEqual([]);
    const [misfit] = misfits(n(0, 7, 32));
    expect([misfit?.piece.id, misfit?.short]).toEqual(['a/1', false]);
    const far = [piece('a', n(41), n(17, 3, 4)), ...all.slice(1)];
    expect(standingOf({ pieces: far, sheets: [planned], cut: () => false }).misfits[0]?.short).toBe(true);
  });
});
