import { sticksOf } from '../../plan/sticks-of';
import { Bar } from '../../ui/bar';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import type { Route } from '../routes';
import { exactly } from '../shared/exact-words';
import { leave } from '../shared/leave';
import { title as labelTitle, listSays } from './label-print-words';
import { prints, says, titles } from './print-words';
import { stickName } from './stick-words';
import * as words from './words';
import '../shared/rows.css';

type PaperBench = Pick<Bench, 'plan' | 'go'> & Parameters<typeof leave>[0];

/** All of a job that goes on paper. */
export function PaperScreen({ bench }: { readonly bench: PaperBench }) {
  const plan = bench.plan.value;
  const sticks = plan ? sticksOf(plan) : [];
  return (
    <>
      <Bar
        title={words.title}
        sub={plan?.job.name ?? ''}
        leave={{ label: words.toJob, word: true, onTap: () => leave(bench, { at: 'job' }) }}
      />
      <main class="page">
        <h2 class="sec pad-x">{words.lists}</h2>
        {prints.map((id) => (
          <Line key={id} label={titles[id]} says={says[id]} to={{ at: 'print', id }} go={bench.go} />
        ))}
        <Line label={words.tickIn} says={words.tickInSays} to={{ at: 'tickin' }} go={bench.go} />
        <h2 class="sec pad-x">{words.labels}</h2>
        <Line label={labelTitle} says={listSays} to={{ at: 'print', id: 'labels' }} go={bench.go} />
        <Line label={words.labels} says={words.labelsSay} to={{ at: 'labels' }} go={bench.go} />
        <h2 class="sec pad-x">{words.sticks}</h2>
        {sticks.length === 0 && <p class="pad-x empty-line">{words.noSticks}</p>}
        {sticks.map((stick) => (
          <Line
            key={`${stick.of}~${stick.which}`}
            label={stickName(stick)}
            says={words.stickSays(exactly(stick.long.value), stick.spans.length)}
            to={{ at: 'stick', id: stick.of, which: stick.which }}
            go={bench.go}
          />
        ))}
      </main>
    </>
  );
}

type LineProps = {
  readonly label: string;
  readonly says: string;
  readonly to: Route;
  readonly go: Bench['go'];
};

const Line = ({ label, says, to, go }: LineProps) => (
  <button type="button" class="nextset" onClick={() => go(to)}>
    <span class="grow">
      <b>{label}</b>
      <span class="s muted block">{says}</span>
    </span>
    <Icon name="next" />
  </button>
);
