import { computed, signal } from '@preact/signals';
import { makeShelf } from '../../src/app/job-shelf';
import { logInHand } from '../../src/app/log-in-hand';
import { makeOffers } from '../../src/app/offers';
import { valuesInHand } from '../../src/app/values-in-hand';
import { jobOf } from '../../src/job/job';
import { shopTools } from '../../src/job/shop-tools';
import type { Copies } from '../../src/screens/copies';
import type { Route } from '../../src/screens/routes';
import type { Store } from '../../src/store/store';

/** The makers of a bench over a store, and what they did besides: where they went, how often they asked to keep. */
export async function handsOver(store: Store, sample = '') {
  const went: Route[] = [];
  let asked = 0;
  const log = logInHand(store, { setAside: 0, onOther: () => undefined });
  const values = await valuesInHand(store, log.unsaved, Promise.resolve({ shopTools }));
  const around = {
    store,
    log,
    values,
    go: (route: Route) => void went.push(route),
    askToKeep: () => {
      asked += 1;
    },
  };
  const shelf = makeShelf(await store.jobs(), { ...around, acts: import('../../src/app/job-acts') });
  const job = computed(() =>
    log.jobId.value === undefined ? undefined : jobOf(log.jobId.value, log.folded.value.values),
  );
  const offers = makeOffers({
    ...around,
    shelf,
    job,
    copies: signal<Copies | undefined>(undefined),
    looking: import('../../src/app/planning'),
    sample: async () => sample,
  });
  return { log, values, shelf, offers, job, went, asked: () => asked };
}
