import type { Job } from '../job/job';
import { ownNameIn } from '../job/own-names';
import { ownOf } from '../trade/machines/own-machine';
import type { Shop } from '../trade/machines/shop';
import type { Operation } from '../trade/setups/operation';

/** A machine of a shop's own that cuts were put on, and this phone's shop has not. */
type OwnGone = { readonly id: string; readonly name: string | undefined };

/**
 * The machines that cuts were put on in this job and the shop lacks: they are cut on the usual one, and what was chosen
 * is kept.
 *
 * @example ownGone(card.operations, job, shop) // [{ id: 'own4', name: 'Old saw' }]
 */
export function ownGone(operations: readonly Operation[], job: Job, shop: Shop): readonly OwnGone[] {
  const ids = new Set(operations.flatMap((op) => putOn(op, job) ?? []));
  return [...ids].filter((id) => !ownOf(shop, id)).map((id) => ({ id, name: ownNameIn(job, id) }));
}

function putOn({ what, part }: Operation, { parts }: Job): string | undefined {
  const { ripOn, ripBy, lengthOn, lengthBy } = parts[part] ?? {};
  if (what === 'rip') return ripOn && ripBy;
  return what === 'length' ? lengthOn && lengthBy : undefined;
}
