import { blockedBy, type Card } from '../trade/setups/checklist';
import type { Operation } from '../trade/setups/operation';
import type { Checklist } from './checklist';

/**
 * What a whole page ticks of a setup: all that is open and may be done, one thing after the other, and what is held
 * back all the same. That the cutter is set is taken as said: it is ticked with it.
 */
export function allOfCard(
  { plan, doing }: Checklist,
  { operations }: Card,
): { readonly ops: readonly Operation[]; readonly held: readonly Operation[] } {
  const taken = new Set<string>();
  const then = { ...doing, done: (op: string) => taken.has(op) || doing.done(op) };
  let open = operations.filter((op) => !doing.done(op.id));
  const ops: Operation[] = [];
  for (;;) {
    const next = open.find((op) => blockedBy(op, plan.byId, then).length === 0);
    if (!next) break;
    taken.add(next.id);
    ops.push(next);
    open = open.filter((op) => op !== next);
  }
  return { ops, held: open };
}
