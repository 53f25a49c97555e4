import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { OneD } from '../../../../src/trade/sheets/one-d/kinds';

type Row = {
  readonly name: string;
  readonly capacity: number;
  readonly kerf?: number;
  readonly items: readonly { readonly length: number; readonly count: number }[];
  readonly optimum_bins: number;
};

export type Instance = { readonly name: string; readonly problem: OneD; readonly optimum: number };

/** The stick instances of a folder, its files named `1d-…`; the kerf goes onto each piece and onto the stick. */
export const instancesIn = (folder: string): readonly Instance[] =>
  readdirSync(folder)
    .filter((f) => f.startsWith('1d-'))
    .flatMap((f): readonly Row[] => JSON.parse(readFileSync(path.join(folder, f), 'utf8')).instances)
    .map(({ name, capacity, kerf = 0, items, optimum_bins }) => ({
      name,
      optimum: optimum_bins,
      problem: {
        capacity: capacity + kerf,
        items: items.map(({ length, count }) => ({ size: length + kerf, count })),
      },
    }));
