import { tickOf } from '../../job/edits';
import { tickedAt } from '../../job/ticked-at';
import { blocks, checklistOf } from '../../plan/checklist';
import { offersOf } from '../../plan/offers';
import { Button } from '../../ui/button';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import type { Route } from '../routes';
import { Caution } from '../shared/caution';
import { heldWords } from '../shared/held-words';
import { leave } from '../shared/leave';
import { OneNumber } from '../shared/one-number';
import { nextNotDone, stepToShow, useStepInAddress } from '../shared/steps-in-row';
import { useWake } from '../shared/use-wake';
import type { LevelStep } from './steps';
import * as words from './words';

type FootProps = {
  readonly bench: Bench;
  readonly id: string;
  readonly name: string;
  readonly steps: readonly LevelStep[];
  readonly step: string;
};

/** One foot at a time, its figure giant; last the case as a whole, which is the step in the cuts. */
export function FootByFoot({ bench, id, name, steps, step }: FootProps) {
  const wake = useWake(bench);
  const { ticks } = bench.folded.value;
  const done = steps.map(({ op, kept }) => tickedAt(ticks, op, kept));
  const at = stepToShow(
    steps.map((each) => each.id),
    done,
    step,
  );
  const now = steps[at];
  useStepInAddress(now?.id, step, (to) => bench.go({ at: 'level', id, foot: to }, true));
  const back = () => leave(bench, { at: 'level', id });
  const toFeet = () => bench.go({ at: 'level', id }, true);
  if (!now) return <Nothing onSee={toFeet} />;
  const goTo = (k: number) => {
    const to = steps[k];
    if (to) bench.go({ at: 'level', id, foot: to.id }, true);
  };
  const next = nextNotDone({ done, at });
  const label = now.figure ? words.itStands : words.level;
  const held = now.figure ? undefined : heldAt(bench, id, now.op);
  const press = () => {
    if (!done[at] && now.refused.length > 0) toFeet();
    else if (!done[at] && held) held.go();
    else if (!done[at]) tickStep(bench, name, now);
    else if (next === undefined) back();
    else goTo(next);
  };
  const onward = next === undefined ? words.allDone : words.next;
  const toDo = now.refused.length > 0 ? words.seeFeet : held ? words.seeFirst : label;
  const barLabel = done[at] ? onward : toDo;
  return (
    <OneNumber
      {...{ bench, wake, goTo }}
      heading={words.heading(name)}
      leave={{ label: words.leave, onTap: back }}
      row={{ done, at }}
      progress={words.progress(done.filter(Boolean).length, steps.length)}
      title={now.title}
      figure={now.figure}
      tape={bench.job.value?.tape ?? '1/32'}
      main={{ label: barLabel, onTap: press }}
    >
      <Says step={now} />
      {held && !done[at] && <p class="pad-x note">{held.says}</p>}
      {(now.lifts || !now.figure) && <Caution bench={bench} code={now.lifts ? 'shims' : 'level'} />}
    </OneNumber>
  );
}

function tickStep(bench: Pick<Bench, 'act'>, name: string, { figure, title, op, kept }: LevelStep): void {
  navigator.vibrate?.(10);
  void bench.act(figure ? words.footAct(title) : words.levelAct(name), tickOf(op, kept));
}

/** What is wrong with a foot, and what goes with its figure. */
const Says = ({ step: { refused, wrong, says } }: { readonly step: LevelStep }) => (
  <>
    {[...refused, ...wrong].map((line) => (
      <p key={line} class="wrongline pad-x">
        <Icon name="warn" />
        {line}
      </p>
    ))}
    <p class="ends pad-x">{says}</p>
  </>
);

const Nothing = ({ onSee }: { readonly onSee: () => void }) => (
  <main class="page nothing">
    <p>{words.nothing}</p>
    <Button look="main" label={words.seeFeet} onTap={onSee} />
  </main>
);

/** Why the step of the cuts may not be ticked yet, and the way to what comes first. */
function heldAt({ plan, folded, go }: Pick<Bench, 'plan' | 'folded' | 'go'>, of: string, op: string) {
  const made = plan.value;
  if (!made?.byId.has(op)) return undefined;
  const list = checklistOf(made, folded.value);
  const offer = offersOf(list)(op);
  if (offer.ok) return undefined;
  const card = list.cards.find((c) => c.operations.some(({ id }) => id === op));
  const [first] = offer.error.by === 'what-comes-first' ? blocks(list, offer.error.op) : [];
  const toCard: Route = card ? { at: 'setup', id: card.id } : { at: 'cuts' };
  return {
    says: heldWords(list, offer.error),
    go: () => (first?.by === 'feet' ? go({ at: 'level', id: of, foot: 'next' }, true) : go(toCard)),
  };
}
