import { useState } from 'preact/hooks';
import { editJob } from '../../job/edits';
import type { Job } from '../../job/job';
import { type Tape, tapes, unitsOf } from '../../length/tape';
import { rowsOf, viewOf } from '../../plan/board-layout';
import { sheetOf } from '../../plan/measured-sheets';
import { Bar, BarButton } from '../../ui/bar';
import { ChoiceDock } from '../../ui/dock';
import { Icon } from '../../ui/icon';
import { Mixed, Remainder } from '../../ui/mixed';
import type { Bench } from '../bench';
import type { TextDock as Typing } from '../shared/ask-dock';
import { BoardList, layOutBoard } from '../shared/board-list';
import { callGroove, setWords } from '../shared/layout-words';
import { measureSheet } from '../shared/measure-sheet';
import { UndoButton } from '../shared/undo-button';
import { useFinished } from './copy-line';
import { Kept, KeptLine } from './kept';
import { LeftClosed } from './left-closed';
import { CaseList, NextSetup, newCaseIn } from './work';

type JobProps = {
  readonly bench: Bench;
  /** What a name is typed in: it comes with the second file. */
  readonly TextDock: typeof Typing | undefined;
};

/**
 * The job in hand: the next thing to do with its figure, stock as measured, boards. Before any job: four things to
 * tap.
 */
export function JobScreen({ bench, TextDock }: JobProps) {
  const job = bench.job.value;
  return job ? <JobInHand {...{ bench, job, TextDock }} /> : <First bench={bench} />;
}

function First({ bench }: { readonly bench: Bench }) {
  return (
    <main class="page first">
      <h1>Knifeline</h1>
      <LeftClosed bench={bench} />
      <p>
        Measuring and marking in the shop. Figures are exact, every mark says from which end, and nothing
        needs a signal.
      </p>
      {bench.phone.home.at() === 'home-screen' && bench.shelf.jobs.value.length === 0 && (
        <p class="bring">
          Used in the browser before? On an iPhone nothing of it is here yet.
          <a class="btn" href="#/import">
            Bring the copy in
          </a>
        </p>
      )}
      <a class="btn main big" href="#/figure">
        <Icon name="figure" />
        Do a sum
      </a>
      <button type="button" class="btn big" onClick={() => void newCaseIn(bench)}>
        <Icon name="job" />
        Work out a case
      </button>
      <button type="button" class="btn big" onClick={() => void layOutBoard(bench)}>
        <Icon name="marks" />
        Lay out a board
      </button>
      <button type="button" class="btn big" onClick={() => void bench.incoming.openSample()}>
        <Icon name="job" />
        Open the sample job
      </button>
      <KeptLine bench={bench} />
      <p class="note">
        <a href="#/import">Bring a job file in</a> · <a href="#/jobs">All jobs</a> ·{' '}
        <a href="#/phone">This phone</a>
      </p>
    </main>
  );
}

type Open = 'name' | 'place' | 'tape' | undefined;

function JobInHand({ bench, job, TextDock }: JobProps & { readonly job: Job }) {
  const [open, setOpen] = useState<Open>();
  const dark = document.documentElement.dataset.theme === 'blued';
  return (
    <>
      <Bar leave={{ label: 'All jobs', word: true, onTap: () => bench.go({ at: 'jobs' }) }}>
        <UndoButton bench={bench} wordless />
        <BarButton
          icon="dim"
          label={dark ? 'Bright' : 'Dim'}
          onTap={() => void bench.keep({ theme: dark ? 'satin' : 'blued' })}
        />
      </Bar>
      <main class="page">
        <div class="home-head">
          <h1>
            <button type="button" onClick={() => setOpen('name')}>
              {job.name || 'Name this job'}
            </button>
          </h1>
          <button type="button" class="muted place" onClick={() => setOpen('place')}>
            {job.place || 'Where it goes'}
          </button>
        </div>
        <DoubleLine bench={bench} />
        {job.cases.length + job.banks.length > 0 ? (
          <NextSetup bench={bench} job={job} />
        ) : (
          <Next bench={bench} job={job} />
        )}
        <div class="sechead">
          <h2 class="sec">Stock, as measured</h2>
          <BarButton icon="measure" label="Measure" boxed onTap={() => void measureSheet(bench)} />
        </div>
        <StockList bench={bench} job={job} />
        <CaseList bench={bench} job={job} />
        <div class="sechead">
          <h2 class="sec">Boards by hand</h2>
          <BarButton icon="plus" label="Lay out" boxed onTap={() => void layOutBoard(bench)} />
        </div>
        {job.boards.length === 0 && (
          <p class="pad-x empty-line">
            No board laid out yet. Measure one end to end, then say where its grooves go.
          </p>
        )}
        <BoardList bench={bench} byHand />
        <div class="pad-x adds">
          <button type="button" class="btn" onClick={() => setOpen('tape')}>
            Marks to <span class="frac-inline">{job.tape}</span>
          </button>
          <a class="btn" href="#/shop">
            Shop figures
          </a>
          <button
            type="button"
            class="btn"
            onClick={() => void bench.phone.share(job.name || 'Job', bench.shelf.jobFile())}
          >
            <Icon name="share" />
            Share out
          </button>
          <a class="btn" href="#/handover">
            Hand over
          </a>
          <a class="btn" href="#/phone">
            This phone
          </a>
        </div>
        <Kept bench={bench} job={job} />
      </main>
      {open === 'tape' && (
        <ChoiceDock
          title="Marks of this job, to the nearest"
          choices={tapes
            .filter((t) => t !== '0.001')
            .map((value) => ({ value, label: unitsOf(value) === 'mm' ? value : `${value} in` }))}
          chosen={job.tape}
          onChoose={(tape: Tape) => {
            void bench.act(`Marks to ${tape}`, editJob({ tape }));
            setOpen(undefined);
          }}
          onClose={() => setOpen(undefined)}
        />
      )}
      {TextDock && (open === 'name' || open === 'place') && (
        <TextDock
          title={open === 'name' ? 'Name of the job' : 'Where it goes'}
          now={job[open]}
          most={120}
          onDone={(text) =>
            void bench.act(open === 'name' ? 'Job named' : 'Place given', editJob({ [open]: text }))
          }
          onClose={() => setOpen(undefined)}
        />
      )}
    </>
  );
}

