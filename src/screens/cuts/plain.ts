import { writeLength } from '../../length/write';
import { type Checklist, cutCount } from '../../plan/checklist';
import { buildWords, onWords, whatWords } from '../shared/cut-words';
import { setupTitle } from '../shared/setup-title';

/** The checklist as plain lines, for a helper: setups in order, pieces under each, boxes to tick. */
export function plainCuts(list: Checklist): string {
  const { plan, doing } = list;
  const { cut, of } = cutCount(list);
  const cards = list.cards.map((card, k) => {
    const [first] = card.operations;
    if (!first) return '';
    const { setup } = first;
    const figure = setup.figure ? ` ${writeLength(setup.figure.value, plan.job.tape)}` : '';
    const on = onWords(setup);
    const head = `${k + 1}. ${setupTitle(first)}${figure}\n   ${buildWords(setup, plan.job.tape)}${on ? `; ${on}` : ''}`;
    const lines = card.operations.map(
      (op) => `   [${doing.done(op.id) ? 'x' : ' '}] ${op.name}: ${whatWords(op)}`,
    );
    return [head, ...lines].join('\n');
  });
  return [`${plan.job.name || 'Job'}, ${cut} of ${of} cut`, ...cards].join('\n\n');
}
