import { tickOf } from '../../job/edits';
import { tickedAt } from '../../job/ticked-at';
import type { Length } from '../../length/length';
import type { Rounded } from '../../length/round';
import type { Caution as Code } from '../../trade/cautions/caution';
import { Button } from '../../ui/button';
import type { Bench } from '../bench';
import { Caution } from './caution';
import * as words from './figure-by-figure-words';
import { OneNumber } from './one-number';
import { nextNotDone, stepToShow, useStepInAddress } from './steps-in-row';
import { useWake } from './use-wake';

/** A figure carried to a wall, an edge or a screw: where its tick is kept, and what is said of it. */
export type FigureStep = {
  readonly id: string;
  readonly op: string;
  readonly title: string;
  readonly figure: Rounded;
  /** What the tick keeps: at another figure it is not done yet. */
  readonly kept: Length;
  readonly says: string;
};

type Props = {
  readonly bench: Bench;
  readonly heading: string;
  readonly steps: readonly FigureStep[];
  readonly step: string;
  readonly caution: Code;
  /** What a tap on the bar says is done. */
  readonly does: string;
  readonly leave: () => void;
  /** Puts a step into the address. */
  readonly goTo: (step: string) => void;
};

/** One figure at a time, giant, each ticked where it was carried to. */
export function FigureByFigure({ bench, heading, steps, step, caution, does, leave, goTo }: Props) {
  const wake = useWake(bench);
  const { ticks } = bench.folded.value;
  const done = steps.map(({ op, kept }) => tickedAt(ticks, op, kept));
  const ids = steps.map(({ id }) => id);
  const at = stepToShow(ids, done, step);
  const now = steps[at];
  useStepInAddress(now?.id, step, goTo);
  if (!now) return <Nothing onSee={leave} />;
  const next = nextNotDone({ done, at });
  const show = (k: number) => ids[k] !== undefined && goTo(ids[k]);
  const press = () => {
    if (!done[at]) {
      navigator.vibrate?.(10);
      void bench.act(words.tickAct(now.title), tickOf(now.op, now.kept));
    } else if (next === undefined) leave();
    else show(next);
  };
  const onward = next === undefined ? words.allDone : words.next;
  return (
    <OneNumber
      {...{ bench, wake, heading }}
      goTo={show}
      leave={{ label: words.leave, onTap: leave }}
      row={{ done, at }}
      progress={words.progress(done.filter(Boolean).length, steps.length)}
      title={now.title}
      figure={now.figure}
      tape={bench.job.value?.tape ?? '1/32'}
      main={{ label: done[at] ? onward : does, onTap: press }}
    >
      <p class="ends pad-x">{now.says}</p>
      <Caution bench={bench} code={caution} />
    </OneNumber>
  );
}

const Nothing = ({ onSee }: { readonly onSee: () => void }) => (
  <main class="page nothing">
    <p>{words.nothing}</p>
    <Button look="main" label={words.back} onTap={onSee} />
  </main>
);
