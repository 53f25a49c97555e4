import { signal } from '@preact/signals';
import type { Laying, LayingBench } from '../screens/shared/laying';

/** What searches: it comes in a file of its own, before any screen that asks for a layout. */
type Searching = Promise<Pick<typeof import('./searches'), 'refit' | 'searchesInto'>>;

/** Layouts being looked for, by stock. */
export function makeLaying(searching: Searching): LayingBench {
  const all = signal<ReadonlyMap<string, Laying>>(new Map());
  const searches = searching.then(({ searchesInto }) => searchesInto(all));
  searches.catch(() => undefined); // did not come: the page says so
  return {
    all,
    start: async (id, problem) => (await searches).start(id, problem),
    goOn: async (id) => (await searches).goOn(id),
    stop: async (id) => (await searches).stop(id),
    letGo: async (id) => (await searches).letGo(id),
    // nothing is looked for before it is here
    clear: () => void searches.then(({ clear }) => clear(), nothing),
    refit: async (problem) => (await searching).refit(problem),
  };
}

const nothing = (): void => undefined;
