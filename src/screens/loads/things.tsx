import { editThing } from '../../job/edits';
import type { Job } from '../../job/job';
import { Bar, BarButton } from '../../ui/bar';
import type { Bench } from '../bench';
import { AskBlank } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { Caution } from '../shared/caution';
import { GonePage } from '../shared/gone-page';
import { LastNotes } from '../shared/last-notes';
import { LotLine } from '../shared/lot-line';
import * as lot from '../shared/lot-words';
import { UndoButton } from '../shared/undo-button';
import { useTried } from '../shared/use-tried';
import { failedAsk } from './asks';
import * as words from './words';
import '../shared/drawer-row.css';

/** All that is to go in, before there is a case for it and after: what failed last time, where each lot lives now. */
export function ThingsScreen({ bench }: { readonly bench: Bench }) {
  const job = bench.job.value;
  if (job) return <Things {...{ bench, job }} />;
  const leave = { label: words.toJob, word: true, onTap: () => bench.go({ at: 'job' }) };
  return <GonePage title={words.thingsTitle} leave={leave} says={words.noJob} />;
}

function Things({ bench, job }: { readonly bench: Bench; readonly job: Job }) {
  const { open, onOpen, onTry, close, says } = useTried({ bench, kept: job, wrongs: () => [] });
  const parts = bench.plan.value?.parts ?? [];
  const add = () => void bench.act(lot.added, editThing(bench.newId(), { count: 1, name: lot.thing }));
  return (
    <>
      <Bar
        title={words.thingsTitle}
        sub={job.place}
        leave={{ label: words.toJob, onTap: () => bench.go({ at: 'job' }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        <p class="pad-x empty-line">{words.thingsFirst}</p>
        <Caution bench={bench} code="load" />
        <p class="fillin">
          {words.failedLine(<AskBlank ask={failedAsk(job)} open={open} onOpen={onOpen} />)}
        </p>
        <LastNotes bench={bench} job={job} />
        <section class="drawerrow" aria-label={words.thingsTitle}>
          <div class="sechead bare">
            <h2 class="sec">{words.thingsTitle}</h2>
            <BarButton icon="plus" label={lot.addThing} boxed onTap={add} />
          </div>
          {job.things.map((thing) => (
            <LotLine key={thing.id} {...{ bench, job, parts, thing, open, onOpen }} />
          ))}
        </section>
      </main>
      <AskDock ask={open} tape={job.tape} says={says} act={bench.act} onTry={onTry} onClose={close} />
    </>
  );
}
