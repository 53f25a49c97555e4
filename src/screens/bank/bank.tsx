import { useState } from 'preact/hooks';
import { editBank } from '../../job/edits';
import type { Change } from '../../job/entry';
import { jobWith } from '../../plan/job-with';
import { partsOfJob } from '../../plan/plan';
import type { Bank } from '../../trade/fronts/bank';
import { Bar } from '../../ui/bar';
import { Button, Onward } from '../../ui/button';
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
import * as words from './words';

/** What goes into a bank, as one order slip: its opening, fronts, boxes, slides and pulls. */
export function BankScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const [open, setOpen] = useState<Ask>();
  const [trying, setTrying] = useState<readonly Change[]>();
  const job = bench.job.value;
  const found = bankIn(bench.plan.value, id);
  if (!job || !found) return <NoBank bench={bench} />;
  const shown = trying ? (tried(bench, job.id, trying).get(id) ?? found) : found;
  const close = () => {
    setOpen(undefined);
    setTrying(undefined);
  };
  const act: Slip['act'] = (label, changes) => void bench.act(label, changes);
  return (
    <>
      <Bar
        title={words.nameOf(found.bank)}
        sub={words.whatGoesIn}
        leave={{ label: words.toFronts, onTap: () => bench.go({ at: 'fronts', id }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        <Asks bench={bench} bank={shown} />
        <Sentences {...{ bench, found, open, act }} onOpen={setOpen} />
        <Remove bench={bench} bank={found.bank} />
      </main>
      <OnToFronts onTap={() => bench.go({ at: 'fronts', id })} />
      <AskDock ask={open} tape={job.tape} act={act} onTry={setTrying} onClose={close} />
    </>
  );
}

/** The banks as they would be with a change that is not kept yet. */
const tried = ({ folded, shop }: Pick<Bench, 'folded' | 'shop'>, job: string, changes: readonly Change[]) =>
  partsOfJob(jobWith(folded.value, job, changes), shop.value).banks;

const Sentences = (slip: Slip) => (
  <>
    <OpeningSentence {...slip} />
    <FrontsSentence {...slip} />
    <HeightsList {...slip} />
    <BoxSentence {...slip} />
    <TailSentence {...slip} />
    <SlideSentence {...slip} />
    <PullSentence {...slip} />
  </>
);

const OnToFronts = ({ onTap }: { readonly onTap: () => void }) => (
  <div class="fixedbar">
    <Onward label={words.onToFronts} onTap={onTap} />
  </div>
);

function Remove({ bench, bank }: { readonly bench: Pick<Bench, 'act' | 'go'>; readonly bank: Bank }) {
  const remove = () => {
    void bench.act(words.removed(bank), editBank(bank.id, { gone: true }));
    bench.go({ at: 'job' });
  };
  return (
    <div class="pad-x adds">
      <Button look="quiet" label={words.removeThese} onTap={remove} />
    </div>
  );
}
