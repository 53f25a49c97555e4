import { editBank } from '../../job/edits';
import type { Job } from '../../job/job';
import { type Checklist, checklistOf, cutCount, isDone, misfits } from '../../plan/checklist';
import type { Plan } from '../../plan/plan';
import { BarButton } from '../../ui/bar';
import { StoryStick } from '../../ui/story-stick';
import type { Bench } from '../bench';
import { TooManyOperations } from '../shared/too-many';
import { newCaseIn } from './new-case';
import { useFinished } from './use-finished';
import * as words from './words';

/** New drawers: in the first case with a bay left for them, else in an opening of their own. */
async function newBankIn(bench: Bench, job: Job): Promise<void> {
  const id = bench.newId();
  const [c] = job.cases;
  const where = c ? { of: c.id, bay: c.partitions + 1 } : {};
  const made = await bench.act(
    words.newDrawers,
    editBank(id, { name: words.drawers, fit: 'inset', ...where }),
  );
  if (made) bench.go({ at: 'bank', id });
}

type ListProps = { readonly bench: Bench; readonly job: Job };

/** The cases and drawers of the job, and how far their cuts are. */
export function CaseList({ bench, job }: ListProps) {
  const plan = job.cases.length + job.banks.length > 0 ? bench.plan.value : undefined;
  const over = bench.plan.value?.over;
  const list = plan && checklistOf(plan, bench.folded.value);
  const off = list ? misfits(list).length : 0;
  const count = list && cutCount(list);
  useFinished(bench.incoming.copies.value, count !== undefined && count.of > 0 && count.cut === count.of);
  return (
    <>
      <div class="sechead">
        <h2 class="sec">{words.cases}</h2>
        <BarButton icon="plus" label={words.newCase} boxed onTap={() => void newCaseIn(bench)} />
      </div>
      {job.cases.length === 0 && <p class="pad-x empty-line">{words.noCase}</p>}
      <ul>
        {job.cases.map((c) => (
          <li key={c.id}>
            <button type="button" class="sect" onClick={() => bench.go({ at: 'case', id: c.id })}>
              <b>{c.name || words.cases}</b>
              <span>{words.workedOut(plan?.worked.get(c.id)?.ok === true)}</span>
            </button>
          </li>
        ))}
      </ul>
      <BankList bench={bench} job={job} />
      {list && list.plan.operations.length > 0 && (
        <CutsLine list={list} onTap={() => bench.go({ at: 'cuts' })} />
      )}
      {over !== undefined && <TooManyOperations over={over} />}
      {off > 0 && <p class="pad-x note">{words.cutOtherwise(off)}</p>}
      {plan && plan.parts.length > 0 && <PartsLine plan={plan} onTap={() => bench.go({ at: 'parts' })} />}
    </>
  );
}

function CutsLine({ list, onTap }: { readonly list: Checklist; readonly onTap: () => void }) {
  const { cut, of } = cutCount(list);
  return (
    <button type="button" class="sect" onClick={onTap}>
      <b>{words.cuts}</b>
      <span>{words.cutOf(cut, of)}</span>
      <StoryStick done={list.cards.map((card) => isDone(list, card))} label={words.settingsDone} />
    </button>
  );
}

const PartsLine = ({ plan, onTap }: { readonly plan: Plan; readonly onTap: () => void }) => (
  <button type="button" class="sect" onClick={onTap}>
    <b>{words.parts}</b>
    <span>{words.pieces(plan.parts.reduce((n, p) => n + p.copies, 0))}</span>
  </button>
);

/** The banks of drawers of the job, and how far their fronts are. */
function BankList({ bench, job }: ListProps) {
  const plan = bench.plan.value;
  return (
    <>
      <div class="sechead">
        <h2 class="sec">{words.drawers}</h2>
        <BarButton icon="plus" label={words.newDrawers} boxed onTap={() => void newBankIn(bench, job)} />
      </div>
      {job.banks.length === 0 && <p class="pad-x empty-line">{words.noDrawers}</p>}
      <ul>
        {job.banks.map((bank) => (
          <li key={bank.id}>
            <button type="button" class="sect" onClick={() => bench.go({ at: 'fronts', id: bank.id })}>
              <b>{bank.name || words.drawers}</b>
              <span>{bankSays(plan, bank.id)}</span>
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

function bankSays(plan: Plan | undefined, id: string): string {
  const fronts = plan?.banks.get(id)?.fronts;
  if (!fronts?.ok) return words.workedOut(false);
  const { bank, columns } = fronts.value;
  const on = columns.reduce((n, c) => n + c.fitted, 0);
  return words.frontsOn(on, bank.count * columns.length);
}
