import { cutterTape, markAt } from '../../length/tape';
import { writeDecimals, writeLength } from '../../length/write';
import type { Checklist } from '../../plan/checklist';
import { machineAt } from '../../trade/machines/machines';
import type { Card } from '../../trade/setups/checklist';
import type { Operation } from '../../trade/setups/operation';
import { stocksFitted } from '../shared/at-setup';
import { machineName } from '../shared/machines/machine-names';
import { forStocks } from '../shared/setup-words';
import * as words from './words';
import './machine.css';

type StripProps = {
  readonly list: Checklist;
  readonly card: Card;
  /** Whose machine, cutter and height stand: another than the card's while they are being changed. */
  readonly first: Operation;
  readonly now?: boolean;
};

/** What stands on the machine, always in one place: machine, cutter, height. Small: it is read when it changes. */
export function Strip({ list, card, first: { setup }, now = false }: StripProps) {
  const { machine, cutter, height } = setup;
  const { tape } = list.plan.job;
  const fitted = stocksFitted(list, card);
  return (
    <div class="mstrip">
      <Cell label={fitted.length > 0 && !now ? forStocks(fitted) : words.machine}>{machineName(setup)}</Cell>
      {cutter && (
        <Cell label={words.cutter(machineAt(machine).cuts, now)}>
          {writeLength(markAt(cutter, cutterTape(tape)).value, cutterTape(tape))}{' '}
          <span class="thin">{writeDecimals(cutter, tape)}</span>
        </Cell>
      )}
      {height && <Cell label={words.high(machine)}>{writeLength(height, tape)}</Cell>}
    </div>
  );
}

type CellProps = { readonly label: string; readonly children: preact.ComponentChildren };

const Cell = ({ label, children }: CellProps) => (
  <div>
    <span>{label}</span>
    <b>{children}</b>
  </div>
);
