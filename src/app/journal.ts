import type { Journal, JournalAsked, JournalTold, StartAsked } from '../store/journal/journal';
import type { JournalWorker } from './journal-worker';

/**
 * An answer that takes longer is none: a phone that sleeps may never give it. The whole of a long log takes its time,
 * but a start that waits for it is given up after 36 s. Milliseconds.
 */
const patience = { append: 5000, summary: 60_000, rows: 30_000, starting: 2000, stood: 2000 };

/** One that gave no answer in time last time is not waited for so long again: a tap stands on it. Milliseconds. */
const shortly = 1000;

/** The second copy, kept by a worker (`journal-worker.ts`); undefined where there is none. */
export function openJournal(by: JournalWorker | undefined): Journal | undefined {
  if (!by) return undefined;
  const { worker } = by;
  const ask = askedOf(by);
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
function askedOf({ worker, broke }: JournalWorker): (asked: Question) => Promise<JournalTold | undefined> {
  const waiting = new Map<number, (told: JournalTold | undefined) => void>();
  let no = 0;
  let broken = false;
  let silent = false;
  worker.onmessage = ({ data }: MessageEvent<JournalTold>) => {
    silent = false;
    waiting.get(data.no)?.(data);
  };
  void broke.then(() => {
    broken = true;
    for (const settle of waiting.values()) settle(undefined);
  });
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
