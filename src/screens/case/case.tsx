import { useState } from 'preact/hooks';
import { editCase, editInside } from '../../job/edits';
import type { Change } from '../../job/entry';
import type { Job } from '../../job/job';
import { jobWith } from '../../plan/job-with';
import { partsOfJob } from '../../plan/plan';
import type { Case } from '../../trade/carcass/case';
import { Bar } from '../../ui/bar';
import { Button, Onward } from '../../ui/button';
import type { Bench } from '../bench';
import type { Ask } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { GonePage } from '../shared/gone-page';
import { UndoButton } from '../shared/undo-button';
import { Add } from './add';
import type { CasePart } from './blanks';
import { DrawnCase } from './drawn-case';
import { Problems, SelfCheck, Worth } from './facts';
import { InsideSentence } from './inside';
import { lastGoodCase } from './last-good';
import { Options } from './options';
import { add } from './sentence-words';
import { JointSentence, SizeSentence, StockSentence } from './sentences';
import * as words from './words';

type CaseProps = { readonly bench: Bench; readonly id: string };

/** A case as one order slip: sizes, stock, joints, what stands in it; drawn to scale as it is said. */
export function CaseScreen({ bench, id }: CaseProps) {
  const job = bench.job.value;
  const kept = job?.cases.find((c) => c.id === id);
  return job && kept ? <CaseInHand bench={bench} job={job} kept={kept} /> : <NoCase bench={bench} />;
}

type InHandProps = { readonly bench: Bench; readonly job: Job; readonly kept: Case };

function CaseInHand({ bench, job, kept }: InHandProps) {
  const [open, setOpen] = useState<Ask>();
  const [trying, setTrying] = useState<readonly Change[]>();
  const inHand = trying ? jobWith(bench.folded.value, job.id, trying) : job;
  const act = (label: string, changes: readonly Change[]) => void bench.act(label, changes);
  const part: CasePart = { c: kept, job, open, onOpen: setOpen, act };
  const close = () => {
    setOpen(undefined);
    setTrying(undefined);
  };
  return (
    <>
      <Bar
        title={kept.name || words.title}
        sub={words.under}
        leave={{ label: words.back, onTap: () => bench.go({ at: 'job' }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <Slip bench={bench} part={part} inHand={inHand} />
      <ToPartsAndCuts bench={bench} />
      <AskDock ask={open} tape={job.tape} act={act} onTry={setTrying} onClose={close} />
    </>
  );
}

type SlipProps = { readonly bench: Bench; readonly part: CasePart; readonly inHand: Job };

/** The drawing, the sentences, and what follows of them for the job as it is being keyed. */
function Slip({ bench, part, inHand }: SlipProps) {
  const { c: kept, job } = part;
  const shop = bench.shop.value;
  const c = inHand.cases.find((x) => x.id === kept.id) ?? kept;
  const found = partsOfJob(inHand, shop).worked.get(kept.id);
  const good = found?.ok
    ? found.value
    : lastGoodCase(bench.entries.value, { job: job.id, id: kept.id, shop });
  const problems = found && !found.ok ? found.error : [];
  const sound = problems.length === 0;
  return (
    <main class={part.open ? 'page docked' : 'page'}>
      {good && (
        <DrawnCase worked={good} job={job} stale={!sound} onPart={(id) => bench.go({ at: 'part', id })} />
      )}
      <Problems problems={problems} c={c} bench={bench} />
      <SizeSentence {...part} />
      <StockSentence {...part} />
      <JointSentence {...part} />
      {kept.inside.map((i) => (
        <InsideSentence key={i.id} {...part} i={i} />
      ))}
      <AddInside part={part} newId={bench.newId} />
      <Options {...part} />
      {good && sound && <Worth worked={good} c={c} />}
      {good && <SelfCheck worked={good} job={job} />}
      <Aside bench={bench} part={part} />
    </main>
  );
}

type AddProps = { readonly part: CasePart; readonly newId: () => string };

const AddInside = ({ part: { c, act }, newId }: AddProps) => (
  <div class="pad-x adds">
    {(['fixed', 'loose', 'trays', 'rail'] as const).map((kind) => (
      <Add
        key={kind}
        label={add[kind]}
        onTap={() => act(add[kind], editInside(c.id, newId(), { kind, bay: c.partitions + 1 }))}
      />
    ))}
  </div>
);

/** To what was built of it, and out of the job. */
const Aside = ({ bench, part: { c, act } }: Omit<SlipProps, 'inHand'>) => (
  <div class="pad-x adds">
    <Button look="quiet" label={words.built} onTap={() => bench.go({ at: 'built', id: c.id })} />
    <Button
      look="quiet"
      label={words.remove}
      onTap={() => {
        act(words.removed(c.name), editCase(c.id, { gone: true }));
        bench.go({ at: 'job' });
      }}
    />
  </div>
);

const ToPartsAndCuts = ({ bench }: { readonly bench: Bench }) => (
  <div class="fixedbar">
    <Button label={words.parts} onTap={() => bench.go({ at: 'parts' })} />
    <Onward label={words.toCuts} onTap={() => bench.go({ at: 'cuts' })} />
  </div>
);

const NoCase = ({ bench }: { readonly bench: Bench }) => (
  <GonePage
    title={words.title}
    leave={{ label: words.back, word: true, onTap: () => bench.go({ at: 'job' }) }}
    says={words.noCase}
  />
);
