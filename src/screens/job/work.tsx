import { editBank, editCase } from '../../job/edits';
import type { Job } from '../../job/job';
import { checklistOf, cutCount, isDone, misfits, standingCard } from '../../plan/checklist';
import type { Plan } from '../../plan/plan';
import { BarButton } from '../../ui/bar';
import { Icon } from '../../ui/icon';
import { Mixed, Remainder } from '../../ui/mixed';
import { StoryStick } from '../../ui/story-stick';
import type { Bench } from '../bench';
import { counted } from '../shared/counted';
import { setupTitle } from '../shared/cut-words';
import { TooManyOperations } from '../shared/too-many';
import { useFinished } from './copy-line';

/** A new case in the job in hand, or in a new one. */
export async function newCaseIn(bench: Bench): Promise<void> {
  if (!bench.job.value) await bench.shelf.newJob('New job');
  const id = bench.newId();
  const n = (bench.job.value?.cases.length ?? 0) + 1;
  const made = await bench.act(
    'A new case',
    editCase(id, { name: n === 1 ? 'Case' : `Case ${n}`, hold: 'outside' }),
  );
  if (made) bench.go({ at: 'case', id });
}

/** New drawers: in the first case with a bay left for them, else in an opening of their own. */
async function newBankIn(bench: Bench, job: Job): Promise<void> {
  const id = bench.newId();
  const [c] = job.cases;
  const where = c ? { of: c.id, bay: c.partitions + 1 } : {};
  const made = await bench.act('New drawers', editBank(id, { name: 'Drawers', fit: 'inset', ...where }));
  if (made) bench.go({ at: 'bank', id });
}

type WorkProps = { readonly bench: Bench; readonly job: Job };

/** The next setup with its figure: where the work was left. */
export function NextSetup({ bench, job }: WorkProps) {
  const plan = bench.plan.value;
  if (!plan) return null;
  const list = checklistOf(plan, bench.folded.value);
  const card = standingCard(list);
  const op = card?.operations[0];
  if (!card || !op) return null;
  const left = card.operations.filter((o) => !list.doing.done(o.id));
  const { figure } = op.setup;
  return (
    <section class="next" aria-label="Next thing to do">
      <p class="lead">
        Next: {setupTitle(op).replace(/ at$/, '').toLowerCase()}, {left[0]?.name ?? op.name}
        {left.length > 1 && ` and ${left.length - 1} more`}
      </p>
      {figure && (
        <div class="mid">
          <Mixed value={figure.value} rest={figure.rest} size="setting" tape={job.tape} />
          <div class="side">
            <Remainder tape={job.tape} rest={figure.rest} by={false} />
          </div>
        </div>
      )}
      <button type="button" class="btn" onClick={() => bench.go({ at: 'setup', id: card.id })}>
        Pick up where I was <Icon name="next" />
      </button>
    </section>
  );
}

/** The cases of the job, and how far their cuts are. */
export function CaseList({ bench, job }: WorkProps) {
  const plan = job.cases.length + job.banks.length > 0 ? bench.plan.value : undefined;
  const over = bench.plan.value?.over;
  const list = plan && checklistOf(plan, bench.folded.value);
  const off = list ? misfits(list).length : 0;
  const count = list && cutCount(list);
  useFinished(bench, count !== undefined && count.of > 0 && count.cut === count.of);
  return (
    <>
      <div class="sechead">
        <h2 class="sec">Case</h2>
        <BarButton icon="plus" label="New case" boxed onTap={() => void newCaseIn(bench)} />
      </div>
      {job.cases.length === 0 && (
        <p class="pad-x empty-line">
          No case yet. Say how wide, high and deep: every part follows from the sheets as measured.
        </p>
      )}
      <ul>
        {job.cases.map((c) => (
          <li key={c.id}>
            <button type="button" class="sect" onClick={() => bench.go({ at: 'case', id: c.id })}>
              <b>{c.name || 'Case'}</b>
              <span>{plan?.worked.get(c.id)?.ok ? 'worked out' : 'not worked out yet'}</span>
            </button>
          </li>
        ))}
      </ul>
      <BankList bench={bench} job={job} />
      {list && count && plan && plan.operations.length > 0 && (
        <button type="button" class="sect" onClick={() => bench.go({ at: 'cuts' })}>
          <b>Cuts</b>
          <span>
            {count.cut} of {count.of} cut
          </span>
          <StoryStick done={list.cards.map((card) => isDone(list, card))} label="Settings done" />
        </button>
      )}
      {over !== undefined && <TooManyOperations over={over} />}
      {off > 0 && (
        <p class="pad-x note">
          {off === 1 ? 'One cut piece is' : `${off} cut pieces are`} now wanted otherwise: see Cuts.
        </p>
      )}
      {plan && plan.parts.length > 0 && (
        <button type="button" class="sect" onClick={() => bench.go({ at: 'parts' })}>
          <b>Parts</b>
          <span>
            {counted(
              plan.parts.reduce((n, p) => n + p.copies, 0),
              'piece',
              'pieces',
            )}
          </span>
        </button>
      )}
    </>
  );
}

/** The banks of drawers of the job, and how far their fronts are. */
function BankList({ bench, job }: WorkProps) {
  const plan = bench.plan.value;
  return (
    <>
      <div class="sechead">
        <h2 class="sec">Drawers</h2>
        <BarButton icon="plus" label="New drawers" boxed onTap={() => void newBankIn(bench, job)} />
      </div>
      {job.banks.length === 0 && (
        <p class="pad-x empty-line">
          No drawers yet. From an opening to the last pull hole: fronts, boxes, slides.
        </p>
      )}
      <ul>
        {job.banks.map((bank) => (
          <li key={bank.id}>
            <button type="button" class="sect" onClick={() => bench.go({ at: 'fronts', id: bank.id })}>
              <b>{bank.name || 'Drawers'}</b>
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
  if (!fronts?.ok) return 'not worked out yet';
  const { bank, columns } = fronts.value;
  const on = columns.reduce((n, c) => n + c.fitted, 0);
  const all = bank.count * columns.length;
  return on === 0 ? counted(all, 'front', 'fronts') : `${on} of ${counted(all, 'front', 'fronts')} on`;
}
