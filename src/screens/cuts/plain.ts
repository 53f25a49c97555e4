import { blocks, type Checklist, cutCount } from '../../plan/checklist';
import { blockWords } from '../shared/block-words';
import { holeMarks } from '../shared/row-words';
import { thinnerSays } from '../shared/thinner-words';
import * as words from './words';

/** The checklist as plain lines, for a helper: setups in order, pieces under each, boxes to tick. */
export function plainCuts(list: Checklist): string {
  const { plan, doing } = list;
  const { tape } = plan.job;
  const { cut, of } = cutCount(list);
  const cards = list.cards.map((card, k) => {
    const [first] = card.operations;
    if (!first) return '';
    const lines = card.operations.map((op) => {
      const waits = blocks(list, op).length > 0 ? blockWords(list, op) : undefined;
      const tick = words.plainTick(op, { ticked: doing.done(op.id), waits, tape });
      return op.which?.is === 'row' ? `${tick}\n       ${holeMarks(op.which.bore, tape).join('; ')}` : tick;
    });
    const thinner = thinnerSays(plan, card.operations).map((says) => `   ${says}`);
    return [words.plainHead(first, k + 1, tape), ...thinner, ...lines].join('\n');
  });
  return [words.plainTitle(plan.job.name, cut, of), ...cards].join('\n\n');
}
