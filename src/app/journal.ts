import type { Journal, JournalAsked, JournalTold, StartAsked } from '../store/journal/journal';

/**
 * An answer that takes longer is none: a phone that sleeps may never give it. The whole of a long log takes its time,
 * but a start that waits for it is given up after 36 s. Milliseconds.
 */
const patience = { append: 5000, summary: 60_000, rows: 30_000, starting: 2000, stood: 2000 };

/** One that gave no answer in time last time is not waited for so long again: a tap stands on it. Milliseconds. */
const shortly = 1000;

/** The second copy, kept by a worker; undefined where the browser has no file system of its own for it. */
export function openJournal(): Journal | undefined {
  if (!('storage' in navigator) || !navigator.storage.getDirectory || !('Worker' in self)) return undefined;
  const worker = workerNow();
  if (!worker) return undefined;
  const ask = askedOf(worker);
  return {
    append: async (rows) => {
      const told = await ask({ what: 'append', rows });
      return told !== undefined && told.error === undefined;
    },
    summary: async () => (await ask({ what: 'summary' }))?.summary,
    rows: async () => (await ask({ what: 'rows' }))?.rows,
    starting: async (at) => (await ask({ what: 'starting', at }))?.seen,
    stood: () => void ask({ what: 'stood' }),
    close: () => worker.terminate(),
  };
}

type Question = Omit<JournalAsked, 'no'> | Omit<StartAsked, 'no'>;

/** Asks the worker; undefined when it is broken, or gives no answer in time. */
function askedOf(worker: Worker): (asked: Question) => Promise<JournalTold | undefined> {
  const waiting = new Map<number, (told: JournalTold | undefined) => void>();
  let no = 0;
  let broken = false;
  let silent = false;
  worker.onmessage = ({ data }: MessageEvent<JournalTold>) => {
    silent = false;
    waiting.get(data.no)?.(data);
  };
  worker.onerror = () => {
    broken = true;
    for (const settle of waiting.values()) settle(undefined);
  };
  return (asked) => {
    no += 1;
    const own = no;
    if (broken) return Promise.resolve(undefined);
    return new Promise((resolve) => {
      const settle = (told: JournalTold | undefined) => {
        clearTimeout(late);
        waiting.delete(own);
        resolve(told);
      };
      const giveUp = () => {
        silent = true;
        settle(undefined);
      };
      const wait = silent && asked.what === 'append' ? shortly : patience[asked.what];
      const late = setTimeout(giveUp, wait);
      waiting.set(own, settle);
      worker.postMessage({ no: own, ...asked } satisfies JournalAsked | StartAsked);
    });
  };
}

/** A browser may have workers and refuse this one. */
function workerNow(): Worker | undefined {
  try {
    return new Worker(new URL('../workers/journal.ts', import.meta.url), { type: 'module', name: 'journal' });
  } catch {
    return undefined;
  }
}
