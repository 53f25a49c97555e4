import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Change } from '../../job/entry';
import { checklistOf } from '../../plan/checklist';
import { jobWith } from '../../plan/job-with';
import { planOnce } from '../../plan/plan-once';
import { wouldChange } from '../../trade/setups/changes';
import { Button } from '../../ui/button';
import type { Bench } from '../bench';
import { ChangeList } from './change-list';
import './take-up.css';

type TakeUpProps = {
  readonly bench: Bench;
  /** The act, as undo names it. */
  readonly label: string;
  readonly changes: readonly Change[];
  /** What is looked at before it is used: "See what 17 1/32 would change". */
  readonly children: ComponentChildren;
};

/** A reading moves nothing until it is used: first what it would change, the cut named apart. */
export function TakeUp({ bench, label, changes, children }: TakeUpProps) {
  const [open, setOpen] = useState(false);
  const plan = bench.plan.value;
  if (!plan) return null;
  const { doing } = checklistOf(plan, bench.folded.value);
  const after = open
    ? planOnce(jobWith(bench.folded.value, plan.job.id, changes), bench.shop.value)
    : undefined;
  return (
    <div class="pad-x takeup">
      <button type="button" class="btn full" aria-expanded={open} onClick={() => setOpen(!open)}>
        {children}
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
      <Button
        label="Use it for what is not cut"
        look="main full"
        onTap={() => void bench.act(label, changes)}
      />
    </div>
  );
}
