import type { Folder, Found } from './files';
import type { JournalAsked, JournalTold } from './journal';
import { bytesOf, readLines } from './lines';
import { keptOf, rowsOf, sumOf } from './row';

/** A journal as one page has it open. */
export type Open = { readonly folder: Folder; readonly found: Found };

/** Does what a page asks of the journal; what other pages wrote since is in every answer. Throws what the folder throws. */
export async function serve(
  { folder, found }: Open,
  { what, rows = [] }: Omit<JournalAsked, 'no'>,
): Promise<Omit<JournalTold, 'no'>> {
  if (what === 'append') {
    await folder.append(found.current, bytesOf(rows));
    return {};
  }
  // nothing is begun anew while a page has the journal open: what came since stands at the end
  const since = readLines(await folder.read(found.current, found.bytes));
  const kept = keptOf([...found.rows, ...since.rows]);
  if (what === 'rows') return { rows: rowsOf(kept) };
  const { log, settings, shop } = kept;
  const sum = sumOf(log.keys());
  return { summary: { sum, settings, shop } };
}
