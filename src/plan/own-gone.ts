import type { Job } from '../job/job';
import { ownNameIn } from '../job/own-names';
import type { Board } from '../trade/grooves/board';
import { ownOf } from '../trade/machines/own-machine';
import type { Shop } from '../trade/machines/shop';
import { jointFieldOf } from '../trade/setups/joint-machine';
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

/** The machine the grooves of a board were put on, where the shop lacks it; nothing before its machines are read. */
export function goneOf({ by }: Pick<Board, 'by'>, job: Job, shop: Shop): OwnGone | undefined {
  if (!by || !('own' in shop) || ownOf(shop, by)) return undefined;
  return { id: by, name: ownNameIn(job, by) };
}

function putOn(op: Operation, { parts, boards }: Job): string | undefined {
  const { what, part, groove } = op;
  if (what === 'groove') return boards.find(({ id }) => id === groove?.board)?.by ?? parts[part]?.by;
  const { ripOn, ripBy, lengthOn, lengthBy, edgeBy, alongBy, shoulderBy, boreBy, slotBy } = parts[part] ?? {};
  if (what === 'rip') return ripOn && ripBy;
  if (what === 'length') return lengthOn && lengthBy;
  const field = jointFieldOf(op);
  const by = field && { edgeBy, alongBy: alongBy ?? edgeBy, shoulderBy, boreBy, slotBy }[field];
  // a machine of every shop is never gone
  return by === 'usual' || by === 'sliding' ? undefined : by;
}
