import type { BankPlan } from '../../plan/bank-plan';
import type { WorkedColumn, WorkedFronts } from '../../trade/fronts/worked';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { drawersProblemText, frontsProblemText, worthALook } from './words';
import { worthOf } from './worth';

/** What is asked for next, or what is wrong, by how much and what would fit. */
export function Asks({ bench, bank }: { readonly bench: Bench; readonly bank: BankPlan }) {
  const fronts = bank.fronts.ok ? [] : bank.fronts.error.map(frontsProblemText);
  const boxes = bank.drawers && !bank.drawers.ok ? bank.drawers.error.map(drawersProblemText) : [];
  if (fronts.length + boxes.length === 0) return null;
  return (
    <ul class="problems pad-x">
      {fronts.map((text) => (
        <li key={text} class="wrongline">
          <Icon name="warn" />
          {text}
        </li>
      ))}
      {boxes.map((text) => (
        <li key={text} class="nextblank">
          <button type="button" class="linklike" onClick={() => bench.go({ at: 'bank', id: bank.bank.id })}>
            {text}
          </button>
        </li>
      ))}
    </ul>
  );
}

type WorthProps = {
  readonly bench: Bench;
  readonly fronts: WorkedFronts;
  readonly column: WorkedColumn;
};

/** What is worth a look before anything is cut. */
export function Worth({ bench, fronts, column }: WorthProps) {
  const drawers = bench.plan.value?.banks.get(fronts.bank.id)?.drawers;
  const worked = drawers?.ok ? drawers.value : undefined;
  const lines = worthOf({ fronts, column, drawers: worked }, bench.job.value?.tape ?? '1/32');
  if (lines.length === 0) return null;
  return (
    <section aria-label={worthALook}>
      <h2 class="sec pad-x">{worthALook}</h2>
      <ul class="problems pad-x">
        {lines.map((text) => (
          <li key={text} class="note">
            {text}
          </li>
        ))}
      </ul>
    </section>
  );
}
