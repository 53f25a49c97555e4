import { writeLength } from '../../length/write';
import { blocks, type Checklist, callFor } from '../../plan/checklist';
import type { Card } from '../../trade/setups/checklist';
import { isStep } from '../../trade/setups/operation';
import * as words from './words';
import './cuts.css';

/** What still wants what stands: this figure, and this blade or stack, with what is blocked for now, and a spare. */
export function LastCall({ list, card }: { readonly list: Checklist; readonly card: Card }) {
  const { sameSetup, sameBuild, spare } = callFor(list, card);
  const [first] = card.operations;
  if (!first || isStep(first) || sameSetup.length + sameBuild.length === 0) return null;
  const { tape } = list.plan.job;
  const { setup } = first;
  const figure = setup.figure ? writeLength(setup.figure.value, tape) : '';
  const later = sameSetup.filter((op) => !card.operations.includes(op));
  const waiting = sameSetup.filter((op) => blocks(list, op).length > 0);
  return (
    <aside class="lastcall">
      <Sign />
      <h2>{words.lastCall}</h2>
      <p>{words.stillWant(sameSetup, figure)}</p>
      {waiting.length > 0 && <p>{words.blockedForNow(waiting)}</p>}
      {later.length > waiting.length && <p>{words.comeAgain(later)}</p>}
      {sameBuild.length > 0 && <p>{words.sameBuild(setup, sameBuild.length, tape)}</p>}
      {spare && <p>{words.cutSpare}</p>}
    </aside>
  );
}

const Sign = () => (
  <svg viewBox="0 0 36 44" aria-hidden="true">
    <path
      class="k-red"
      d="M4.4 31.5L18 4L31.6 31.5"
      stroke-width="5"
      stroke-linecap="round"
      stroke-linejoin="round"
    />
  </svg>
);
