import { equals, type Length } from '../../length/length';
import type { Checklist } from '../../plan/checklist';
import type { Card } from '../../trade/setups/checklist';
import { isStep, type Operation } from '../../trade/setups/operation';
import { cutAt } from './piece-words';

/** Names of the stocks a stack is built for: a dado fits its own sheet, whatever it is cut in. */
export const stocksFitted = (list: Checklist, card: Card): readonly string[] => {
  const names = card.operations.flatMap(
    (op) => list.plan.job.stock.find((s) => s.id === op.fits)?.name ?? [],
  );
  return names[0] ? [...new Set(names)] : [];
};

/** The figure an operation was cut to, where that is not the one it wants now; a test cut has none. */
export function cutElse(list: Checklist, op: Operation): Length | undefined {
  const was = op.what === 'test' ? undefined : list.cutTo(op.id)?.figure;
  return was && !equals(was, op.figure) ? was : undefined;
}

/** What a piece that is cut was cut to, where that is not the figure it wants now. */
export function cutOtherwise(list: Checklist, op: Operation): string {
  const was = isStep(op) ? undefined : cutElse(list, op);
  return was ? cutAt(was, op.figure, list.plan.job.tape) : '';
}
