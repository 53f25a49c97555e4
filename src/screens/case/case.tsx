import { useState } from 'preact/hooks';
import { editCase, editInside } from '../../job/edits';
import type { Change } from '../../job/entry';
import { type Job, jobOf } from '../../job/job';
import { fold } from '../../job/log';
import { writeLength } from '../../length/write';
import { jobWith } from '../../plan/job-with';
import { partsOfJob } from '../../plan/plan';
import type { Worked } from '../../trade/carcass/parts';
import { Bar, Segment } from '../../ui/bar';
import { CaseDrawing } from '../../ui/case-drawing';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import type { Ask } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { UndoButton } from '../shared/undo-button';
import { WhyRow } from '../shared/why-row';
import { frontOf, sectionOf } from './drawn';
import { Problems, SelfCheck, Worth } from './facts';
import {
  Add,
  type CasePart,
  InsideSentence,
  JointSentence,
  Options,
  SizeSentence,
  StockSentence,
} from './sentences';

/** A case as one order slip: sizes, stock, joints, what stands in it; drawn to scale as it is said. */
export function CaseScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const [open, setOpen] = useState<Ask>();
  const [trying, setTrying] = useState<readonly Change[]>();
  const job = bench.job.value;
  const kept = job?.cases.find((c) => c.id === id);
  if (!job || !kept) return <NoCase bench={bench} />;
  const inHand = trying ? jobWith(bench.folded.value, job.id, trying) : job;
  const c = inHand.cases.find((x) => x.id === id) ?? kept;
  const found = partsOfJob(inHand, bench.shop.value).worked.get(id);
  const good = found?.ok ? found.value : lastGoodCase(bench, id);
  const problems = found && !found.ok ? found.error : [];
  const act = (label: string, changes: readonly Change[]) => void bench.act(label, changes);
  const part: CasePart = { c: kept, job, open, onOpen: setOpen, act };
  const close = () => {
    setOpen(undefined);
    setTrying(undefined);
  };
  return (
    <>
      <Bar
        title={kept.name || 'Case'}
        sub="What goes in"
        leave={{ label: 'Job', onTap: () => bench.go({ at: 'job' }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        {good && <Drawn worked={good} job={job} bench={bench} stale={problems.length > 0} />}
        <Problems problems={problems} c={c} bench={bench} />
        <SizeSentence {...part} />
        <StockSentence {...part} />
        <JointSentence {...part} />
        {kept.inside.map((i) => (
          <InsideSentence key={i.id} {...part} i={i} />
        ))}
        <div class="pad-x adds">
          {(['fixed', 'loose', 'trays', 'rail'] as const).map((kind) => (
            <Add
              key={kind}
              label={addWords[kind]}
              onTap={() =>
                act(addWords[kind], editInside(id, bench.newId(), { kind, bay: kept.partitions + 1 }))
              }
            />
          ))}
        </div>
        <Options {...part} />
        {good && problems.length === 0 && <Worth worked={good} c={c} />}
        {good && <SelfCheck worked={good} job={job} />}
        <div class="pad-x adds">
          <button type="button" class="btn quiet" onClick={() => bench.go({ at: 'built', id })}>
            As built
          </button>
          <button
            type="button"
            class="btn quiet"
            onClick={() => {
              act(`${kept.name || 'Case'} removed`, editCase(id, { gone: true }));
              bench.go({ at: 'job' });
            }}
          >
            Remove this case
          </button>
        </div>
      </main>
      <div class="fixedbar">
        <button type="button" class="btn" onClick={() => bench.go({ at: 'parts' })}>
          Parts
        </button>
        <button type="button" class="btn main" onClick={() => bench.go({ at: 'cuts' })}>
          To the cuts <Icon name="next" />
        </button>
      </div>
      {open && (
        <AskDock
          key={open.title}
          ask={open}
          tape={job.tape}
          onSave={(changes) => act(open.title, changes)}
          onTry={setTrying}
          onClose={close}
        />
      )}
    </>
  );
}

const addWords = {
  fixed: 'A fixed shelf',
  loose: 'Loose shelves',
  trays: 'Trays in grooves',
  rail: 'A middle rail',
} as const;

const NoCase = ({ bench }: { readonly bench: Bench }) => (
  <>
    <Bar title="Case" leave={{ label: 'Job', word: true, onTap: () => bench.go({ at: 'job' }) }} />
    <main class="page">
      <p class="pad-x empty-line">This case is not in the job.</p>
    </main>
  </>
);

const farthestBack = 40;

/** The case as it last could be cut: what is typed wrong never takes the good figures away. */
function lastGoodCase(bench: Bench, id: string): Worked | undefined {
  const entries = bench.entries.value.filter((e) => e.kind === 'edit');
  for (let back = 1; back <= Math.min(farthestBack, entries.length - 1); back += 1) {
    const job = jobOf(bench.job.value?.id ?? '', fold(entries.slice(0, entries.length - back)).values);
    const found = partsOfJob(job, bench.shop.value).worked.get(id);
    if (found?.ok) return found.value;
  }
  return undefined;
}

type DrawnProps = {
  readonly worked: Worked;
  readonly job: Job;
  readonly bench: Bench;
  readonly stale: boolean;
};

function Drawn({ worked, job, bench, stale }: DrawnProps) {
  const [view, setView] = useState<'front' | 'section'>('front');
  const drawing = view === 'front' ? frontOf(worked) : sectionOf(worked);
  const { width, height, depth, bays, clearHeight } = worked.sizes;
  const across = view === 'front' ? width.value : depth.value;
  return (
    <div class="pad-x drawing">
      <CaseDrawing
        {...drawing}
        stale={stale}
        across={writeLength(across, job.tape)}
        up={writeLength(height.value, job.tape)}
        label={
          view === 'front' ? 'Case from the front, to scale' : 'Case cut through, front at the left, to scale'
        }
        onPart={(part) => bench.go({ at: 'part', id: part })}
      />
      {stale && <p class="note">before this change</p>}
      <Segment
        label="View"
        choices={[
          { label: 'From the front', chosen: view === 'front', onTap: () => setView('front') },
          { label: 'Cut through', chosen: view === 'section', onTap: () => setView('section') },
        ]}
      />
      <ul class="bays">
        {bays.map((bay, k) => (
          <WhyRow
            key={k}
            words={bays.length === 1 ? 'Clear width' : `Bay ${k + 1}, clear`}
            sum={bay}
            tape={job.tape}
          />
        ))}
        <WhyRow words="Clear height" sum={clearHeight} tape={job.tape} />
      </ul>
    </div>
  );
}
