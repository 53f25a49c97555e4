import { equals } from '../../length/length';
import { writeDecimals } from '../../length/write';
import { checklistOf } from '../../plan/checklist';
import type { Plan } from '../../plan/plan';
import { noLongerFit, wouldChange } from '../../trade/setups/changes';
import type { Bench } from '../bench';
import { ChangeList } from '../shared/change-list';
import * as words from './words';

type ChangesProps = {
  readonly bench: Bench;
  readonly stock: string;
  /** How it was before the readings were taken. */
  readonly was: Plan;
};

/** What the readings come to stays in sight below. */
const mostLines = 3;

const thicknessIn = ({ stuff }: Plan, stock: string) => stuff.find((s) => s.id === stock)?.thickness;

/** What the readings just taken have changed: they are in use already, and Undo takes them back. */
export function ReadChanges({ bench, stock, was }: ChangesProps) {
  const plan = bench.plan.value;
  const before = thicknessIn(was, stock);
  const now = plan && thicknessIn(plan, stock);
  if (!plan || !before || !now || equals(before, now)) return null;
  const { doing, cutTo } = checklistOf(plan, bench.folded.value);
  const off = noLongerFit(plan.operations, cutTo).length - noLongerFit(was.operations, cutTo).length;
  return (
    <section class="pad-x facts" role="status" aria-label={words.changed}>
      <p class="note">
        {words.nowInUse(writeDecimals(now, plan.job.tape), writeDecimals(before, plan.job.tape))}
      </p>
      <ChangeList
        changes={wouldChange(was.operations, plan.operations, doing.done)}
        tape={plan.job.tape}
        most={mostLines}
      />
      {off > 0 && <p class="note">{words.cutAlready(off)}</p>}
    </section>
  );
}
