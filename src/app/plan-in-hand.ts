import { computed, type ReadonlySignal, signal } from '@preact/signals';
import type { Job } from '../job/job';
import type { Plan } from '../plan/plan';
import type { Shop } from '../trade/machines/shop';

type Planning = Promise<Pick<typeof import('./planning'), 'planOf'>>;

/**
 * Everything worked out from the job in hand. What works it out comes in a file of its own: `planned` ends when it is
 * here, or did not come; then a page that needs it says so.
 */
export function planInHand(
  job: ReadonlySignal<Job | undefined>,
  shop: ReadonlySignal<Shop>,
  planning: Planning,
): { readonly plan: ReadonlySignal<Plan | undefined>; readonly planned: Promise<void> } {
  const planner = signal<Awaited<Planning>['planOf'] | undefined>(undefined);
  const planned = planning.then(
    ({ planOf }) => {
      planner.value = planOf;
    },
    () => undefined,
  );
  return { plan: computed(() => job.value && planner.value?.(job.value, shop.value)), planned };
}
