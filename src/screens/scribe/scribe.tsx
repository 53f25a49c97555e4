import type { Change } from '../../job/entry';
import type { Job } from '../../job/job';
import { editGap } from '../../job/room-edits';
import { caseInRoom } from '../../plan/case-in-room';
import { roomPlanOf } from '../../plan/room-plan';
import { type ScribeSide, scribeSides } from '../../plan/scribe-plan';
import { BarButton } from '../../ui/bar';
import { Chip } from '../../ui/button';
import { Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskPage } from '../shared/ask-page';
import { Caution } from '../shared/caution';
import { FigureByFigure } from '../shared/figure-by-figure';
import { oneByOne } from '../shared/figure-by-figure-words';
import { GonePage } from '../shared/gone-page';
import { leave } from '../shared/leave';
import { Acts, Sentence } from '../shared/sentence';
import { useTried } from '../shared/use-tried';
import { gapAsks, hangAsk } from './asks';
import { Drawn, Wrong } from './drawn';
import { Fillers } from './fillers';
import { scribeSteps } from './steps';
import * as words from './words';
import { wrongsOf } from './wrongs';

type ScribeProps = { readonly bench: Bench; readonly id: string };
type ScreenProps = ScribeProps & { readonly step?: string | undefined };

/** Both edges of a case scribed to their walls, and the strips that fill what is left. */
export function ScribeScreen({ bench, id, step }: ScreenProps) {
  const job = bench.job.value;
  const c = job?.cases.find((each) => each.id === id);
  const back = () => leave(bench, { at: 'room' });
  if (job && c && step !== undefined)
    return (
      <FigureByFigure
        {...{ bench, step }}
        heading={words.heading(c.name || words.aCase)}
        steps={scribeSteps(job, id)}
        caution="marks"
        does={words.does}
        leave={() => leave(bench, { at: 'scribe', id })}
        goTo={(to) => bench.go({ at: 'scribe', id, step: to }, true)}
      />
    );
  if (job && c) return <Scribed {...{ bench, id, job, back }} name={c.name || words.aCase} />;
  return (
    <GonePage
      title={words.title}
      leave={{ label: words.back, word: true, onTap: back }}
      says={words.noCase}
    />
  );
}

type ScribedProps = ScribeProps & {
  readonly job: Job;
  readonly name: string;
  readonly back: () => void;
};

function Scribed({ bench, id, job, name, back }: ScribedProps) {
  const tried = useTried({ bench, kept: job, wrongs: (each) => wrongsOf(each, id) });
  const { open, onOpen } = tried;
  const act = (label: string, changes: readonly Change[]) => void bench.act(label, changes);
  const worked = bench.plan.value?.worked.get(id);
  const rooms = roomPlanOf(job);
  const room = worked?.ok ? caseInRoom(job, rooms, worked.value) : undefined;
  const sides = scribeSides(job, id);
  return (
    <AskPage
      bench={bench}
      title={words.title}
      sub={name}
      leave={{ label: words.back, onTap: back }}
      tape={job.tape}
      asked={tried}
    >
      <p class="pad-x empty-line">{words.when}</p>
      <Caution bench={bench} code="marks" />
      {sides.map((side) => (
        <Side key={side.side} {...{ id, job, side, open, act, onOpen }} newId={bench.newId} />
      ))}
      {scribeSteps(job, id).length > 0 && (
        <p class="pad-x chips">
          <Chip label={oneByOne} onTap={() => bench.go({ at: 'scribe', id, step: 'next' })} />
        </p>
      )}
      <Fillers {...{ bench, id, job, room, rooms, sides, open, onOpen }} />
    </AskPage>
  );
}

type SideProps = {
  readonly id: string;
  readonly job: Job;
  readonly side: ScribeSide;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
  readonly act: (label: string, changes: readonly Change[]) => void;
  readonly newId: () => string;
};

function Side({ id, job, side, open, onOpen, act, newId }: SideProps) {
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  const add = () => {
    const gap = newId();
    act(words.gapAdded(side.side), editGap(id, gap, { side: side.side }));
    onOpen(gapAsks(id, side.side, { id: gap }, side.gaps.length + 1).at);
  };
  return (
    <section aria-label={words.sides[side.side]}>
      <div class="sechead">
        <h2 class="sec">{words.sides[side.side]}</h2>
        <BarButton icon="plus" label={words.addGap} boxed onTap={add} />
      </div>
      <Line side={side} tape={job.tape} />
      {side.gaps.map((gap, k) => {
        const asks = gapAsks(id, side.side, gap, k + 1);
        return (
          <Sentence key={gap.id} label={words.gapAt(side.side, k + 1)}>
            {words.gapLine({ at: blank(asks.at), gap: blank(asks.gap) })}
            <Acts>
              <Chip
                label={words.takeAway}
                onTap={() => act(words.takenAway(side.side), editGap(id, gap.id, { gone: true }))}
              />
            </Acts>
          </Sentence>
        );
      })}
      {side.differs && (
        <div class="pad-x">
          <Wrong says={words.differsText(side.differs.at, side.differs.read, side.differs.byLines)} />
        </div>
      )}
      {side.gaps.length > 0 && (
        <Sentence label={words.hang(side.side)}>
          {words.hangLine(blank(hangAsk(id, side)))}
          {side.found?.ok && side.found.value.short && (
            <Wrong says={words.short(side.found.value.short.need, side.found.value.short.by)} />
          )}
        </Sentence>
      )}
    </section>
  );
}

/** The compass, as large as a hand needs it, the line, and what comes off at each place. */
function Line({ side, tape }: { readonly side: ScribeSide; readonly tape: Job['tape'] }) {
  const { found } = side;
  if (!found) return <p class="pad-x note">{words.read}</p>;
  if (!found.ok)
    return (
      <div class="pad-x">
        <Wrong says={words.errorText(found.error)} />
      </div>
    );
  const { compass, off, need, short } = found.value;
  return (
    <div class="pad-x rests">
      <p class="muted">{words.compass}</p>
      <Mixed value={compass} size="arm" tape="1/64" />
      <Drawn side={side.side} off={off} tape={tape} />
      {off.map(({ at, value }, k) => (
        <p key={k} class="s">
          {words.offHere(at, value)}
        </p>
      ))}
      {!short && <p class="s">{words.needs(need)}</p>}
      <p class="note">{words.how}</p>
    </div>
  );
}
