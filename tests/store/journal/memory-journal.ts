import { findJournal, tidied } from '../../../src/store/journal/files';
import type { Journal, JournalAsked, JournalTold } from '../../../src/store/journal/journal';
import { open } from '../../../src/store/journal/serve';
import type { MemoryFolder } from './memory-folder';

/** The journal over files in memory, as the worker serves it: whatever the files do, every call settles. */
export function memoryJournal(folder: MemoryFolder): Journal {
  const opened = findJournal(folder).then(async (found) => open(folder, await tidied(folder, found)));
  opened.catch(() => undefined);
  const ask = async (asked: Omit<JournalAsked, 'no'>): Promise<Omit<JournalTold, 'no'> | undefined> => {
    try {
      const { serve, due, tidy } = await opened;
      const told = await serve(asked);
      if (due()) await tidy().catch(() => undefined);
      return told;
    } catch {
      return undefined;
    }
  };
  return {
    append: async (rows) => (await ask({ what: 'append', rows })) !== undefined,
    summary: async () => (await ask({ what: 'summary' }))?.summary,
    rows: async () => (await ask({ what: 'rows' }))?.rows,
    starting: async () => undefined,
    stood: () => undefined,
    close: () => undefined,
  };
}
