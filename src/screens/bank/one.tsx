import { useEffect, useState } from 'preact/hooks';
import { editFront, tickOf } from '../../job/edits';
import type { BankPlan } from '../../plan/bank-plan';
import { frontNo } from '../../trade/fronts/bank';
import { Icon } from '../../ui/icon';
import { KeySheet } from '../../ui/key-sheet';
import { Given, Mixed, Remainder } from '../../ui/mixed';
import { StoryStick } from '../../ui/story-stick';
import { BigTick } from '../../ui/tick-box';
import type { Bench } from '../bench';
import { Caution } from '../shared/caution';
import { useWake } from '../shared/use-wake';
import { bankIn } from './column-of';
import { NoBank } from './fronts';
import { type OneStep, type OneWhat, stepsOf } from './steps';

type OneProps = {
  readonly bench: Bench;
  readonly id: string;
  readonly what: string;
  readonly step: string | undefined;
};

const whats: Record<string, OneWhat> = { marks: 'marks', fit: 'fit', sticks: 'sticks' };

/** One number at a time, giant: marking the story stick, hanging slides on sticks, fitting fronts. */
export function OneScreen({ bench, id, what, step }: OneProps) {
  const wake = useWake(bench);
  const found = bankIn(bench.plan.value, id);
  const kind = whats[what] ?? 'marks';
  const steps = found ? stepsOf(bench, found, kind) : [];
  const done = steps.map((s) => s.ticks.every((t) => bench.folded.value.ticks.has(t.op)));
  const asked = steps.findIndex((s) => s.id === step);
  const open = done.indexOf(false);
  const at = asked >= 0 ? asked : open >= 0 ? open : steps.length - 1;
  const stood = steps[at]?.id;
  // A number once shown stands in the address: nothing but a tap changes the figure.
  useEffect(() => {
    if (stood !== undefined && stood !== step) bench.go({ at: 'one', id, what: kind, step: stood }, true);
  }, [stood, step]);
  const now = steps[at];
  if (!found) return <NoBank bench={bench} />;
  if (!now) return <Nothing bench={bench} id={id} />;
  return <StepInHand {...{ bench, found, kind, steps, done, at, now, wake }} />;
}

const Nothing = ({ bench, id }: { readonly bench: Bench; readonly id: string }) => (
  <main class="page nothing">
    <p>The drawers do not work out yet.</p>
    <button type="button" class="btn main" onClick={() => bench.go({ at: 'bank', id })}>
      See what is missing
    </button>
  </main>
);

type StepInHandProps = {
  readonly bench: Bench;
  readonly found: BankPlan;
  readonly kind: OneWhat;
  readonly steps: readonly OneStep[];
  readonly done: readonly boolean[];
  readonly at: number;
  readonly now: OneStep;
  readonly wake: string;
};

const kindWords: Record<OneWhat, string> = {
  marks: 'Story stick',
  fit: 'Fitting fronts',
  sticks: 'Slides on sticks',
};

const cautionAt = { marks: 'marks', fit: 'front-on', sticks: 'stick' } as const;

function StepInHand({ bench, found, kind, steps, done, at, now, wake }: StepInHandProps) {
  const { bank } = found;
  const tape = bench.job.value?.tape ?? '1/32';
  const undo = bench.undoLabel.value;
  const goTo = (k: number) => {
    const to = steps[k];
    if (to) bench.go({ at: 'one', id: bank.id, what: kind, step: to.id }, true);
  };
  return (
    <main class={now.ticks.length > 1 ? 'saw crowded' : 'saw'} tabIndex={-1}>
      <h1 class="sr">
        {kindWords[kind]}, {bank.name || 'drawers'}
      </h1>
      <header class="bar">
        <button
          type="button"
          class="icon back"
          aria-label="Leave"
          onClick={() => bench.go({ at: kind === 'sticks' ? 'boxes' : 'fronts', id: bank.id })}
        >
          <Icon name="back" />
          Leave
        </button>
        <span class="row barright">
          <span class="icon stays" role="status">
            <Icon name="light" />
            {wake === 'on' ? 'Stays on' : 'May sleep'}
          </span>
          <button
            type="button"
            class="icon"
            aria-label={undo ? `Undo: ${undo}` : 'Undo'}
            aria-disabled={undo === undefined}
            onClick={() => void bench.undo()}
          >
            <Icon name="undo" />
            <span class="word-label">Undo</span>
          </button>
        </span>
      </header>
      <div class="prog">
        <StoryStick done={done} now={at} label={`${done.filter(Boolean).length} of ${steps.length} done`} />
      </div>
      <div class="what">
        <span>{now.title}</span>
        <span class="muted">
          {at + 1} of {steps.length}
        </span>
      </div>
      <div class="giant" aria-live="polite">
        <Mixed value={now.figure} rest={now.rest} size="huge" tape={tape} />
        <Remainder tape={tape} rest={now.rest} />
      </div>
      <p class="ends pad-x">{now.says}</p>
      {now.stick !== undefined && <Stays bench={bench} found={found} drawer={now.stick} />}
      <Caution bench={bench} code={cautionAt[kind]} />
      {now.ticks.length > 1 && <Ticks bench={bench} now={now} />}
      <Knuckle {...{ bench, bank: found, kind, steps, done, at, now, goTo }} />
    </main>
  );
}

