import type { Signal } from '@preact/signals';
import type { Laying, LayingBench } from '../screens/shared/laying';
import type { Asked, Told } from '../trade/sheets/asked';
import type { LayProblem } from '../trade/sheets/lay-problem';
import type { Refit } from '../trade/sheets/solve';

/**
 * How long it looks at most, in units of about a millisecond of a desktop core: half a minute there, minutes on a
 * phone.
 */
const effort = 30_000;

const newWorker = (): Worker =>
  new Worker(new URL('../workers/solver.ts', import.meta.url), { type: 'module', name: 'solver' });

type Searches = Omit<LayingBench, 'all' | 'refit'>;

/** The workers that search, one a stock, ended to stop it; what they find is put into `all`, and stays. */
export function searchesInto(all: Signal<ReadonlyMap<string, Laying>>): Searches {
  const workers = new Map<string, Worker>();

  const put = (id: string, patch: Partial<Laying>): void => {
    const now = all.value.get(id);
    if (now) all.value = new Map(all.value).set(id, { ...now, ...patch });
  };

  function end(id: string, state: Laying['state']): void {
    workers.get(id)?.terminate();
    workers.delete(id);
    put(id, { state });
  }

  function told(id: string, message: Told): void {
    if (message.is === 'refitted') return;
    if (message.is === 'cannot') {
      put(id, { error: message.error });
      end(id, 'cannot');
      return;
    }
    const best = all.value.get(id)?.best;
    if (!best || message.laid.cost <= best.cost) put(id, { best: message.laid });
    if (message.is === 'done') end(id, 'done');
  }

  /** In place of the search that runs; `from` is one that was stopped. */
  function start(id: string, problem: LayProblem, from?: Laying): void {
    workers.get(id)?.terminate();
    const seed = (from?.seed ?? 0) + 1;
    const best = from?.best ? { best: from.best } : {};
    all.value = new Map(all.value).set(id, { problem, seed, state: 'running', ...best });
    const worker = newWorker();
    workers.set(id, worker);
    worker.onmessage = ({ data }: MessageEvent<Told>) => told(id, data);
    worker.onerror = () => end(id, 'failed');
    worker.postMessage({ what: 'lay', two: problem.two, effort: { seed, effort } } satisfies Asked);
  }

  return {
    start,
    goOn: (id) => {
      const now = all.value.get(id);
      if (now && now.state !== 'running') start(id, now.problem, now);
    },
    stop: (id) => end(id, 'stopped'),
    letGo: (id) => {
      end(id, 'stopped');
      all.value = new Map([...all.value].filter(([own]) => own !== id));
    },
    clear: () => {
      for (const worker of workers.values()) worker.terminate();
      workers.clear();
      all.value = new Map();
    },
  };
}

/** One short search in a worker of its own, ended by its answer. */
export const refit = (problem: LayProblem): Promise<Refit> =>
  new Promise((resolve, reject) => {
    const worker = newWorker();
    worker.onerror = () => reject(new Error('the search failed'));
    worker.onmessage = ({ data }: MessageEvent<Told>) => {
      worker.terminate();
      if (data.is === 'refitted') resolve(data.refit);
      else reject(new Error('not what was asked'));
    };
    worker.postMessage({
      what: 'refit',
      two: problem.two,
      effort: { seed: 1, effort: 60 },
    } satisfies Asked);
  });
