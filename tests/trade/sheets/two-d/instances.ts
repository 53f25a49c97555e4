import { readFileSync } from 'node:fs';
import { laySheets } from '../../../../src/trade/sheets/two-d/lay-sheets';
import type { Laid, TwoD } from '../../../../src/trade/sheets/two-d/two-d';

type Piece = { readonly w: number; readonly h: number; readonly count: number; readonly rotate?: boolean };

/** A sheet instance as its file has it; what the fields mean is said in each file's `values`. */
export type Instance = {
  readonly name: string;
  readonly sheet: { readonly w: number; readonly h: number };
  readonly items: readonly Piece[];
  readonly rotation: boolean;
  /** The fewest sheets known; `evidence` says from where. */
  readonly best_known: number;
  readonly bound: number;
  /** As a source prints it, where one does. */
  readonly published?: number;
  readonly evidence: string;
  readonly kerf?: number;
  readonly trim?: number;
};

export const instancesOf = (file: string): readonly Instance[] =>
  JSON.parse(readFileSync(file, 'utf8')).instances;

/** The kerf goes onto each piece and onto what the trims leave of the sheet. */
export function problemOf({ sheet, items, rotation, kerf = 0, trim = 0 }: Instance): TwoD {
  const all = kerf - 2 * trim;
  return {
    sheets: [{ w: sheet.w + all, h: sheet.h + all, cost: 1 }],
    pieces: items.map(({ w, h, count, rotate = rotation }) => ({
      w: w + kerf,
      h: h + kerf,
      count,
      turn: rotate,
    })),
  };
}

/** The first plan that takes so few sheets, or the best there is. */
export function laid(problem: TwoD, enough: number, effort = 150): Laid {
  const all = laySheets(problem, { seed: 1, effort });
  for (;;) {
    const { done, value } = all.next();
    if (done && !value.ok) throw new Error(value.error.code);
    if (done && value.ok) return value.value;
    if (!done && value && value.cost <= enough) return value;
  }
}
