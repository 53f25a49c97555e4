import { useState } from 'preact/hooks';
import { editNextTime } from '../../job/edits';
import type { NextTime } from '../../job/install';
import { learnedOf } from '../../plan/look-back';
import { Bar } from '../../ui/bar';
import { Chip } from '../../ui/button';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { leave } from '../shared/leave';
import { Acts } from '../shared/sentence';
import { UndoButton } from '../shared/undo-button';
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
  const [open, setOpen] = useState<Ask>();
  const job = bench.job.value;
  const notes = job?.nextTime ?? [];
  const add = () => {
    const id = bench.newId();
    setOpen(askFor({ id, said: '' }, notes.length + 1));
  };
  return (
    <>
      <Bar
        title={words.title}
        sub={job?.name ?? ''}
        leave={{ label: words.toJob, word: true, onTap: () => leave(bench, { at: 'job' }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        <div class="sechead">
          <h2 class="sec">{words.nextTime}</h2>
          <button type="button" class="chip" onClick={add}>
            <Icon name="plus" /> {words.add}
          </button>
        </div>
        {notes.length === 0 && <p class="pad-x empty-line">{words.nothing}</p>}
        {notes.map((note, k) => (
          <p key={note.id} class="fillin thing">
            <AskBlank ask={askFor(note, k + 1)} open={open} onOpen={setOpen} />
            <Acts>
              <Chip
                label={words.remove}
                onTap={() => void bench.act(words.removed, editNextTime(note.id, { gone: true }))}
              />
            </Acts>
          </p>
        ))}
        <Learned bench={bench} />
      </main>
      {job && <AskDock ask={open} tape={job.tape} act={bench.act} onClose={() => setOpen(undefined)} />}
    </>
  );
}

/** Figures of the shop the job worked with: nothing is kept but by a tap. */
function Learned({ bench }: { readonly bench: Pick<Bench, 'plan' | 'shop' | 'keepShop'> }) {
  const plan = bench.plan.value;
  const learned = plan ? learnedOf(plan, bench.shop.value) : [];
  return (
    <section aria-label={words.shopFigures}>
      <h2 class="sec pad-x">{words.shopFigures}</h2>
      {learned.length === 0 && <p class="pad-x empty-line">{words.noneLearned}</p>}
      {learned.map((one) => (
        <p key={`${one.field} ${words.learned(one)}`} class="pad-x">
          {words.learned(one)}{' '}
          <Chip label={words.keep} onTap={() => void bench.keepShop(one.field, one.learned)} />
        </p>
      ))}
    </section>
  );
}
