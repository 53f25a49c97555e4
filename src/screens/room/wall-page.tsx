import type { Room } from '../../job/room';
import { editRoom } from '../../job/room-edits';
import { forDrawing, type Length } from '../../length/length';
import { cleatOf, ownStretch, type WithCases } from '../../plan/cleat-plan';
import { type WallPlan, wallPlanOf } from '../../plan/stud-plan';
import type { UsualRoom } from '../../trade/room/usual';
import { Chip } from '../../ui/button';
import { WallDrawing } from '../../ui/wall-drawing';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { Caution } from '../shared/caution';
import { lowerEdgeAsk, stretchAsks } from '../shared/cleat-asks';
import { CleatLines } from '../shared/cleat-lines';
import { FigureByFigure } from '../shared/figure-by-figure';
import { oneByOne } from '../shared/figure-by-figure-words';
import { MarkAndRest } from '../shared/mark-and-rest';
import { lengthRefused } from '../shared/refused-words';
import { Acts, Sentence } from '../shared/sentence';
import { Note, type Slip, Wrong } from './spots';
import { wallSteps } from './wall-steps';
import * as words from './wall-words';
import { Zones } from './zones';
import './room.css';

type WallProps = { readonly bench: Bench; readonly on: WithCases; readonly slip: Slip };
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
export function WallPage({ bench, on, slip }: WallProps) {
  const { room, found, open, onOpen } = slip;
  const wall = wallPlanOf(on);
  const { cases } = on.job;
  const isShared = cases.length === 0 || cases.some(({ id }) => !ownStretch(on.job, id));
  const steps = wallSteps(on);
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
      {isShared && <Fixings wall={wall} on={on} />}
      {steps.length > 0 && (
        <p class="pad-x chips">
          <Chip label={oneByOne} onTap={() => bench.go({ at: 'room', page: 'wall', step: 'next' })} />
        </p>
      )}
      <Sentence label={words.titles.found}>{words.studLine(blanks)}</Sentence>
      <Sentence label={words.titles.cleatFrom}>
        {words.cleatLine(blanks)}
        {isShared && wall.found && !wall.found.ok && <Wrong says={words.studErrorText(wall.found.error)} />}
      </Sentence>
      <Held {...{ bench, on, slip }} />
      <Zones {...slip} zones={wall.zones} />
      <Note says={words.promise} />
    </>
  );
}

type MarkProps = { readonly bench: Bench; readonly on: WithCases; readonly step: string };

/** The marks on the wall, one at a time. */
export const MarkByMark = ({ bench, on, step }: MarkProps) => (
  <FigureByFigure
    {...{ bench, step }}
    heading={words.marking}
    steps={wallSteps(on)}
    caution="anchor"
    does={words.marked}
    leave={() => bench.go({ at: 'room', page: 'wall' })}
    goTo={(to) => bench.go({ at: 'room', page: 'wall', step: to }, true)}
  />
);

/**
 * The cleat of each case: how high it stands is said here; what the screws go through on the anchor card, with the
 * screws themselves.
 */
function Held({ bench, on, slip: { open, onOpen } }: WallProps) {
  const plan = bench.plan.value;
  const { cases } = on.job;
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  return (
    <>
      {cases.map(({ id, name }) => {
        const of = cases.length > 1 ? name : '';
        const own = plan && cleatOf({ ...plan, job: on.job }, id);
        const stretch = stretchAsks(on, id, name);
        return (
          <Sentence key={id} label={lowerEdgeAsk(on, id, of).title}>
            {words.through(of, own?.thick, own?.wide)}
            {words.stands(blank(lowerEdgeAsk(on, id, of)))}
            {of && words.goesFrom({ from: blank(stretch.from), to: blank(stretch.to) })}
            <CleatLines on={on} place={id} />
            <Acts>
              <Chip label={words.toAnchors} onTap={() => bench.go({ at: 'screws', id })} />
            </Acts>
            {of && ownStretch(on.job, id) && <OwnFixings on={on} id={id} of={of} />}
          </Sentence>
        );
      })}
    </>
  );
}

/** Where the cleat of one case of several is fastened. */
function OwnFixings({ on, id, of }: { readonly on: WithCases; readonly id: string; readonly of: string }) {
  const wall = wallPlanOf(on, id);
  if (wall.found && !wall.found.ok) return <Wrong says={words.studErrorText(wall.found.error)} />;
  return <Fixings wall={wall} on={on} of={of} />;
}

type FixingsProps = {
  readonly wall: WallPlan;
  readonly on: WithCases;
  /** The case whose own cleat it is. */
  readonly of?: string;
};

/** Where a screw goes, with the mark, and why not elsewhere. */
function Fixings({ wall, on, of }: FixingsProps) {
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
    <section aria-label={words.of(of ?? '', words.theWall)}>
      <WallDrawing
        cleat={line(cleat)}
        zones={zones.map((zone) => ({ ...line(zone), what: '' }))}
        fix={fix.map(({ value }) => forDrawing(value))}
        refused={refused.map(({ at }) => forDrawing(at.value))}
        stud={forDrawing(stud)}
        label={words.of(of ?? '', words.drawn)}
      />
      <h2 class="sec pad-x">{words.of(of ?? '', words.fixAt(fix.length))}</h2>
      {tooFew && <Wrong says={words.tooFew(fix.length)} />}
      <ol class="studlist pad-x rests">
        {fix.map((mark, k) => (
          <li key={k}>
            <span>{k + 1}</span>
            <MarkAndRest mark={mark} tape={on.job.tape} />
          </li>
        ))}
      </ol>
      {refused.map((one, k) => (
        <Note key={k} says={words.refusedText(one)} />
      ))}
    </section>
  );
}
