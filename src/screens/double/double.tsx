import type { Doubled } from '../../job/doubled';
import type { Entry } from '../../job/entry';
import { standing } from '../../job/heads';
import type { Job } from '../../job/job';
import { Bar } from '../../ui/bar';
import type { Bench } from '../bench';
import { UndoButton } from '../shared/undo-button';
import { Said } from './value';
import { aboutPlace, whenSaid, whoWrote } from './words';

/** Readings two phones wrote, neither knowing of the other's: both stand until one is picked, with one tap. */
export function DoubleScreen({ bench }: { readonly bench: Bench }) {
  const job = bench.job.value;
  const doubled = bench.doubled.value;
  return (
    <>
      <Bar title="Standing double" leave={{ label: 'Job', onTap: () => bench.go({ at: 'job' }) }}>
        <UndoButton bench={bench} wordless />
      </Bar>
      <main class="page">
        {doubled.length === 0 && (
          <p class="pad-x empty-line">
            Nothing stands double. What two phones say differently is shown here.
          </p>
        )}
        {job && doubled.map((one) => <Question key={one.place} one={one} job={job} bench={bench} />)}
        {doubled.length > 0 && (
          <p class="pad-x note">Tap the one that is right. Until then the one in use is reckoned with.</p>
        )}
      </main>
    </>
  );
}

type QuestionProps = { readonly one: Doubled; readonly job: Job; readonly bench: Bench };

function Question({ one, job, bench }: QuestionProps) {
  const stands = standing(one.readings);
  const { thing, what } = aboutPlace(one.place, { job, plan: bench.plan.value });
  return (
    <section class="double" aria-label={`${thing}, ${what}`}>
      <h2>
        <b>{thing}</b>
        <span class="muted">{what}</span>
      </h2>
      {one.readings.map((entry) => (
        <button
          key={`${entry.count}.${entry.device}`}
          type="button"
          class="pick"
          onClick={() => void bench.act(`Picked: ${thing}, ${what}`.slice(0, 200), [picked(entry)])}
        >
          <Said entry={entry} job={job} />
          <span class="who">
            <b>{whoWrote(entry, bench.own, bench.doubled.value)}</b>
            <span class="muted">
              {whenSaid(entry.at)}
              {entry === stands && ', in use'}
            </span>
          </span>
        </button>
      ))}
    </section>
  );
}

/** The same said again: it is over both. */
function picked(entry: Entry) {
  if (entry.kind === 'edit') return { kind: 'edit', path: entry.path, value: entry.value } as const;
  return entry.kind === 'tick'
    ? ({ kind: 'tick', op: entry.op, figure: entry.figure } as const)
    : ({ kind: 'untick', op: entry.op } as const);
}
