import type { BankPlan } from '../../plan/bank-plan';
import type { Plan } from '../../plan/plan';
import type { WorkedColumn, WorkedFronts } from '../../trade/fronts/worked';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { askedOf, type FormPage } from './form-pages';
import { worthALook } from './words';
import { othersThan, worthOf } from './worth';

type AsksProps = {
  readonly bench: Pick<Bench, 'go'>;
  readonly bank: BankPlan;
  /** The page of the form this stands on: what has its blank elsewhere is not said here. */
  readonly page?: FormPage;
};

/** What is asked for next, or what is wrong, by how much and what would fit; elsewhere a tap leads to its blank. */
export function Asks({ bench, bank, page }: AsksProps) {
  const asked = askedOf(bank, page);
  if (asked.length === 0) return null;
  const { id } = bank.bank;
  return (
    <ul class="problems pad-x">
      {asked.map(({ text, missing, page: own }) => (
        <li key={text} class={missing ? 'nextblank' : 'wrongline'}>
          {!missing && <Icon name="warn" />}
          {page ? (
            text
          ) : (
            <button type="button" class="linklike" onClick={() => bench.go({ at: 'bank', id, page: own })}>
              {text}
            </button>
          )}
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
  const banks: Plan['banks'] = bench.plan.value?.banks ?? new Map();
  const drawers = banks.get(fronts.bank.id)?.drawers;
  const worked = drawers?.ok ? drawers.value : undefined;
  const others = othersThan(fronts.bank, banks);
  const lines = worthOf({ fronts, column, drawers: worked, others }, bench.job.value?.tape ?? '1/32');
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
