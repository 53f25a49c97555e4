import { useState } from 'preact/hooks';
import { editFront, tickOf } from '../../job/edits';
import type { BankPlan } from '../../plan/bank-plan';
import { type Bank, frontNo } from '../../trade/fronts/bank';
import { Dots } from '../../ui/blank';
import { Button } from '../../ui/button';
import { Given } from '../../ui/given';
import { KeySheet } from '../../ui/key-sheet';
import { BigTick } from '../../ui/tick-box';
import type { Bench } from '../bench';
import { capital } from '../shared/capital';
import { Caution } from '../shared/caution';
import { OneNumber } from '../shared/one-number';
import { listsOf } from '../shared/shop-lists';
import { nextNotDone, stepToShow, useStepInAddress } from '../shared/steps-in-row';
import { useWake } from '../shared/use-wake';
import type { Wake } from '../shared/wake';
import { bankIn } from './column-of';
import { NoBank } from './fronts';
import * as words from './one-words';
import { restWord } from './step-words';
import { type OneStep, type OneWhat, type StepsAt, stepsOf } from './steps';
import { type Waits, waitsOf } from './waits';

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
  const steps = found ? stepsOf(found, kind, stepsAt(bench)) : [];
  const done = steps.map((s) => s.ticks.every((t) => bench.folded.value.ticks.has(t.op)));
  const ids = steps.map((s) => s.id);
  const at = stepToShow(ids, done, step);
  useStepInAddress(ids[at], step, (to) => bench.go({ at: 'one', id, what: kind, step: to }, true));
  const now = steps[at];
  if (!found) return <NoBank bench={bench} />;
  if (!now) return <Nothing onSee={() => bench.go({ at: kind === 'sticks' ? 'boxes' : 'fronts', id })} />;
  return <StepInHand {...{ bench, found, kind, steps, done, at, now, wake }} />;
}

const stepsAt = ({ job, shop, settings }: Pick<Bench, 'job' | 'shop' | 'settings'>): StepsAt => ({
  tape: job.value?.tape ?? '1/32',
  shims: listsOf(settings.value).shims,
  kerf: shop.value.kerf ?? shop.value.single,
});

const Nothing = ({ onSee }: { readonly onSee: () => void }) => (
  <main class="page nothing">
    <p>{words.notYet}</p>
    <Button look="main" label={words.seeMissing} onTap={onSee} />
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
  readonly wake: Wake;
};

const cautionAt = { marks: 'marks', fit: 'front-on', sticks: 'stick' } as const;

function StepInHand({ bench, found, kind, steps, done, at, now, wake }: StepInHandProps) {
  const { bank } = found;
  const leave = () => bench.go({ at: kind === 'sticks' ? 'boxes' : 'fronts', id: bank.id });
  const goTo = (k: number) => {
    const to = steps[k];
    if (to) bench.go({ at: 'one', id: bank.id, what: kind, step: to.id }, true);
  };
  const next = nextNotDone({ done, at });
  const open = now.ticks.filter((t) => !bench.folded.value.ticks.has(t.op));
  const waits = waitsOf(bench);
  const tick = open.find((t) => !waits(t));
  const [held] = open.flatMap((t) => waits(t) ?? []);
  const press = () => {
    if (tick) {
      navigator.vibrate?.(10);
      act(bench, now, tick);
    } else if (held) held.toMachine();
    else if (kind === 'fit' || next === undefined) leave();
    else goTo(next);
  };
  return (
    <OneNumber
      {...{ bench, wake, goTo }}
      heading={words.heading(kind, bank)}
      leave={{ label: words.leave, onTap: leave }}
      row={{ done, at }}
      progress={words.progress(done.filter(Boolean).length, steps.length)}
      title={now.title}
      figure={{ value: now.figure, rest: now.rest }}
      tape={bench.job.value?.tape ?? '1/32'}
      crowded={now.ticks.length > 1}
      main={{
        label: tick
          ? words.toTick(kind, tick.label, restWord(now.on))
          : held
            ? words.seeFirst
            : words.onward(kind, next === undefined),
        onTap: press,
      }}
    >
      <p class="ends pad-x">{now.says}</p>
      {held && <p class="pad-x note">{held.says}</p>}
      {now.stick !== undefined && !held && <Stays bench={bench} bank={bank} drawer={now.stick} />}
      <Caution bench={bench} code={cautionAt[kind]} />
      {now.ticks.length > 1 && <Ticks {...{ bench, now, waits }} />}
    </OneNumber>
  );
}

type Tick = OneStep['ticks'][number];

type TickBench = Pick<Bench, 'act' | 'folded' | 'saving'>;

const act = (bench: TickBench, now: OneStep, tick: Tick) => {
  const ticked = bench.folded.value.ticks.has(tick.op);
  void bench.act(
    words.tickAct(ticked, now.title, tick.label),
    ticked ? [{ kind: 'untick', op: tick.op }] : tickOf(tick.op, tick.figure),
  );
};

type TicksProps = { readonly bench: TickBench; readonly now: OneStep; readonly waits: Waits };

const Ticks = ({ bench, now, waits }: TicksProps) => (
  <div class="ticks">
    {now.ticks.map((tick) => {
      const ticked = bench.folded.value.ticks.has(tick.op);
      const held = ticked ? undefined : waits(tick);
      return held ? (
        <button key={tick.op} type="button" class="bigtick blocked" onClick={held.toMachine}>
          {words.heldTick(tick.label)}
        </button>
      ) : (
        <BigTick
          key={tick.op}
          label={capital(tick.label)}
          ticked={ticked}
          saving={bench.saving.value.has(tick.op)}
          onTap={() => act(bench, now, tick)}
        />
      );
    })}
  </div>
);

type StaysProps = {
  readonly bench: Pick<Bench, 'act' | 'job'>;
  readonly bank: Bank;
  readonly drawer: number;
};

/** What the stick measures: the next cut is reckoned from it. */
function Stays({ bench, bank, drawer }: StaysProps) {
  const [open, setOpen] = useState(false);
  const now = frontNo(bank, drawer).stick;
  return (
    <div class="pad-x stays-row">
      <button type="button" class="chip" onClick={() => setOpen(true)}>
        {words.stickMeasures(now ? <Given value={now} /> : <Dots />)}
      </button>
      {open && (
        <KeySheet
          title={words.stickTitle(drawer)}
          tape={bench.job.value?.tape ?? '1/32'}
          fill="length"
          kind="length"
          now={now}
          onLength={(stick) => void bench.act(words.stickAct(drawer), editFront(bank.id, drawer, { stick }))}
          onClose={() => setOpen(false)}
        />
      )}
    </div>
  );
}
