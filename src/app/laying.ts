import { type Signal, signal } from '@preact/signals';
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

/** Layouts being looked for, by stock: one worker each, ended to stop it. What it had found stays. */
export function makeLaying(): LayingBench {
  const all = signal<ReadonlyMap<string, Laying>>(new Map());
  const { start, end, endAll } = searchesInto(all);
  return {
    all,
    start: (id, problem) => start(id, problem),
    goOn: (id) => {
      const now = all.value.get(id);
      if (now && now.state !== 'running') start(id, now.problem, now);
    },
    stop: (id) => end(id, 'stopped'),
    letGo: (id) => {
      end(id, 'stopped');
      const rest = new Map(all.value);
      rest.delete(id);
      all.value = rest;
    },
    clear: () => {
      endAll();
      all.value = new Map();
    },
    refit,
  };
}

type Searches = {
  /** Looks for a layout of a stock, in place of the search that runs; `from` is one that was stopped. */
  readonly start: (id: string, problem: LayProblem, from?: Laying) => void;
  readonly end: (id: string, state: Laying['state']) => void;
  readonly endAll: () => void;
};

/** The workers that search, one a stock; what they find is put into `all`. */
function searchesInto(all: Signal<ReadonlyMap<string, Laying>>): Searches {
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

  function endAll(): void {
    for (const worker of workers.values()) worker.terminate();
    workers.clear();
  }
  return { start, end, endAll };
}

/** One short search in a worker of its own, ended by its answer. */
const refit = (problem: LayProblem): Promise<Refit> =>
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
