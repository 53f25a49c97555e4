import type { Entry } from '../job/entry';
import { readEntry } from '../job/rows';
import { type Pack, rowsIn } from './pack';

/** A row that cannot be read: an entry, or a whole pack. */
export type Bad = { readonly row: unknown; readonly why: string };

/** The entries of a pack, and what in it cannot be read: rows, or the pack as a whole. */
export function readPack(pack: Pack): { readonly good: readonly Entry[]; readonly bad: readonly Bad[] } {
  const rows = rowsIn(pack);
  return rows ? readRows(rows) : { good: [], bad: [{ row: pack, why: 'packed entries cannot be read' }] };
}

export function readRows(rows: readonly unknown[]): {
  readonly good: readonly Entry[];
  readonly bad: readonly Bad[];
} {
  const good: Entry[] = [];
  const bad: Bad[] = [];
  for (const row of rows) {
    const read = readEntry(row);
    if ('entry' in read) good.push(read.entry);
    else bad.push({ row, why: read.why });
  }
  return { good, bad };
}
