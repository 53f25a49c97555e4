import { blocks, type Checklist } from '../../plan/checklist';
import type { Card } from '../../trade/setups/checklist';
import type { Operation } from '../../trade/setups/operation';
import { Button } from '../../ui/button';
import * as words from './words';
import './machine.css';

type LastCallProps = {
  readonly list: Checklist;
  readonly card: Card;
  /** Everything open that wants this figure, blocked ones too. */
  readonly unmade: readonly Operation[];
  readonly onStay: () => void;
  readonly onLeave: () => void;
};

/** Before a setting is left with something unmade: how many, and every one by its name. */
export function LastCall({ list, card, unmade, onStay, onLeave }: LastCallProps) {
  const { tape } = list.plan.job;
  const first = unmade.find((op) => card.operations.includes(op) && blocks(list, op).length === 0);
  return (
    <aside class="lastcall">
      <Sign />
      <h2>{words.lastCall}</h2>
      <p>{words.stillWant(unmade.length)}</p>
      <ul>
        {unmade.map((op) => (
          <li key={op.id}>{words.unmade(op, blocks(list, op).length > 0, tape)}</li>
        ))}
      </ul>
      <Button look="main full" label={words.stay(first, tape)} onTap={onStay} />
      <Button look="full" label={words.leaveWith(unmade.length)} onTap={onLeave} />
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
