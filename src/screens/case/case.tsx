import { useState } from 'preact/hooks';
import { editCase, editInside } from '../../job/edits';
import type { Change } from '../../job/entry';
import type { Job } from '../../job/job';
import { jobWith } from '../../plan/job-with';
import { partsOfJob } from '../../plan/parts-of-job';
import type { Plan } from '../../plan/plan';
import type { Case, Inside, StockRole } from '../../trade/carcass/case';
import type { Worked } from '../../trade/carcass/parts';
import type { CaseProblem } from '../../trade/carcass/problems';
import { Bar } from '../../ui/bar';
import { Button, Onward } from '../../ui/button';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import type { Ask } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { GonePage } from '../shared/gone-page';
import { measureSheet } from '../shared/measure-sheet';
import { UndoButton } from '../shared/undo-button';
import { Add } from './add';
import { caseLength, insideCount, ofSticks, stockIs } from './asks';
import { type CasePart, Said } from './blanks';
import { Butted } from './butted';
import { CaseRoom } from './case-room';
import { DrawnCase } from './drawn-case';
import { Next, SelfCheck } from './facts';
import { type Fault, problemFaults, saysFor, workedFaults } from './faults';
import { InsideSentence } from './inside';
import { JointSentence } from './joint-sentence';
import { lastGoodCase } from './last-good';
import { Options } from './options';
import { add } from './sentence-words';
import { SizeSentence, StockSentence } from './sentences';
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
  const [open, setOpen] = useState<Ask | undefined>(() => firstAsk(kept));
  const [trying, setTrying] = useState<readonly Change[]>();
  const inHand = trying ? jobWith(bench.folded.value, job.id, trying) : job;
  const act = (label: string, changes: readonly Change[]) => void bench.act(label, changes);
  const close = () => {
    setOpen(undefined);
    setTrying(undefined);
  };
  const found = foundOf(inHand, kept, partsOfJob(inHand, bench.shop.value));
  const before = foundOf(job, kept, bench.plan.value ?? { worked: new Map(), banks: new Map() });
  const part: CasePart = {
    c: kept,
    worked: before.worked,
    faults: found.faults,
    job,
    open,
    onOpen: setOpen,
    onMeasure: (stock) => void measureFor(bench, kept, stock),
    act,
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
      <Slip bench={bench} part={part} found={found} />
      <ToPartsAndCuts bench={bench} />
      <AskDock
        ask={open}
        tape={job.tape}
        says={open ? saysFor(open, found.faults, before.faults) : []}
        act={act}
        onTry={setTrying}
        onClose={close}
      />
    </>
  );
}

/** A case nothing is said of yet begins with its width, the keys at hand. */
const firstAsk = (c: Case): Ask | undefined =>
  c.hold === 'outside' && !c.width && !c.height && !c.depth ? caseLength(c, 'width') : undefined;

/** A sheet for a piece of the case, measured now: the piece is of it, and the page comes back here. */
const measureFor = (bench: Bench, c: Case, stock: StockRole): Promise<void> =>
  measureSheet(bench, {
    of: c.id,
    stick: ofSticks(stock),
    takes: (id) => editCase(c.id, stockIs(stock, id)),
  });

/** What follows for the case of the job as it is being keyed. */
type Found = {
  readonly job: Job;
  readonly problems: readonly CaseProblem[];
  readonly faults: readonly Fault[];
  readonly worked: Worked | undefined;
};

function foundOf(job: Job, { id }: Case, { worked, banks }: Pick<Plan, 'worked' | 'banks'>): Found {
  const c = job.cases.find((x) => x.id === id);
  const found = worked.get(id);
  if (!c || !found) return { job, problems: [], faults: [], worked: undefined };
  return found.ok
    ? { job, problems: [], faults: workedFaults(found.value, { job, banks }), worked: found.value }
    : { job, problems: found.error, faults: problemFaults(found.error, c), worked: undefined };
}

type SlipProps = { readonly bench: Bench; readonly part: CasePart; readonly found: Found };

/** The drawing, the sentences, and what follows of them for the job as it is being keyed. */
function Slip({ bench, part, found }: SlipProps) {
  const { c, job, faults } = part;
  const at = { job: job.id, id: c.id, shop: bench.shop.value };
  const drawn = found.worked ?? lastGoodCase(bench.entries.value, at);
  return (
    <main class={part.open ? 'page docked' : 'page'}>
      {drawn && (
        <DrawnCase
          worked={drawn}
          job={job}
          stale={!found.worked}
          onPart={(id) => bench.go({ at: 'part', id })}
        />
      )}
      <Next {...part} problems={found.problems} onStock={(id) => bench.go({ at: 'stock', id, of: c.id })} />
      <SizeSentence {...part} />
      <StockSentence {...part} />
      <JointSentence {...part} />
      <Butted {...part} />
      {c.inside.map((i) => (
        <InsideSentence key={i.id} {...part} i={i} />
      ))}
      <AddInside part={part} newId={bench.newId} />
      <Options {...part} />
      <Said at="whole" faults={faults} />
      {drawn && <SelfCheck worked={drawn} job={job} stale={!found.worked} />}
      {found.worked && (
        <CaseRoom job={found.job} worked={found.worked} onRoom={() => bench.go({ at: 'room' })} />
      )}
      <Aside bench={bench} part={part} />
    </main>
  );
}

type AddProps = { readonly part: CasePart; readonly newId: () => string };

function AddInside({ part: { c, act, onOpen }, newId }: AddProps) {
  const put = (kind: Inside['kind']) => {
    const own: Inside = { id: newId(), kind, bay: c.partitions + 1 };
    act(add[kind], editInside(c.id, own.id, { kind, bay: own.bay }));
    // how many is asked at once; where a shelf stands has a usual place
    if (kind === 'loose') onOpen(insideCount({ ...c, inside: [...c.inside, own] }, own));
  };
  // a middle rail is one of the face frame
  const kinds = ['fixed', 'loose', 'trays', 'stop', ...(c.hasFrame ? (['rail'] as const) : [])] as const;
  return (
    <div class="pad-x adds">
      {kinds.map((kind) => (
        <Add key={kind} label={add[kind]} onTap={() => put(kind)} />
      ))}
    </div>
  );
}

const pages = ['built', 'loads', 'lift', 'solid', 'level', 'scribe', 'screws'] as const;

/** To what was built of it, what it carries and how it is put up; and out of the job. */
const Aside = ({ bench, part: { c, act } }: Omit<SlipProps, 'found'>) => (
  <>
    <nav aria-label={words.more}>
      {pages.map((at) => (
        <a key={at} class="sect" href={`#/${at}/${encodeURIComponent(c.id)}`}>
          <b>{words.pages[at]}</b>
          <Icon name="next" />
        </a>
      ))}
    </nav>
    <div class="pad-x adds">
      <Button
        look="quiet"
        label={words.remove}
        onTap={() => {
          act(words.removed(c.name), editCase(c.id, { gone: true }));
          bench.go({ at: 'job' });
        }}
      />
    </div>
  </>
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
