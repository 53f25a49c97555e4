import type { Breakdown, PoolView } from '../../plan/breakdown';
import type { Plan } from '../../plan/plan';
import { Chip } from '../../ui/button';
import type { Bench } from '../bench';
import { PoolPlan } from './pool-plan';
import { PoolSearch } from './pool-search';
import { problemWords } from './problem-words';
import { Warned } from './warned';
import * as words from './words';
import './sheets.css';

type CardProps = {
  readonly bench: Bench;
  readonly plan: Plan;
  readonly found: Breakdown;
  readonly view: PoolView;
};

/** One stuff of the job: its sheets as planned, or what laying them out has come to. */
export function PoolCard(props: CardProps) {
  const { bench, plan, view, found } = props;
  const { id, pieces } = view.pool;
  const laying = bench.laying.all.value.get(id);
  return (
    <section class="pool" aria-label={view.name}>
      <div class="sechead">
        <h2 class="sec">{view.name}</h2>
        <Chip label={words.pieceCount(pieces.length)} onTap={() => bench.go({ at: 'pieces', id })} />
      </div>
      {laying ? <PoolSearch {...props} laying={laying} /> : <PoolPlan {...props} />}
      {found.kerf && view.problems.length > 0 && (
        <ul class="pad-x facts">
          {view.problems.map((problem, k) => (
            <Warned key={k} text={problemWords(problem, found, plan.job.tape)} />
          ))}
        </ul>
      )}
    </section>
  );
}
