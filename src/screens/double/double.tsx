import type { Doubled } from '../../job/doubled';
import type { Entry } from '../../job/entry';
import type { Job } from '../../job/job';
import { standing } from '../../job/merge';
import { Bar } from '../../ui/bar';
import type { Bench } from '../bench';
import { UndoButton } from '../shared/undo-button';
import { Said } from './value';
import * as words from './words';
import './double.css';

/** Readings two phones wrote, neither knowing of the other's: both stand until one is picked, with one tap. */
export function DoubleScreen({ bench }: { readonly bench: Bench }) {
  const job = bench.job.value;
  const doubled = bench.doubled.value;
  return (
    <>
      <Bar title={words.title} leave={{ label: words.back, onTap: () => bench.go({ at: 'job' }) }}>
        <UndoButton bench={bench} wordless />
      </Bar>
      <main class="page">
        {doubled.length === 0 && <p class="pad-x empty-line">{words.none}</p>}
        {job && doubled.map((one) => <Question key={one.place} one={one} job={job} bench={bench} />)}
        {doubled.length > 0 && <p class="pad-x note">{words.tapRight}</p>}
      </main>
    </>
  );
}

type QuestionProps = { readonly one: Doubled; readonly job: Job; readonly bench: Bench };

function Question({ one, job, bench }: QuestionProps) {
  const stands = standing(one.readings);
  const about = words.aboutPlace(one.place, { job, plan: bench.plan.value });
  const { thing, what } = about;
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
          onClick={() => void bench.act(words.pickedAs(about), [picked(entry)])}
        >
          <Said entry={entry} job={job} />
          <span class="who">
            <b>{words.whoWrote(entry, bench.own, bench.doubled.value)}</b>
            <span class="muted">{words.whenText(entry.at, entry === stands)}</span>
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
