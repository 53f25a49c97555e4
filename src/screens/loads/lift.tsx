import { useState } from 'preact/hooks';
import type { Job } from '../../job/job';
import { type Ratio, ratio } from '../../length/length';
import { liftables, liftOf } from '../../plan/lift-check';
import type { Plan } from '../../plan/plan';
import {
  type CaseWeights,
  type DrawerLoad,
  mostOf,
  movingIn,
  stackOf,
  tippingOf,
  weightsOf,
} from '../../plan/weights-plan';
import type { Case } from '../../trade/carcass/case';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskPage } from '../shared/ask-page';
import { Caution } from '../shared/caution';
import { GonePage } from '../shared/gone-page';
import { unweighed } from '../shared/lot-words';
import { partWord } from '../shared/part-words';
import * as asks from './lift-asks';
import * as words from './lift-words';
import { noCase, notWorked, title as toLoads } from './words';
import '../shared/drawer-row.css';

/** What a case weighs, how it is moved in and lifted, and whether pulled drawers tip it. */
export function LiftScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const [open, setOpen] = useState<Ask>();
  const plan = bench.plan.value;
  const c = plan?.job.cases.find((x) => x.id === id);
  const leave = { label: toLoads, onTap: () => bench.go({ at: 'loads', id }) };
  if (!plan || !c) return <GonePage title={words.title} leave={{ ...leave, word: true }} says={noCase} />;
  const own = weightsOf(plan, c);
  const part: Section = { plan, job: plan.job, c, own, open, onOpen: setOpen };
  return (
    <AskPage
      {...{ bench, leave }}
      title={words.title}
      sub={c.name || toLoads}
      tape={plan.job.tape}
      asked={{ open, close: () => setOpen(undefined) }}
    >
      <Caution bench={bench} code="carry-in" />
      {plan.worked.get(id)?.ok ? (
        <>
          <Weighs {...part} />
          <Moving {...part} />
          <OneLift {...part} />
          <Tips {...part} />
          <Tally plan={plan} drawers={own.drawers} />
        </>
      ) : (
        <p class="pad-x wrongline">{notWorked}</p>
      )}
    </AskPage>
  );
}

