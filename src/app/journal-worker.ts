/** What keeps the second copy, and when it broke: it may before anybody asks it. */
export type JournalWorker = { readonly worker: Worker; readonly broke: Promise<unknown> };

/** Starts it; undefined where the browser has no file system of its own for it. */
export function journalWorker(): JournalWorker | undefined {
  if (!('storage' in navigator) || !navigator.storage.getDirectory || !('Worker' in self)) return undefined;
  try {
    const worker = new Worker(new URL('../workers/journal.ts', import.meta.url), {
      type: 'module',
      name: 'journal',
    });
    const broke = new Promise((done) => {
      worker.onerror = done;
    });
    return { worker, broke };
  } catch {
    return undefined; // a browser may have workers and refuse this one
  }
}
