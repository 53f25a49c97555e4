import { useState } from 'preact/hooks';
import { equals, type Length, longest } from '../../length/length';
import { writeDecimal } from '../../length/write';
import { editStock, type Stock } from '../../store/job';
import { wouldChange } from '../../trade/setups/changes';
import { Given, Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { ChangeList } from '../cuts/change-list';
import { checklistOf } from '../cuts/view';
import { jobWith } from '../job-with';
import { planOf, stuffOf } from '../plan';

type InUseProps = { readonly bench: Bench; readonly stock: Stock; readonly onPlanned: () => void };

/** The thickness parts are reckoned with, and what the readings would change: nothing moves until it is taken up. */
export function InUse({ bench, stock, onPlanned }: InUseProps) {
  const [first, ...rest] = stock.readings;
  const read = first && longest(first, ...rest);
  const [stuff] = stuffOf(stock);
  const pending = read && stuff && !equals(read, stuff.thickness) ? read : undefined;
  return (
    <section aria-label="In use">
      <button type="button" class="nextset" onClick={onPlanned}>
        <span class="grow">Planned, until it is measured</span>
        {stock.planned ? <Given value={stock.planned} /> : <span class="muted">not said</span>}
      </button>
      {stuff && (
        <p class="pad-x note">
          Parts of it are reckoned at <b class="dec">{writeDecimal(stuff.thickness)}</b>
          {stuff.measured ? ', as measured.' : ', as planned.'}
        </p>
      )}
      {pending && <TakeUp {...{ bench, stock }} read={pending} />}
      {!pending && read && stuff && !stuff.measured && <TakeUp {...{ bench, stock }} read={read} />}
    </section>
  );
}

type TakeProps = { readonly bench: Bench; readonly stock: Stock; readonly read: Length };

/** What would change, before anything does: parts not yet cut, old to new. */
function TakeUp({ bench, stock, read }: TakeProps) {
  const [open, setOpen] = useState(false);
  const plan = bench.plan.value;
  if (!plan) return null;
  const changes = editStock(stock.id, { used: read });
  const { doing } = checklistOf(plan, bench.folded.value);
  const after = open
    ? planOf(jobWith(bench.folded.value, plan.job.id, changes), bench.shop.value)
    : undefined;
  return (
    <div class="pad-x takeup">
      <button type="button" class="btn full" aria-expanded={open} onClick={() => setOpen(!open)}>
        See what <Mixed value={read} tape="0.001" /> would change
      </button>
      {after && [...after.worked.values()].some((w) => !w.ok) && (
        <p class="wrongline">With this a case no longer works out: use it, and the case says by how much.</p>
      )}
      {after && (
        <ChangeList
          changes={wouldChange(plan.operations, after.operations, doing.done)}
          tape={plan.job.tape}
        />
      )}
      <button
        type="button"
        class="btn main full"
        onClick={() => void bench.act(`Taken up: ${stock.name} ${writeDecimal(read)}`, changes)}
      >
        Use it for what is not cut
      </button>
    </div>
  );
}
