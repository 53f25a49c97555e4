import type { Job } from '../../job/job';
import type { Room, ZoneRead } from '../../job/room';
import { editRoom, editZone } from '../../job/room-edits';
import { forDrawing, type Length } from '../../length/length';
import { cleatOf } from '../../plan/put-up-plan';
import { type WallPlan, wallPlanOf } from '../../plan/stud-plan';
import type { UsualRoom } from '../../trade/room/usual';
import { Chip } from '../../ui/button';
import { WallDrawing } from '../../ui/wall-drawing';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { Caution } from '../shared/caution';
import { FigureByFigure } from '../shared/figure-by-figure';
import { oneByOne } from '../shared/figure-by-figure-words';
import { MarkAndRest } from '../shared/mark-and-rest';
import { lengthRefused } from '../shared/refused-words';
import { Acts, Sentence } from '../shared/sentence';
import { Head, Note, type Slip, Wrong } from './spots';
import { wallSteps } from './wall-steps';
import * as words from './wall-words';
import './room.css';

type WallProps = { readonly bench: Bench; readonly job: Job; readonly slip: Slip };
type WallLength = Exclude<keyof typeof words.titles, 'foundEdge'>;

const wallLength = (room: Room, field: WallLength, usual?: Length): Ask => ({
  as: 'length',
  title: words.titles[field],
  kind: 'place',
  now: room[field],
  usual,
  ...(field === 'stud' || field === 'spacing' ? { refuse: lengthRefused } : {}),
  save: (value) => editRoom({ [field]: value }),
});

/** The blanks of studs and cleat. */
const wallAsks = (room: Room, usual: UsualRoom): Readonly<Record<keyof typeof words.titles, Ask>> => ({
  found: wallLength(room, 'found'),
  foundEdge: {
    as: 'choice',
    title: words.titles.foundEdge,
    now: room.foundEdge ?? 'left',
    choices: (['left', 'right'] as const).map((value) => ({ value, label: words.edges[value] })),
    save: (to) => editRoom({ foundEdge: to === 'right' ? 'right' : 'left' }),
  },
  stud: wallLength(room, 'stud', usual.stud),
  spacing: wallLength(room, 'spacing'),
  cleatFrom: wallLength(room, 'cleatFrom'),
  cleatTo: wallLength(room, 'cleatTo'),
  cleatEnd: wallLength(room, 'cleatEnd', usual.end),
  keep: wallLength(room, 'keep', usual.keep),
});

/** Studs from one found edge, and the places where nothing may be fastened. */
export function WallPage({ bench, job, slip }: WallProps) {
  const { room, found, open, onOpen } = slip;
  const wall = wallPlanOf(job);
  const blanks = Object.fromEntries(
    Object.entries(wallAsks(room, found.usual)).map(([name, ask]) => [
      name,
      <AskBlank key={name} ask={ask} open={open} onOpen={onOpen} />,
    ]),
  ) as Parameters<typeof words.studLine>[0];
  return (
    <>
      <p class="pad-x empty-line">{words.start}</p>
      <Caution bench={bench} code="anchor" />
      <Fixings wall={wall} job={job} />
      {wall.found?.ok && (
        <p class="pad-x chips">
          <Chip label={oneByOne} onTap={() => bench.go({ at: 'room', page: 'wall', step: 'next' })} />
        </p>
      )}
      <Sentence label={words.titles.found}>{words.studLine(blanks)}</Sentence>
      <Sentence label={words.titles.cleatFrom}>
        {words.cleatLine(blanks)}
        {wall.found && !wall.found.ok && <Wrong says={words.studErrorText(wall.found.error)} />}
      </Sentence>
      <Held bench={bench} />
      <Zones {...slip} zones={wall.zones} />
      <Note says={words.promise} />
    </>
  );
}

type MarkProps = { readonly bench: Bench; readonly job: Job; readonly step: string };

