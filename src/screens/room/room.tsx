import { useLayoutEffect } from 'preact/hooks';
import type { Change } from '../../job/entry';
import type { Job } from '../../job/job';
import { roomIn } from '../../job/room';
import { caseInRoom } from '../../plan/case-in-room';
import type { WithCases } from '../../plan/cleat-plan';
import { roomPlanOf } from '../../plan/room-plan';
import { Bar, Segment } from '../../ui/bar';
import { Onward } from '../../ui/button';
import type { Bench } from '../bench';
import { AskDock } from '../shared/ask-dock';
import { GonePage } from '../shared/gone-page';
import { Noted } from '../shared/noted';
import { UndoButton } from '../shared/undo-button';
import { useTried } from '../shared/use-tried';
import { SizePage } from './size-page';
import type { Slip } from './spots';
import { MarkByMark, WallPage } from './wall-page';
import { WayPage } from './way-page';
import * as words from './words';
import { workedIn, wrongsOf } from './wrongs';
import './room.css';

const order = ['size', 'way', 'wall'] as const satisfies readonly words.Page[];
const pageNamed = (name: string | undefined): words.Page => order.find((page) => page === name) ?? 'size';

type RoomProps = {
  readonly bench: Bench;
  readonly page?: string | undefined;
  readonly step?: string | undefined;
};

/** The room as measured, on three pages: its size and what goes in, the way in, the wall. */
export function RoomScreen({ bench, page: named, step }: RoomProps) {
  const kept = bench.job.value;
  if (kept && named === 'wall' && step !== undefined)
    return <MarkByMark {...{ bench, step }} on={{ job: kept, worked: workedOf(bench) }} />;
  if (kept) return <RoomInHand bench={bench} kept={kept} page={pageNamed(named)} />;
  return (
    <GonePage
      title={words.title}
      leave={{ label: words.back, word: true, onTap: () => bench.go({ at: 'job' }) }}
      says={words.noJob}
    />
  );
}

/** The cases of the job in hand, as they were worked out. */
const workedOf = (bench: Bench): WithCases['worked'] => bench.plan.value?.worked ?? new Map();

type InHandProps = { readonly bench: Bench; readonly kept: Job; readonly page: words.Page };

function RoomInHand({ bench, kept, page }: InHandProps) {
  const worked = workedOf(bench);
  const tried = useTried({ bench, kept, wrongs: (job) => wrongsOf({ job, worked }) });
  const { open, close, job } = tried;
  useLayoutEffect(() => {
    close();
    scrollTo(0, 0);
  }, [page]);
  const found = roomPlanOf(job);
  const cases = workedIn(worked).map((each) => caseInRoom(job, found, each));
  const act = (label: string, changes: readonly Change[]) => void bench.act(label, changes);
  const slip: Slip = { room: roomIn(kept), found, open, onOpen: tried.onOpen, act, newId: bench.newId };
  return (
    <>
      <Bar
        title={words.title}
        sub={kept.place}
        leave={{ label: words.back, onTap: () => bench.go({ at: 'job' }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        <WhichPage bench={bench} page={page} />
        <Noted bench={bench} place={{ of: 'room' }} />
        {page === 'size' && <SizePage {...{ bench, job, slip, cases }} />}
        {page === 'way' && <WayPage {...{ bench, job, slip, cases }} />}
        {page === 'wall' && <WallPage {...{ bench, slip }} on={{ job, worked }} />}
      </main>
      <OnToNext bench={bench} page={page} />
      <AskDock ask={open} tape={kept.tape} says={tried.says} act={act} onTry={tried.onTry} onClose={close} />
    </>
  );
}

type WhichProps = { readonly bench: Pick<Bench, 'go'>; readonly page: words.Page };

const goTo = (bench: Pick<Bench, 'go'>, to: words.Page | undefined) =>
  bench.go(to === undefined ? { at: 'job' } : to === 'size' ? { at: 'room' } : { at: 'room', page: to });

const WhichPage = ({ bench, page }: WhichProps) => (
  <div class="roompages">
    <Segment
      label={words.pagesLabel}
      choices={order.map((to) => ({
        label: words.pages[to],
        chosen: to === page,
        onTap: () => goTo(bench, to),
      }))}
    />
  </div>
);

const OnToNext = ({ bench, page }: WhichProps) => (
  <div class="fixedbar">
    <Onward label={words.onward[page]} onTap={() => goTo(bench, order[order.indexOf(page) + 1])} />
  </div>
);