const act = (bench: Bench, now: OneStep, tick: OneStep['ticks'][number]) => {
  const ticked = bench.folded.value.ticks.has(tick.op);
  void bench.act(
    `${ticked ? 'Not yet' : 'Done'}: ${now.title}, ${tick.label.toLowerCase()}`,
    ticked ? [{ kind: 'untick', op: tick.op }] : tickOf(tick.op, tick.figure),
  );
};

const Ticks = ({ bench, now }: { readonly bench: Bench; readonly now: OneStep }) => (
  <div class="ticks">
    {now.ticks.map((tick) => (
      <BigTick
        key={tick.op}
        label={tick.label.charAt(0).toUpperCase() + tick.label.slice(1)}
        ticked={bench.folded.value.ticks.has(tick.op)}
        saving={bench.saving.value.has(tick.op)}
        onTap={() => act(bench, now, tick)}
      />
    ))}
  </div>
);

type StaysProps = { readonly bench: Bench; readonly found: BankPlan; readonly drawer: number };

/** What the stick measures: the next cut is reckoned from it. */
function Stays({ bench, found, drawer }: StaysProps) {
  const [open, setOpen] = useState(false);
  const now = frontNo(found.bank, drawer).stick;
  return (
    <div class="pad-x stays-row">
      <button type="button" class="chip" onClick={() => setOpen(true)}>
        This stick measures {now ? <Given value={now} /> : <span class="dots">····</span>}
      </button>
      {open && (
        <KeySheet
          title={`What the stick of drawer ${drawer} measures`}
          tape={bench.job.value?.tape ?? '1/32'}
          fill="length"
          now={now}
          onLength={(stick) =>
            void bench.act(`Stick of drawer ${drawer} measured`, editFront(found.bank.id, drawer, { stick }))
          }
          onClose={() => setOpen(false)}
        />
      )}
    </div>
  );
}

type KnuckleProps = Omit<StepInHandProps, 'found' | 'wake'> & {
  readonly bank: BankPlan;
  readonly goTo: (k: number) => void;
};

function Knuckle({ bench, bank, kind, steps, done, at, now, goTo }: KnuckleProps) {
  const tick = now.ticks.find((t) => !bench.folded.value.ticks.has(t.op));
  const after = done.findIndex((d, k) => k > at && !d);
  const next = after >= 0 ? after : done.indexOf(false);
  const leave = () => bench.go({ at: kind === 'sticks' ? 'boxes' : 'fronts', id: bank.bank.id });
  const press = () => {
    if (tick) {
      navigator.vibrate?.(10);
      act(bench, now, tick);
    } else if (kind === 'fit' || next < 0) leave();
    else goTo(next);
  };
  return (
    <div class="knuckle">
      <button type="button" class="btn" aria-disabled={at === 0} onClick={() => goTo(at - 1)}>
        Back
      </button>
      <button
        type="button"
        class="btn skip"
        aria-disabled={at >= steps.length - 1}
        onClick={() => goTo(at + 1)}
      >
        Skip
      </button>
      <button type="button" class="btn main" onClick={press}>
        {tick ? tickWords(kind, tick.label) : kind === 'fit' ? 'Measure it' : next < 0 ? 'All done' : 'Next'}
      </button>
    </div>
  );
}

const tickWords = (kind: OneWhat, label: string): string =>
  kind === 'sticks' ? `${label.charAt(0).toUpperCase()}${label.slice(1)} slide is on` : label;
