import { equals } from '../../length/length';
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

/** What a piece that is cut was cut to, where that is not the figure it wants now. */
export function cutOtherwise(list: Checklist, op: Operation): string {
  const was = list.cutTo(op.id)?.figure;
  if (!was || equals(was, op.figure) || op.what === 'test' || isStep(op)) return '';
  return cutAt(was, op.figure, list.plan.job.tape);
}
