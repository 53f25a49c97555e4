import { tickOf } from '../../job/edits';
import { Button } from '../../ui/button';
import type { Bench } from '../bench';
import { Caution } from '../shared/caution';
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

/** One foot at a time, its figure giant; last the look at the level again, which must be ticked. */
export function FootByFoot({ bench, id, name, steps, step }: FootProps) {
  const wake = useWake(bench);
  const { ticks } = bench.folded.value;
  const done = steps.map(({ op }) => ticks.has(op));
  const at = stepToShow(
    steps.map((each) => each.id),
    done,
    step,
  );
  const now = steps[at];
  useStepInAddress(now?.id, step, (to) => bench.go({ at: 'level', id, foot: to }, true));
  const leave = () => bench.go({ at: 'level', id });
  if (!now)
    return (
      <main class="page nothing">
        <p>{words.nothing}</p>
        <Button look="main" label={words.seeFeet} onTap={leave} />
      </main>
    );
  const goTo = (k: number) => {
    const to = steps[k];
    if (to) bench.go({ at: 'level', id, foot: to.id }, true);
  };
  const next = nextNotDone({ done, at });
  const label = now.figure ? words.itStands : words.looked;
  const press = () => {
    if (!done[at]) {
      navigator.vibrate?.(10);
      void bench.act(words.tickAct(false, now.title), tickOf(now.op, now.kept));
    } else if (next === undefined) leave();
    else goTo(next);
  };
  return (
    <OneNumber
      {...{ bench, wake, goTo }}
      heading={words.heading(name)}
      leave={{ label: words.leave, onTap: leave }}
      row={{ done, at }}
      progress={words.progress(done.filter(Boolean).length, steps.length)}
      title={now.title}
      figure={now.figure}
      tape={bench.job.value?.tape ?? '1/32'}
      main={{ label: done[at] ? (next === undefined ? words.allDone : words.next) : label, onTap: press }}
    >
      <p class="ends pad-x">{now.says}</p>
      <Caution bench={bench} code={now.figure ? 'shims' : 'level'} />
    </OneNumber>
  );
}
