import { type Checklist, cutCount } from '../../plan/checklist';
import * as words from './words';

/** The checklist as plain lines, for a helper: setups in order, pieces under each, boxes to tick. */
export function plainCuts(list: Checklist): string {
  const { plan, doing } = list;
  const { cut, of } = cutCount(list);
  const cards = list.cards.map((card, k) => {
    const [first] = card.operations;
    if (!first) return '';
    const lines = card.operations.map((op) => words.plainTick(op, doing.done(op.id), plan.job.tape));
    return [words.plainHead(first, k + 1, plan.job.tape), ...lines].join('\n');
  });
  return [words.plainTitle(plan.job.name, cut, of), ...cards].join('\n\n');
}
