import type { Checklist } from '../../plan/checklist';
import type { Part } from '../../trade/carcass/part';
import type { Operation } from '../../trade/setups/operation';
import { Icon } from '../../ui/icon';
import { Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { cutElse } from '../shared/at-setup';
import { setupTitle } from '../shared/setup-title';
import { ThinnerLines } from '../shared/thinner-lines';
import * as words from './words';

const mostShown = 40;

type RowProps = {
  readonly bench: Pick<Bench, 'go'>;
  readonly part: Part;
  readonly list: Checklist;
};

type ListProps = RowProps & { readonly operations: readonly Operation[] };

/** The cuts of a part in order, the first of very many. */
export const PartOperations = ({ operations, ...row }: ListProps) => (
  <>
    <h2 class="sec pad-x">{words.cutsInOrder}</h2>
    <ul>
      {operations.slice(0, mostShown).map((op) => (
        <OperationRow key={op.id} {...row} op={op} />
      ))}
    </ul>
    {operations.length > mostShown && <p class="pad-x note">{words.more(operations.length - mostShown)}</p>}
  </>
);

/** One cut: a tap leads to its setup. */
function OperationRow({ bench, part, list, op }: RowProps & { readonly op: Operation }) {
  const { copies } = part;
  const { tape } = list.plan.job;
  const card = list.cards.find((c) => c.operations.includes(op));
  return (
    <li>
      <button type="button" class="nextset" onClick={() => card && bench.go({ at: 'setup', id: card.id })}>
        <span class="grow">
          <b>
            {list.doing.done(op.id) && <Icon name="tick" />} {setupTitle(op)}
          </b>
          <span class="s muted block">{words.operation(op, { copies, tape }, cutElse(list, op))}</span>
          <ThinnerLines plan={list.plan} operations={[op]} />
        </span>
        {op.setup.figure && <Mixed value={op.setup.figure.value} tape={tape} />}
      </button>
    </li>
  );
}