/** As long as readings of two phones stand beside each other; nothing waits for it. */
function DoubleLine({ bench }: { readonly bench: Bench }) {
  const n = bench.doubled.value.length;
  if (n === 0) return null;
  return (
    <a class="sect" href="#/double">
      <b>{n === 1 ? 'One reading stands double' : `${n} readings stand double`}</b>
      <Icon name="next" />
    </a>
  );
}

/** The next setting not yet cut, of the board stood at last, else of the first that is started or ready. */
function Next({ bench, job }: { readonly bench: Bench; readonly job: Job }) {
  const ticks = bench.folded.value.ticks;
  const views = job.boards.map((board) => viewOf(board, bench.shop.value, job.tape));
  const rows = views.map((view) => rowsOf(view, ticks));
  const all = rows.some((own) => own.length > 0) && rows.flat().every((row) => row.done);
  useFinished(bench, all);
  const open = views.flatMap((view, k) => {
    const row = rows[k]?.find((r) => !r.done);
    return row ? [{ view, row }] : [];
  });
  const stood = open.find(({ view }) => bench.settings.value.saw?.includes(`/${view.board.id}`)) ?? open[0];
  if (!stood) return null;
  const { view, row } = stood;
  const { figure } = row.setting;
  return (
    <section class="next" aria-label="Next thing to do">
      <p class="lead">
        Next: {callGroove(view.layout, row.setting.groove.id)}, {view.board.name || 'board'}
      </p>
      <div class="mid">
        <Mixed value={figure.value} rest={figure.rest} size="setting" tape={job.tape} />
        <div class="side">
          {setWords[row.setting.measures].replace(' at', '').toLowerCase()}
          <br />
          <Remainder tape={job.tape} rest={figure.rest} by={false} />
        </div>
      </div>
      <button
        type="button"
        class="btn"
        onClick={() => bench.go({ at: 'saw', board: view.board.id, setting: row.setting.id })}
      >
        Pick up at the {view.board.machine === 'router' ? 'router' : 'saw'} <Icon name="next" />
      </button>
    </section>
  );
}

function StockList({ bench, job }: { readonly bench: Bench; readonly job: Job }) {
  if (job.stock.length === 0) {
    return (
      <p class="pad-x empty-line">
        No stock measured. Put calipers on the sheet you will cut, near two corners and the middle.
      </p>
    );
  }
  return (
    <ul>
      {job.stock.map((stock) => {
        const [sheet] = sheetOf(stock);
        return (
          <li key={stock.id}>
            <button type="button" class="mat" onClick={() => bench.go({ at: 'stock', id: stock.id })}>
              <Plies />
              <span>
                <b>{stock.name || 'Sheet'}</b>
                <span class="s muted dec">
                  {sheet?.says ?? (stock.planned ? 'planned, not measured yet' : 'no reading yet')}
                </span>
              </span>
              {sheet ? (
                <Mixed value={sheet.thickest} tape="0.001" />
              ) : (
                stock.planned && <Mixed value={stock.planned} tape="1/64" />
              )}
            </button>
          </li>
        );
      })}
    </ul>
  );
}

const Plies = () => (
  <svg viewBox="-1 -1 66 40" aria-hidden="true">
    {[0, 1, 2, 3, 4, 5, 6].map((k) => (
      <rect key={k} class={k % 2 === 0 ? 'f-birch' : 'f-birch2'} x="0" y={k * 5.4} width="64" height="5.6" />
    ))}
    <rect class="k-onbirch" x="0" y="0" width="64" height="38" stroke-width="1.25" />
  </svg>
);
