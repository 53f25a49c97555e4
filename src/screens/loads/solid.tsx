import { usualIn } from '../../job/in-units';
import type { Job } from '../../job/job';
import type { Length } from '../../length/length';
import type { Plan } from '../../plan/plan';
import { type SolidPart, solidParts, yearOf } from '../../plan/solid-plan';
import type { Case } from '../../trade/carcass/case';
import { frontLimits } from '../../trade/movement/front';
import { Button } from '../../ui/button';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskPage } from '../shared/ask-page';
import { GonePage } from '../shared/gone-page';
import { partWord } from '../shared/part-words';
import { useTried } from '../shared/use-tried';
import * as asks from './solid-asks';
import * as words from './solid-words';
import { noCase, notWorked, title as toLoads } from './words';
import '../shared/drawer-row.css';

/** Which parts of solid wood move with the year, how far, and the slots and gaps that follow. */
export function SolidScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const plan = bench.plan.value;
  const c = plan?.job.cases.find((x) => x.id === id);
  if (plan && c) return <Solid {...{ bench, plan, c }} />;
  const leave = { label: toLoads, word: true, onTap: () => bench.go({ at: 'loads', id }) };
  return <GonePage title={words.title} leave={leave} says={noCase} />;
}

type SolidProps = { readonly bench: Bench; readonly plan: Plan; readonly c: Case };

function Solid({ bench, plan, c }: SolidProps) {
  const { job } = plan;
  const { id } = c;
  const tried = useTried({ bench, kept: job, wrongs: (each) => wrongsOf({ ...plan, job: each }, c) });
  const { open, onOpen } = tried;
  const leave = { label: toLoads, onTap: () => bench.go({ at: 'loads', id }) };
  const parts = solidParts(plan, c);
  return (
    <AskPage {...{ bench, leave }} title={words.title} sub={c.name || toLoads} tape={job.tape} asked={tried}>
      <p class="pad-x empty-line">{words.why}</p>
      <YearSentence job={job} open={open} onOpen={onOpen} />
      {!plan.worked.get(id)?.ok && <p class="pad-x wrongline">{notWorked}</p>}
      {parts.length === 0 && <p class="pad-x empty-line">{words.none}</p>}
      {parts.map((x) => (
        <Moves key={x.part.id} {...{ bench, job, x, open, onOpen }} />
      ))}
    </AskPage>
  );
}

/** All that is wrong with the year and the parts that move in it, by how much. */
function wrongsOf(plan: Plan, c: Case): readonly string[] {
  const { season } = yearOf(plan.job);
  if (!season.ok) return season.error.code === 'now-missing' ? [] : [words.yearErrorText(season.error)];
  const limits = frontLimits(usualIn(plan.job));
  return solidParts(plan, c).flatMap(({ front, across, slot, bottom }) => [
    ...bottomWrongs(bottom, across),
    ...(front && !front.ok ? [words.frontErrorText(front.error)] : []),
    ...(front?.ok && (front.value.tight || front.value.wide)
      ? [words.front(front.value, across, limits)]
      : []),
    ...(slot && !slot.ok ? [words.slotWrong] : []),
  ]);
}

/** A bottom that does not stay in its grooves all year. */
function bottomWrongs(bottom: SolidPart['bottom'], across: Length): readonly string[] {
  if (!bottom) return [];
  const { panel, deepest } = bottom;
  if (!panel.ok) return [words.bottomErrorText(panel.error)];
  return panel.value.pushedShort ? [words.bottom(panel.value, deepest, across)] : [];
}

type AskProps = {
  readonly job: Job;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
};

function YearSentence({ job, open, onOpen }: AskProps) {
  const year = yearOf(job);
  const blank = (field: keyof typeof words.titles) => (
    <AskBlank ask={asks.yearAsk(job, field)} open={open} onOpen={onOpen} />
  );
  return (
    <section class="fillin" aria-label={words.year}>
      {words.yearLine({
        woodNow: blank('woodNow'),
        woodLow: blank('woodLow'),
        woodHigh: blank('woodHigh'),
        airLow: blank('airLow'),
        airHigh: blank('airHigh'),
      })}
      <ul class="problems">
        <li class="note">{words.reckoned(year)}</li>
        {!year.season.ok && (
          <li class={year.season.error.code === 'now-missing' ? 'nextblank' : 'wrongline'}>
            {words.yearErrorText(year.season.error)}
          </li>
        )}
      </ul>
    </section>
  );
}

type MovesProps = AskProps & { readonly bench: Bench; readonly x: SolidPart };

/** One part, how far it moves, and what follows. */
function Moves({ bench, job, x, open, onOpen }: MovesProps) {
  const { part, stock, across, shrinks, grows, front, crossings = [], slot } = x;
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  const name = partWord(part.name);
  return (
    <section class="drawerrow" aria-label={name}>
      <h2 class="sec">{name}</h2>
      {!x.coefficient && (
        <>
          <p class="nextblank">{words.asksSpecies(stock.name)}</p>
          <Button
            look="quiet"
            label={words.toStock(stock.name)}
            onTap={() => bench.go({ at: 'stock', id: stock.id, of: part.of })}
          />
        </>
      )}
      {shrinks?.ok && grows?.ok && (
        <p class="s">
          {words.moves(
            across,
            shrinks.value.change,
            grows.value.change,
            shrinks.value.beyond || grows.value.beyond,
          )}
        </p>
      )}
      {front?.ok && (
        <p class={front.value.tight || front.value.wide ? 'lit' : 's'}>
          {words.front(front.value, across, frontLimits(usualIn(job)))}
        </p>
      )}
      {front && !front.ok && <Wrong text={words.frontErrorText(front.error)} />}
      <Bottom bottom={x.bottom} across={across} />
      {crossings.map(({ to, cross }) =>
        cross.ok ? (
          <p key={to} class={cross.value.over ? 'lit' : 's'}>
            {words.cross(to, cross.value)}
          </p>
        ) : null,
      )}
      {part.name.role === 'loose' && (
        <p class="fillin thing">
          {words.slotLine(blank(asks.reachAsk(job, part.id, across)), blank(asks.shankAsk(job, part.id)))}
        </p>
      )}
      {slot?.ok && <p class="s">{words.slot(slot.value)}</p>}
      {slot && !slot.ok && <Wrong text={words.slotWrong} />}
    </section>
  );
}

type BottomProps = { readonly bottom: SolidPart['bottom']; readonly across: Length };

/** How deep the bottom of a drawer is cut, and how much of it stays in its grooves. */
const Bottom = ({ bottom, across }: BottomProps) => {
  if (!bottom) return null;
  const { panel, deepest } = bottom;
  if (!panel.ok) return <Wrong text={words.bottomErrorText(panel.error)} />;
  const { pushedShort } = panel.value;
  return <p class={pushedShort ? 'lit' : 's'}>{words.bottom(panel.value, deepest, across)}</p>;
};

const Wrong = ({ text }: { readonly text: string }) => (
  <p class="wrongline">
    <Icon name="warn" />
    {text}
  </p>
);
