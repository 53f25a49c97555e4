import { editNextTime } from '../../job/edits';
import type { NextTime } from '../../job/install';
import type { Job } from '../../job/job';
import { bitFound, learnedOf, piecesLacked } from '../../plan/look-back';
import { withCount } from '../../trade/stacks/pieces';
import { Bar } from '../../ui/bar';
import { Chip } from '../../ui/button';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { leave } from '../shared/leave';
import { Acts } from '../shared/sentence';
import { keepLists, listsOf } from '../shared/shop-lists';
import { UndoButton } from '../shared/undo-button';
import { useTried } from '../shared/use-tried';
import { KerfTests, kerfWrongs } from './kerf-test';
import * as words from './look-back-words';

const askFor = ({ id, said }: NextTime, no: number): Ask => ({
  as: 'text',
  title: words.ask(no),
  now: said,
  most: 400,
  save: (text) => editNextTime(id, { said: text }),
});

/** What to do otherwise next time, kept with the job; and shop figures that the job knows better, each by a tap. */
export function LookBackScreen({ bench }: { readonly bench: Bench }) {
  const job = bench.job.value;
  return (
    <>
      <Bar
        title={words.title}
        sub={job?.name ?? ''}
        leave={{ label: words.toJob, word: true, onTap: () => leave(bench, { at: 'job' }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      {job && <JobInHand bench={bench} kept={job} />}
    </>
  );
}

type JobProps = { readonly bench: Bench; readonly kept: Job };

function JobInHand({ bench, kept }: JobProps) {
  const wrongs = (job: Job) => kerfWrongs(job, bench.shop.value);
  const { open, onOpen, close, job, says, onTry } = useTried({ bench, kept, wrongs });
  return (
    <>
      <main class={open ? 'page docked' : 'page'}>
        <Notes {...{ bench, kept, open, onOpen }} />
        <Learned bench={bench} />
        <KerfTests {...{ bench, job, open, onOpen }} />
      </main>
      <AskDock {...{ says, onTry }} ask={open} tape={kept.tape} act={bench.act} onClose={close} />
    </>
  );
}

type NotesProps = JobProps & { readonly open: Ask | undefined; readonly onOpen: (ask: Ask) => void };

function Notes({ bench, kept: { nextTime: notes }, open, onOpen }: NotesProps) {
  const add = () => onOpen(askFor({ id: bench.newId(), said: '' }, notes.length + 1));
  return (
    <>
      <div class="sechead">
        <h2 class="sec">{words.nextTime}</h2>
        <button type="button" class="chip" onClick={add}>
          <Icon name="plus" /> {words.add}
        </button>
      </div>
      {notes.length === 0 && <p class="pad-x empty-line">{words.nothing}</p>}
      {notes.map((note, k) => (
        <p key={note.id} class="fillin thing">
          <AskBlank ask={askFor(note, k + 1)} open={open} onOpen={onOpen} />
          <Acts>
            <Chip
              label={words.remove}
              onTap={() => void bench.act(words.removed, editNextTime(note.id, { gone: true }))}
            />
          </Acts>
        </p>
      ))}
    </>
  );
}

/** Figures of the shop the job worked with or found out: nothing is kept but by a tap. */
function Learned({ bench }: { readonly bench: Bench }) {
  const rows = learnedRows(bench);
  return (
    <section aria-label={words.shopFigures}>
      <h2 class="sec pad-x">{words.shopFigures}</h2>
      {rows.length === 0 && <p class="pad-x empty-line">{words.noneLearned}</p>}
      {rows.map(({ says, keep }) => (
        <p key={says} class="pad-x">
          {says} <Chip label={words.keep} onTap={keep} />
        </p>
      ))}
    </section>
  );
}

type Row = { readonly says: string; readonly keep: () => void };

/** What is learned: slides, the bit, pieces of the stack; each with what keeps it. */
function learnedRows(bench: Bench): readonly Row[] {
  const [plan, shop] = [bench.plan.value, bench.shop.value];
  if (!plan) return [];
  const { stack } = listsOf(bench.settings.value);
  const bit = bitFound(plan, shop);
  return [
    ...learnedOf(plan, shop).map((one) => ({
      says: words.learned(one),
      keep: () => void bench.keepShop(one.field, one.learned),
    })),
    ...(bit ? [{ says: words.bit(bit), keep: () => void bench.keepShop('bit', bit.learned) }] : []),
    ...piecesLacked(plan, stack).map((one) => ({
      says: words.lacked(one),
      keep: () => keepLists(bench, { stack: { ...stack, pieces: withCount(stack.pieces, one.piece) } }),
    })),
  ];
}
