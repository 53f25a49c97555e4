import { useState } from 'preact/hooks';
import type { Job } from '../../job/job';
import { Bar, BarButton } from '../../ui/bar';
import { Button } from '../../ui/button';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { BoardList } from '../shared/board-list';
import { layOutBoard } from '../shared/new-board';
import { UndoButton } from '../shared/undo-button';
import { CaseList } from './cases';
import type { Open } from './job-docks';
import { Kept } from './kept';
import type { JobLater } from './later';
import { NextGroove, NextSetup } from './next';
import { StockList } from './stock-list';
import * as words from './words';

type JobProps = {
  readonly bench: Bench;
  readonly job: Job;
  /** What comes with the second file. */
  readonly later: JobLater | undefined;
};

type OpenProps = { readonly job: Job; readonly onOpen: (what: Open) => void };

/** The job in hand: the next thing to do with its figure, stock as measured, boards. */
export function JobScreen({ bench, job, later }: JobProps) {
  const [open, setOpen] = useState<Open>();
  return (
    <>
      <TopBar bench={bench} />
      <main class="page">
        <Head job={job} onOpen={setOpen} />
        <DoubleLine count={bench.doubled.value.length} />
        {job.cases.length + job.banks.length > 0 ? (
          <NextSetup bench={bench} job={job} />
        ) : (
          <NextGroove bench={bench} job={job} />
        )}
        <StockList bench={bench} job={job} />
        <CaseList bench={bench} job={job} />
        {later && <later.PutUp bench={bench} job={job} />}
        {later && <later.CaseLines job={job} plan={bench.plan.value} />}
        <ByHand bench={bench} job={job} />
        <Adds bench={bench} job={job} onOpen={setOpen} />
        <Kept bench={bench} job={job} later={later} />
      </main>
      {later && (
        <later.JobDocks
          {...{ job, open }}
          act={bench.act}
          cut={bench.folded.value.ticks.size > 0}
          onClose={() => setOpen(undefined)}
        />
      )}
    </>
  );
}

function TopBar({ bench }: { readonly bench: Bench }) {
  const dark = document.documentElement.dataset.theme === 'blued';
  return (
    <Bar leave={{ label: words.allJobs, word: true, onTap: () => bench.go({ at: 'jobs' }) }}>
      <UndoButton bench={bench} wordless />
      <BarButton
        icon="dim"
        label={dark ? words.bright : words.dim}
        onTap={() => void bench.keep({ theme: dark ? 'satin' : 'blued' })}
      />
    </Bar>
  );
}

const Head = ({ job, onOpen }: OpenProps) => (
  <div class="home-head">
    <h1>
      <button type="button" onClick={() => onOpen('name')}>
        {job.name || words.nameJob}
      </button>
    </h1>
    <button type="button" class="muted place" onClick={() => onOpen('place')}>
      {job.place || words.whereItGoes}
    </button>
  </div>
);

/** As long as readings of two phones stand beside each other; nothing waits for it. */
const DoubleLine = ({ count }: { readonly count: number }) =>
  count === 0 ? null : (
    <a class="sect" href="#/double">
      <b>{words.double(count)}</b>
      <Icon name="next" />
    </a>
  );

/** The boards laid out by hand. */
const ByHand = ({ bench, job }: { readonly bench: Bench; readonly job: Job }) => (
  <>
    <div class="sechead">
      <h2 class="sec">{words.boards}</h2>
      <BarButton icon="plus" label={words.layOut} boxed onTap={() => void layOutBoard(bench)} />
    </div>
    {job.boards.length === 0 && <p class="pad-x empty-line">{words.noBoard}</p>}
    <BoardList bench={bench} byHand />
  </>
);

/**
 * What is set for the job, and the ways out of it. What writes it as a file comes in a file of its own: where that did
 * not come, the tap is answered so.
 */
function Adds({ bench, job, onOpen }: OpenProps & { readonly bench: Bench }) {
  const [missing, setMissing] = useState(false);
  const out = (text: string) => bench.phone.share(job.name || words.shareName, text);
  const share = () => bench.shelf.jobFile().then(out, () => setMissing(true));
  return (
    <div class="pad-x adds">
      <button type="button" class="btn" onClick={() => onOpen('tape')}>
        {words.marksTo(<span class="frac-inline">{job.tape}</span>)}
      </button>
      <a class="btn" href="#/shop">
        {words.shopFigures}
      </a>
      <Button label={words.shareOut} icon="share" onTap={share} />
      {missing && <p role="alert">{words.shareMissing}</p>}
      <a class="btn" href="#/handover">
        {words.handOver}
      </a>
      <a class="btn" href="#/phone">
        {words.thisPhone}
      </a>
    </div>
  );
}
