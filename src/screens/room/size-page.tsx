import type { Job } from '../../job/job';
import { editRoom } from '../../job/room-edits';
import { isPositive } from '../../length/length';
import { grainOf } from '../../length/tape';
import type { CaseInRoom } from '../../plan/case-in-room';
import type { RoomPlan } from '../../plan/room-plan';
import { cornerMisread } from '../../trade/room/corner';
import { Button } from '../../ui/button';
import { Mixed } from '../../ui/mixed';
import { PlanDrawing } from '../../ui/plan-drawing';
import { RoomDrawing } from '../../ui/room-drawing';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { InRoom } from '../shared/in-room';
import { Sentence } from '../shared/sentence';
import { cornerAsks, freeAsks, roomLength } from './asks';
import { drawnPlan, drawnRoom, leans } from './drawn';
import * as said from './said';
import { AcrossSpots, Head, Note, type Slip, UprightSpots, Wrong } from './spots';
import * as words from './words';
import './room.css';

type PageProps = {
  readonly bench: Bench;
  readonly job: Job;
  readonly slip: Slip;
  readonly cases: readonly CaseInRoom[];
};

/** How wide and how high it is, and what goes in. */
export function SizePage({ bench, job, slip, cases }: PageProps) {
  const [first] = cases;
  const drawn = drawnRoom(job, slip.found, first);
  const plan = first && drawnPlan(job, slip.found, first);
  return (
    <>
      <Greatest found={slip.found} job={job} />
      {drawn && <RoomDrawing {...drawn} label={words.drawn} />}
      {drawn && leans(slip.found) && <Note says={words.drawnTenfold} />}
      {cases.map((found) => (
        <OneCase key={found.id} {...{ bench, job, found }} />
      ))}
      {plan && <PlanDrawing {...plan} label={words.drawnAbove} />}
      {plan && <Note says={words.planTold(first.corners.length > 0)} />}
      <TapeUsed {...slip} />
      <AcrossSpots {...slip} />
      <UprightSpots {...slip} />
      <Free {...slip} />
      <Corner {...slip} side="left" job={job} cases={cases} />
      <Corner {...slip} side="right" job={job} cases={cases} />
    </>
  );
}

/** The greatest case, as large as a hand needs it. */
function Greatest({ found, job }: { readonly found: RoomPlan; readonly job: Job }) {
  const { widest, highest } = found;
  if (!widest && !highest) return <p class="pad-x empty-line">{words.start}</p>;
  return (
    <dl class="greatest pad-x rests">
      <div>
        <dt>{words.widest}</dt>
        <dd>{widest?.ok ? <Mixed value={widest.value.value} size="arm" tape={job.tape} /> : words.notYet}</dd>
      </div>
      <div>
        <dt>{words.highest}</dt>
        <dd>
          {highest?.ok ? <Mixed value={highest.value.value} size="arm" tape={job.tape} /> : words.notYet}
        </dd>
      </div>
    </dl>
  );
}

type CaseProps = { readonly bench: Pick<Bench, 'go'>; readonly job: Job; readonly found: CaseInRoom };

const nameIn = (job: Job, id: string): string => job.cases.find((c) => c.id === id)?.name || words.aCase;

const OneCase = ({ bench, job, found }: CaseProps) => (
  <section class="pad-x onecase" aria-label={nameIn(job, found.id)}>
    <h2 class="sec">{nameIn(job, found.id)}</h2>
    <InRoom found={found} />
    <div class="adds">
      <Button label={words.toLevel} onTap={() => bench.go({ at: 'level', id: found.id })} />
      <Button label={words.toScribe} onTap={() => bench.go({ at: 'scribe', id: found.id })} />
    </div>
  </section>
);

/** Burned start and tape body as switches that stay lit, with what each takes off or adds. */
function TapeUsed({ room, found, open, onOpen, act }: Slip) {
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  const both = room.burned && room.inside;
  const set = (field: 'burned' | 'inside') => {
    const on = !room[field];
    act(words.switched(words.tapeSwitch[field], on), editRoom({ [field]: on }));
  };
  return (
    <>
      <Head title={words.tapeUsed} />
      <div class="chips pad-x wrap">
        {(['burned', 'inside'] as const).map((field) => (
          <button
            key={field}
            type="button"
            class="chip"
            aria-pressed={room[field] === true}
            onClick={() => set(field)}
          >
            {words.tapeSwitch[field]}
          </button>
        ))}
      </div>
      {room.burned && (
        <Sentence label={words.burnedAt}>
          {words.burnedTold(blank(roomLength(room, 'burnedAt', found.usual.burned)))}
        </Sentence>
      )}
      {room.inside && (
        <Sentence label={words.bodyLong}>
          {words.bodyTold(blank(roomLength(room, 'body')))}
          {found.asks.includes('body') && <Wrong says={said.askText.body} />}
        </Sentence>
      )}
      {both && <Wrong says={words.bothUsed} />}
    </>
  );
}

function Free({ room, found, open, onOpen }: Slip) {
  const asks = freeAsks(room, found.usual);
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  return (
    <>
      <Head title={words.free} />
      <Sentence label={words.free}>
        {words.freeLine({
          left: blank(asks.left),
          right: blank(asks.right),
          gap: blank(asks.gap),
          how: blank(asks.how),
        })}
      </Sentence>
    </>
  );
}

type CornerProps = Slip & Pick<PageProps, 'job' | 'cases'> & { readonly side: 'left' | 'right' };

function Corner({ room, found, open, onOpen, side, job, cases }: CornerProps) {
  const asks = cornerAsks(room, side);
  const corner = found.corners[side];
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  return (
    <>
      <Head title={words.corner[side]} />
      <Sentence label={words.corner[side]}>
        {words.cornerLine({ back: blank(asks.back), side: blank(asks.side), across: blank(asks.across) })}
        {corner && !corner.ok && <Wrong says={said.cornerErrorText(corner.error)} />}
      </Sentence>
      {corner?.ok && (
        <Note
          says={[
            words.cornerTold(corner.value.inAt, corner.value.legs.side),
            ...cases.flatMap((c) =>
              c.corners.flatMap((each) =>
                each.side === side && each.over.n !== 0n
                  ? [words.overDepth(each.over, c.outside.stands.depth, nameIn(job, c.id))]
                  : [],
              ),
            ),
            ...(isPositive(cornerMisread(corner.value, grainOf(job.tape)))
              ? [words.misread(grainOf(job.tape), cornerMisread(corner.value, grainOf(job.tape)))]
              : []),
          ].join(' ')}
        />
      )}
    </>
  );
}
