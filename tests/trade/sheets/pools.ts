import { add, inches, type Length } from '../../../src/length/length';
import { laidSheetsOf } from '../../../src/trade/sheets/laid-sheet';
import { layProblemOf } from '../../../src/trade/sheets/lay-problem';
import type { RoughPiece } from '../../../src/trade/sheets/pieces';
import type { Pool } from '../../../src/trade/sheets/pool';
import { solve } from '../../../src/trade/sheets/solve';
import type { SheetStock } from '../../../src/trade/sheets/stock';

export const n = (whole: number, num = 0, den = 1): Length =>
  add(inches(BigInt(whole)), inches(BigInt(num), BigInt(den)));

export const eighth = inches(1n, 8n);

export const sheet = (own: Partial<SheetStock> = {}): SheetStock => ({
  id: 'a',
  name: 'Sheet A',
  kind: 'sheet',
  thickness: n(0, 23, 32),
  long: n(96),
  wide: n(48),
  trim: n(0),
  grain: 'long',
  have: 0,
  noMore: false,
  bad: [],
  ...own,
});

export const piece = (id: string, long: Length, wide: Length, own: Partial<RoughPiece> = {}): RoughPiece => ({
  id: `${id}/1`,
  part: id,
  copy: '1',
  name: { of: { role: 'board', named: id } },
  stuff: 'a',
  thickness: n(0, 23, 32),
  finished: { long, wide },
  long,
  wide,
  lies: 'along',
  ...own,
});

export const pool = (pieces: readonly RoughPiece[], own: Partial<Pool> = {}): Pool => ({
  id: 'a',
  kind: 'sheet',
  stocks: [sheet()],
  lefts: [],
  pieces,
  ...own,
});

export function plan(given: Pool, kerf = eighth, effort = 40) {
  const problem = layProblemOf(given, kerf);
  const search = solve(problem.two, { seed: 1, effort });
  for (;;) {
    const { value, done } = search.next();
    if (!done) continue;
    if (!value.ok) throw new Error(value.error.code);
    return { laid: value.value, problem, sheets: laidSheetsOf(value.value.sheets, problem) };
  }
}
