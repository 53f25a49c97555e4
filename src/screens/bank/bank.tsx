import { useState } from 'preact/hooks';
import { editBank } from '../../job/edits';
import type { Change } from '../../job/entry';
import { jobWith } from '../../plan/job-with';
import { partsOfJob } from '../../plan/plan';
import { Bar } from '../../ui/bar';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import type { Ask } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { UndoButton } from '../shared/undo-button';
import { bankIn } from './column-of';
import { Asks } from './facts';
import { NoBank } from './fronts';
import {
  BoxSentence,
  FrontsSentence,
  HeightsList,
  OpeningSentence,
  PullSentence,
  SlideSentence,
  type Slip,
  TailSentence,
} from './sentences';

/** What goes into a bank, as one order slip: its opening, fronts, boxes, slides and pulls. */
export function BankScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const [open, setOpen] = useState<Ask>();
  const [trying, setTrying] = useState<readonly Change[]>();
  const job = bench.job.value;
  const found = bankIn(bench.plan.value, id);
  if (!job || !found) return <NoBank bench={bench} />;
  const shown = trying
    ? (partsOfJob(jobWith(bench.folded.value, job.id, trying), bench.shop.value).banks.get(id) ?? found)
    : found;
  const act = (label: string, changes: readonly Change[]) => void bench.act(label, changes);
  const slip: Slip = { bench, found, open, onOpen: setOpen, act };
  return (
    <>
      <Bar
        title={found.bank.name || 'Drawers'}
        sub="What goes in"
        leave={{ label: 'Fronts', onTap: () => bench.go({ at: 'fronts', id }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        <Asks bench={bench} bank={shown} />
        <OpeningSentence {...slip} />
        <FrontsSentence {...slip} />
        <HeightsList {...slip} />
        <BoxSentence {...slip} />
        <TailSentence {...slip} />
        <SlideSentence {...slip} />
        <PullSentence {...slip} />
        <div class="pad-x adds">
          <button
            type="button"
            class="btn quiet"
            onClick={() => {
              act(`${found.bank.name || 'Drawers'} removed`, editBank(id, { gone: true }));
              bench.go({ at: 'job' });
            }}
          >
            Remove these drawers
          </button>
        </div>
      </main>
      <div class="fixedbar">
        <button type="button" class="btn main" onClick={() => bench.go({ at: 'fronts', id })}>
          To the fronts <Icon name="next" />
        </button>
      </div>
      {open && (
        <AskDock
          key={open.title}
          ask={open}
          tape={job.tape}
          onSave={(changes) => act(open.title, changes)}
          onTry={setTrying}
          onClose={() => {
            setOpen(undefined);
            setTrying(undefined);
          }}
        />
      )}
    </>
  );
}
