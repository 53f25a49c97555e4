import { type Folder, type Found, findJournal, isDue, stands, tidied, valueBytes } from './files';
import type { JournalAsked, JournalTold } from './journal';
import { keptOf, rowsOf, sumOf } from './kept-rows';
import { bytesOf, readLines } from './lines';

/** A journal as one page has it open. Everything throws what the folder throws, and is called by one page at a time. */
export type Open = {
  /** Does what the page asks; what other pages wrote since is in every answer. */
  readonly serve: (asked: Omit<JournalAsked, 'no'>) => Promise<Omit<JournalTold, 'no'>>;
  /** Whether so many settings and figures were superseded that the files are worth beginning anew. */
  readonly due: () => boolean;
  /** Begins them anew, with the latest row of each key. */
  readonly tidy: () => Promise<void>;
};

/** @param first the files as they were found */
export function open(folder: Folder, first: Found): Open {
  let found = first;
  let added = 0;

  /** Another page may have begun the files anew. */
  async function now(): Promise<Found> {
    if (!(await stands(folder, found))) found = await findJournal(folder);
    return found;
  }

  return {
    serve: async ({ what, rows = [] }) => {
      const { current, bytes, rows: before } = await now();
      if (what === 'append') {
        await folder.append(current, bytesOf(rows));
        added += valueBytes(rows);
        return {};
      }
      const since = readLines(await folder.read(current, bytes));
      const kept = keptOf([...before, ...since.rows]);
      if (what === 'rows') return { rows: rowsOf(kept) };
      const { log, settings, shop } = kept;
      return { summary: { sum: sumOf(log.keys()), settings, shop } };
    },
    due: () => isDue({ over: added, bytes: found.bytes }),
    tidy: async () => {
      added = 0;
      found = await tidied(folder, await findJournal(folder));
    },
  };
}
