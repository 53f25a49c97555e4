import { useState } from 'preact/hooks';
import type { Job } from '../../job/job';
import { type SolidPart, solidParts, yearOf } from '../../plan/solid-plan';
import { Bar } from '../../ui/bar';
import { Button } from '../../ui/button';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { AskDock } from '../shared/ask-dock';
import { GonePage } from '../shared/gone-page';
import { partWord } from '../shared/part-words';
import { UndoButton } from '../shared/undo-button';
import * as asks from './solid-asks';
import * as words from './solid-words';
import { noCase, notWorked, title as toLoads } from './words';
import '../shared/drawer-row.css';

/** Which parts of solid wood move with the year, how far, and the slots and gaps that follow. */
export function SolidScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const [open, setOpen] = useState<Ask>();
  const plan = bench.plan.value;
  const c = plan?.job.cases.find((x) => x.id === id);
  const leave = { label: toLoads, onTap: () => bench.go({ at: 'loads', id }) };
  if (!plan || !c) return <GonePage title={words.title} leave={{ ...leave, word: true }} says={noCase} />;
  const { job } = plan;
  const parts = solidParts(plan, c);
  return (
    <>
      <Bar title={words.title} sub={c.name || toLoads} leave={leave}>
        <UndoButton bench={bench} />
      </Bar>
      <main class={open ? 'page docked' : 'page'}>
        <p class="pad-x empty-line">{words.why}</p>
        <YearSentence job={job} open={open} onOpen={setOpen} />
        {!plan.worked.get(id)?.ok && <p class="pad-x wrongline">{notWorked}</p>}
        {parts.length === 0 && <p class="pad-x empty-line">{words.none}</p>}
        {parts.map((x) => (
          <Moves key={x.part.id} {...{ bench, job, x, open }} onOpen={setOpen} />
        ))}
      </main>
      <AskDock ask={open} tape={job.tape} act={bench.act} onClose={() => setOpen(undefined)} />
    </>
  );
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
  const { part, stock, across, shrinks, grows, front, cross, slot } = x;
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
        <p class={front.value.tight || front.value.wide ? 'lit' : 's'}>{words.front(front.value, across)}</p>
      )}
      {front && !front.ok && <Wrong text={words.frontErrorText(front.error)} />}
      {cross?.ok && <p class={cross.value.over ? 'lit' : 's'}>{words.cross(cross.value)}</p>}
      {part.name.role === 'loose' && (
        <p class="fillin thing">
          {words.slotLine(blank(asks.reachAsk(job, part.id)), blank(asks.shankAsk(job, part.id)))}
        </p>
      )}
      {slot?.ok && <p class="s">{words.slot(slot.value)}</p>}
      {slot && !slot.ok && <Wrong text={words.slotWrong} />}
    </section>
  );
}

const Wrong = ({ text }: { readonly text: string }) => (
  <p class="wrongline">
    <Icon name="warn" />
    {text}
  </p>
);
