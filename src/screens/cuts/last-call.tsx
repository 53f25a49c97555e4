import { writeLength } from '../../length/write';
import { blocks, type Checklist, callFor } from '../../plan/checklist';
import type { Card } from '../../trade/setups/checklist';
import { isStep, type Operation } from '../../trade/setups/operation';
import { buildWords } from '../shared/cut-words';

/** What still wants what stands: this figure, and this blade or stack, with what is blocked for now, and a spare. */
export function LastCall({ list, card }: { readonly list: Checklist; readonly card: Card }) {
  const { sameSetup, sameBuild, spare } = callFor(list, card);
  const [first] = card.operations;
  if (!first || isStep(first) || sameSetup.length + sameBuild.length === 0) return null;
  const figure = first.setup.figure ? writeLength(first.setup.figure.value, list.plan.job.tape) : '';
  const later = sameSetup.filter((op) => !card.operations.includes(op));
  const waiting = sameSetup.filter((op) => blocks(list, op).length > 0);
  return (
    <aside class="lastcall">
      <svg viewBox="0 0 36 44" aria-hidden="true">
        <path
          class="k-red"
          d="M4.4 31.5L18 4L31.6 31.5"
          stroke-width="5"
          stroke-linecap="round"
          stroke-linejoin="round"
        />
      </svg>
      <h2>Last call</h2>
      {sameSetup.length > 0 ? (
        <p>
          {many(sameSetup.length)} still {sameSetup.length === 1 ? 'wants' : 'want'} {figure || 'this'}:{' '}
          {namesOf(sameSetup)}.
        </p>
      ) : (
        <p>Nothing more wants {figure || 'this figure'}.</p>
      )}
      {waiting.length > 0 && (
        <p>
          {namesOf(waiting)} {waiting.length === 1 ? 'is' : 'are'} blocked for now and will want it later:
          write the figure down, or wait.
        </p>
      )}
      {later.length > waiting.length && <p>{namesOf(later)} come to it again farther down.</p>}
      {sameBuild.length > 0 && (
        <p>
          {buildWords(first.setup, list.plan.job.tape)}, at other figures:{' '}
          {many(sameBuild.length).toLowerCase()} {sameBuild.length === 1 ? 'wants' : 'want'} it.
        </p>
      )}
      {spare && <p>Cut a spare piece and keep the test piece before the stack comes off.</p>}
    </aside>
  );
}

const many = (n: number): string => (n === 1 ? 'One cut' : `${n} cuts`);

function namesOf(ops: readonly Operation[]): string {
  const names = [...new Set(ops.map((op) => op.name))];
  return names.length > 4 ? `${names.slice(0, 3).join(', ')} and ${names.length - 3} more` : names.join(', ');
}