/** The marks on the wall, one at a time. */
export const MarkByMark = ({ bench, job, step }: MarkProps) => (
  <FigureByFigure
    {...{ bench, step }}
    heading={words.marking}
    steps={wallSteps(job)}
    caution="anchor"
    does={words.marked}
    leave={() => bench.go({ at: 'room', page: 'wall' })}
    goTo={(to) => bench.go({ at: 'room', page: 'wall', step: to }, true)}
  />
);

/** What the screws go through, case by case: it is said on the anchor card, with the screws themselves. */
function Held({ bench }: Pick<WallProps, 'bench'>) {
  const plan = bench.plan.value;
  const cases = plan?.job.cases ?? [];
  return (
    <>
      {cases.map(({ id, name }) => {
        const own = plan && cleatOf(plan, id);
        return (
          <p key={id} class="fillin run">
            {words.through(cases.length > 1 ? name : '', own?.thick, own?.wide)}
            <Acts>
              <Chip label={words.toAnchors} onTap={() => bench.go({ at: 'screws', id })} />
            </Acts>
          </p>
        );
      })}
    </>
  );
}

/** Where a screw goes, with the mark, and why not elsewhere. */
function Fixings({ wall, job }: { readonly wall: WallPlan; readonly job: Job }) {
  if (!wall.plan || !wall.found)
    return wall.asks.length > 0 ? <Note says={words.askText(wall.asks)} /> : null;
  if (!wall.found.ok) return null;
  const { fix, refused, tooFew } = wall.found.value;
  const { cleat, zones, stud } = wall.plan;
  const line = (x: { readonly from: Length; readonly to: Length }) => ({
    from: forDrawing(x.from),
    to: forDrawing(x.to),
  });
  return (
    <section aria-label={words.theWall}>
      <WallDrawing
        cleat={line(cleat)}
        zones={zones.map((zone) => ({ ...line(zone), what: '' }))}
        fix={fix.map(({ value }) => forDrawing(value))}
        refused={refused.map(({ at }) => forDrawing(at.value))}
        stud={forDrawing(stud)}
        label={words.drawn}
      />
      <h2 class="sec pad-x">{words.fixAt(fix.length)}</h2>
      {tooFew && <Wrong says={words.tooFew(fix.length)} />}
      <ol class="studlist pad-x rests">
        {fix.map((mark, k) => (
          <li key={k}>
            <span>{k + 1}</span>
            <MarkAndRest mark={mark} tape={job.tape} />
          </li>
        ))}
      </ol>
      {refused.map((one, k) => (
        <Note key={k} says={words.refusedText(one)} />
      ))}
    </section>
  );
}

/** The blanks of one place where nothing may be fastened. */
const zoneAsks = (zone: ZoneRead, no: number): Readonly<Record<'what' | 'from' | 'to', Ask>> => {
  const length = (field: 'from' | 'to', title: string): Ask => ({
    as: 'length',
    title,
    kind: 'place',
    now: zone[field],
    save: (value) => editZone(zone.id, { [field]: value }),
  });
  return {
    what: {
      as: 'text',
      title: words.zoneWhat(no),
      now: zone.what || words.something,
      save: (what) => editZone(zone.id, { what }),
    },
    from: length('from', words.zoneFrom(no)),
    to: length('to', words.zoneTo(no)),
  };
};

function Zones({ zones, open, onOpen, act, newId }: Slip & { readonly zones: readonly ZoneRead[] }) {
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  return (
    <>
      <Head
        title={words.zones}
        add={words.addZone}
        onAdd={() => act(words.zoneAdded, editZone(newId(), { what: words.something }))}
      />
      <Note says={words.zonesTold} />
      {zones.map((zone, k) => {
        const asks = zoneAsks(zone, k + 1);
        const name = zone.what || words.something;
        return (
          <Sentence key={zone.id} label={name}>
            {words.zoneLine({ what: blank(asks.what), from: blank(asks.from), to: blank(asks.to) })}
            <Acts>
              <Chip
                label={words.takeAway}
                onTap={() => act(words.takenAway(name), editZone(zone.id, { gone: true }))}
              />
            </Acts>
          </Sentence>
        );
      })}
    </>
  );
}
