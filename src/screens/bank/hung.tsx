import { add, forDrawing, half, type Length, subtract, zero } from '../../length/length';
import { markAt, type Tape } from '../../length/tape';
import { writeMark } from '../../length/write';
import type { BankPlan } from '../../plan/bank-plan';
import { runnerRow, runnerScrew } from '../../plan/runner-screws';
import type { Drawer, WorkedDrawers } from '../../trade/boxes/drawers';
import { carriesAt, gapOver, type Hung } from '../../trade/boxes/hung';
import { HungDrawing } from '../../ui/hung-drawing';
import type { Bench } from '../bench';
import { partWord } from '../shared/part-words';
import { listsOf } from '../shared/shop-lists';
import * as words from './hung-words';

type HungProps = {
  readonly bench: Pick<Bench, 'plan' | 'settings'>;
  readonly found: BankPlan;
  readonly worked: WorkedDrawers;
  readonly tape: Tape;
};

/** What boxes run on where that is no slide: one side drawn, screws, front ends, and what stops each drawer. */
export function HungIn({ bench, found, worked, tape }: HungProps) {
  const { hung } = worked.slides;
  const [first] = worked.drawers;
  if (!hung || !first) return null;
  const at = (x: Length) => writeMark(markAt(x, tape), tape);
  const face = faceOf(worked, first);
  const front = hung.groove ? sumOf(face, first.plan.front, hung.land, hung.room) : worked.slides.setBack;
  return (
    <section aria-label={words.runsOn[hung.how]}>
      <h2 class="sec pad-x">{words.runsOn[hung.how]}</h2>
      <div class="pad-x">
        <Drawn hung={hung} worked={worked} drawer={first} />
      </div>
      <p class="note pad-x">{words.frontEnd(hung.how, { front })}</p>
      <p class="note pad-x">
        {hung.groove
          ? words.strip(hung.thick, subtract(subtract(first.plan.depth, first.plan.front), hung.land))
          : words.rest(restsOn(hung, first))}
      </p>
      <Screwed {...{ bench, found, at }} />
      <h2 class="sec pad-x">{words.stopsTitle}</h2>
      {stopLines(worked).map((line) => (
        <p key={line} class="note pad-x">
          {line}
        </p>
      ))}
      <p class="note pad-x">{words.stopHow}</p>
    </section>
  );
}

const sumOf = (...all: readonly Length[]): Length => all.reduce(add, zero);

/** What stops each drawer; drawers that are stopped alike stand in one line. */
function stopLines(worked: WorkedDrawers): readonly string[] {
  const named = new Map<string, string[]>();
  for (const drawer of worked.drawers) {
    if (!drawer.hung) continue;
    const { stop } = drawer.hung;
    const says = words.stops({ ...stop, begins: add(faceOf(worked, drawer), stop.begins) });
    const name = partWord({ role: 'drawer', ...drawer.place });
    named.set(says, [...(named.get(says) ?? []), name]);
  }
  return [...named].map(([says, drawers]) => words.ofDrawers(drawers, says));
}

/** How far behind the face of case or frame the front of a box stands. */
const faceOf = ({ slides }: WorkedDrawers, { own, plan }: Drawer): Length =>
  subtract(slides.setBack, own ? plan.lap : zero);

/** What of a side lies on its runner: no more than it is thick. */
function restsOn({ thick, sidePlay }: Hung, { plan }: Drawer): Length {
  const on = subtract(thick, sidePlay);
  return on.lt(plan.side) ? on : plan.side;
}

type ScrewedProps = Pick<HungProps, 'bench' | 'found'> & { readonly at: (x: Length) => string };

function Screwed({ bench, found, at }: ScrewedProps) {
  const plan = bench.plan.value;
  const runner = found.parts.find(({ name }) => name.role === 'runner' || name.role === 'hangstrip');
  const row = runner && runnerRow(runner.length.mark.value, found.bank.units);
  if (!plan || !row) return null;
  const screw = runnerScrew(plan, found, listsOf(bench.settings.value).screws);
  return (
    <>
      <p class="note pad-x">{words.screwed({ marks: row.marks.map(at), long: screw?.pick })}</p>
      {screw && !screw.pick && <p class="note pad-x">{words.noScrew(screw.least, screw.most)}</p>}
    </>
  );
}

type DrawnProps = { readonly hung: Hung; readonly worked: WorkedDrawers; readonly drawer: Drawer };

const d = forDrawing;

/** One side to scale, its wall at the left; a high side broken. */
function Drawn({ hung, worked, drawer }: DrawnProps) {
  const { plan, high, no, hung: own } = drawer;
  if (!own) return null;
  const gap = gapOver(hung, { ...worked, no, high });
  const over = own.kicker ? add(high, hung.room) : gap && add(high, gap);
  const blockLow = over ?? add(high, hung.room);
  const carried = own.stop.on !== 'wall';
  return (
    <HungDrawing
      carrier={{ thick: d(hung.thick), low: d(carriesAt(hung)), high: d(hung.high) }}
      over={over && { low: d(over), high: d(hung.high) }}
      block={{
        from: carried ? d(hung.thick) : 0,
        to: carried ? d(add(hung.thick, hung.thick)) : d(own.stop.wide),
        low: d(blockLow),
        high: d(add(blockLow, carried ? hung.high : hung.thick)),
      }}
      play={d(hung.sidePlay)}
      side={d(plan.side)}
      height={d(high)}
      bottom={{
        up: d(add(plan.groove.up, half(plan.groove.fit))),
        thick: d(plan.bottom),
        into: d(plan.groove.deep),
      }}
      groove={hung.groove && { up: d(hung.groove.up), wide: d(hung.groove.wide), deep: d(hung.thick) }}
      label={words.section(hung.how)}
    />
  );
}