type Section = {
  readonly plan: Plan;
  readonly job: Job;
  readonly c: Case;
  readonly own: CaseWeights;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

const blanksOf =
  ({ open, onOpen }: Pick<Section, 'open' | 'onOpen'>) =>
  (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;

const notesOf = ({ job, c }: Pick<Section, 'job' | 'c'>) => ({ of: c.id, notes: job.lifts[c.id] ?? {} });

/** Part by part, with the sum so far. */
function Weighs(part: Section) {
  const { own, job } = part;
  const blank = blanksOf(part);
  const at = notesOf(part);
  const { weights, parts } = own;
  if (!weights.ok) return null;
  const { sums, pieces, all } = weights.value;
  const named = (id: string): string => {
    const found = parts.get(id);
    return found ? partWord(found.name) : words.hardware;
  };
  return (
    <section class="drawerrow" aria-label={words.weighs}>
      <h2 class="sec">{words.weighs}</h2>
      <p class="lit">{words.sums(sums.case.add(sums.hardware) as Ratio, sums.loose, sums.drawer, all)}</p>
      <p class="fillin thing">{words.restLine(blank(asks.restAsk(at)), blank(asks.onAsk(at, job)))}</p>
      <ul class="plainlist">
        {pieces.map((x) => (
          <li key={x.id} class="kv">
            <span>{named(x.id)}</span>
            <span class="s">{words.running(x.one, parts.get(x.id)?.copies ?? 1, x.running)}</span>
          </li>
        ))}
      </ul>
      {own.unknown.length > 0 && (
        <p class="wrongline">{words.unknown(own.unknown.map(({ name }) => partWord(name)))}</p>
      )}
    </section>
  );
}

/** What comes out, what is set, levelled and anchored, what goes back: lower case first. */
function Moving({ plan, c, own }: Section) {
  const found = movingIn(plan, c);
  const named = nameIn(plan, c, own);
  return (
    <section class="drawerrow" aria-label={words.moving}>
      <h2 class="sec">{words.moving}</h2>
      {found.ok && (
        <ol class="plainlist">
          {found.value.map((x, k) => (
            <li key={k} class={'over' in x && x.over ? 'lit' : ''}>
              {words.step(x, named(x.id))}
            </li>
          ))}
          <li>{words.thenLoad}</li>
        </ol>
      )}
    </section>
  );
}

/** What a drawer is called among others: two banks of a case each have a first. */
function drawerName({ job }: Plan, { bank, no, column }: DrawerLoad, among: readonly DrawerLoad[]): string {
  const several = among.some((other) => other.bank !== bank);
  return words.drawer(no, column, several ? job.banks.find(({ id }) => id === bank)?.name : undefined);
}

/** What a case, a drawer or a part of the stack is called. */
function nameIn(plan: Plan, c: Case, own: CaseWeights): (id: string) => string {
  const stack = stackOf(plan.job, c);
  return (id) => {
    const found = stack.find((x) => x.id === id);
    if (found) return found.name || words.theCase;
    const all = stack.flatMap((x) => (x === c ? own.drawers : weightsOf(plan, x).drawers));
    const drawer = all.find((x) => x.id === id);
    if (drawer) return drawerName(plan, drawer, all);
    const part = plan.parts.find((x) => x.id === id);
    return part ? words.allOf(partWord(part.name), part.copies) : words.hardware;
  };
}

/** One load lifted by one person. */
function OneLift(part: Section) {
  const { plan, own, job } = part;
  const blank = blanksOf(part);
  const at = notesOf(part);
  const loads = liftables(plan, own).map((x) => ({ ...x, name: nameOf(plan, x, own) }));
  const load = loads.find((x) => x.id === (at.notes.what ?? 'case')) ?? loads[0];
  if (!load) return null;
  const found = liftOf(plan, at.notes, load);
  const lacks = load.code === 'full-drawer' ? (own.drawers[load.drawer]?.unweighed ?? 0) : 0;
  return (
    <section class="drawerrow" aria-label={words.oneLift}>
      <h2 class="sec">{words.oneLift}</h2>
      <p class="fillin thing">
        {words.lift({
          what: blank(asks.whatAsk(at, loads)),
          grip: blank(asks.gripAsk(at)),
          careful: blank(asks.carefulAsk(at)),
          out: blank(asks.handsAsk(at, 'out')),
          up: blank(asks.handsAsk(at, 'up')),
          turn: blank(asks.turnAsk(at, 'turn')),
          toOut: blank(asks.handsAsk(at, 'toOut')),
          toUp: blank(asks.handsAsk(at, 'toUp')),
          toTurn: blank(asks.turnAsk(at, 'toTurn')),
        })}
      </p>
      <p class="s">{words.beside(load.pounds, mostOf(job))}</p>
      {found.asked.length > 0 && <p class="nextblank">{words.asksFor(found.asked.map(words.blankName))}</p>}
      {found.says && (
        <Says says={found.says} load={load.pounds} most={mostOf(job)} cures={found.cures} lacks={lacks} />
      )}
      {lacks > 0 && <p class="lit">{words.weighsMore(lacks)}</p>}
      <p class="s muted">{words.notCovered}</p>
    </section>
  );
}

type Load = ReturnType<typeof liftables>[number];

function nameOf(plan: Plan, load: Load, { drawers, parts }: CaseWeights): string {
  switch (load.code) {
    case 'case':
      return words.emptyCase;
    case 'sheet':
      return load.name || words.sheet;
    case 'part': {
      const part = parts.get(load.id);
      return part ? partWord(part.name) : words.hardware;
    }
    default: {
      const drawer = drawers[load.drawer];
      const name = drawer ? drawerName(plan, drawer, drawers) : words.hardware;
      return words.loaded(name, load.code === 'full-drawer');
    }
  }
}

type SaysProps = {
  readonly says: NonNullable<ReturnType<typeof liftOf>['says']>;
  readonly cures: ReturnType<typeof liftOf>['cures'];
  readonly load: Ratio;
  readonly most: Ratio;
  /** Things in it that nobody weighed. */
  readonly lacks: number;
};

function Says({ says, cures, load, most, lacks }: SaysProps) {
  if (!says.ok)
    return (
      <p class="wrongline">
        <Icon name="warn" />
        {words.liftErrorText(says.error)}
      </p>
    );
  const { start, end, over } = says.value;
  return (
    <>
      <p class={over ? 'lit' : 's'}>{words.verdict(says.value, load, most, lacks)}</p>
      <p class="s muted">{words.limit('start', start)}</p>
      {end && <p class="s muted">{words.limit('end', end)}</p>}
      {cures.length > 0 && (
        <ul class="plainlist">
          {cures.map((x) => (
            <li key={x.code}>{words.cure(x)}</li>
          ))}
        </ul>
      )}
    </>
  );
}

/** Drawers out against what stands behind the front; anchored always. */
function Tips({ own }: Section) {
  const found = tippingOf(own);
  return (
    <section class="drawerrow" aria-label={words.tipping}>
      <h2 class="sec">{words.tipping}</h2>
      <p class="lit">{words.anchorAlways}</p>
      {!found && <p class="s">{words.noDrawers}</p>}
      {found?.all.ok && <p class="s">{words.tip('all', found.all.value)}</p>}
      {found?.one.ok && <p class="s">{words.tip('one', found.one.value)}</p>}
      {found?.all.ok && <p class="s">{words.outAtMost(found.all.value.outAtMost)}</p>}
      {found && found.loose.n > 0n && (
        <p class="s">
          {words.looseOut(found.loose)}
          {unweighed(own.unweighed)}
        </p>
      )}
      {found && found.unweighed > 0 && <p class="lit">{words.drawersUnweighed(found.unweighed)}</p>}
    </section>
  );
}

/** The load of each drawer beside what its pair carries. */
function Tally({ plan, drawers }: { readonly plan: Plan; readonly drawers: readonly DrawerLoad[] }) {
  if (drawers.length === 0) return null;
  return (
    <section class="drawerrow" aria-label={words.tally}>
      <h2 class="sec">{words.tally}</h2>
      <ul class="plainlist">
        {drawers.map((drawer) => {
          const { id, full, things, unweighed: not, says } = drawer;
          const share =
            says.code === 'rating-missing' ? undefined : Math.round(says.share.mul(ratio(100n)).valueOf());
          return (
            <li key={id} class="kv">
              <span>{drawerName(plan, drawer, drawers)}</span>
              <span class={says.code === 'over' || says.code === 'near' ? 'lit' : 's'}>
                {words.drawerSays({
                  full,
                  things,
                  unweighed: not,
                  share,
                  code: says.code,
                  inWood: drawer.inWood,
                })}
              </span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
