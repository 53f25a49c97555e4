import { editBoard } from '../../job/edits';
import { isZero } from '../../length/length';
import type { Tape } from '../../length/tape';
import { workOn } from '../../plan/part-work';
import type { Plan } from '../../plan/plan';
import type { Part, Size } from '../../trade/carcass/part';
import { Bar } from '../../ui/bar';
import { Button } from '../../ui/button';
import { Icon } from '../../ui/icon';
import { Mixed } from '../../ui/mixed';
import { NearRows } from '../../ui/when-near';
import type { Bench } from '../bench';
import { byStock } from '../shared/by-stock';
import { partWord } from '../shared/part-words';
import { UndoButton } from '../shared/undo-button';
import { casesWithout } from './not-worked';
import * as words from './words';
import './parts.css';

/** Every part of the job by the stock it comes out of, at the size it is cut to. */
export function PartsScreen({ bench }: { readonly bench: Bench }) {
  const plan = bench.plan.value;
  return (
    <>
      <Bar
        title={words.parts}
        sub={plan?.job.name ?? ''}
        leave={{ label: words.job, onTap: () => bench.go({ at: 'job' }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class="page">
        {plan && plan.parts.length > 0 ? (
          <ByStock plan={plan} bench={bench} />
        ) : (
          <p class="pad-x empty-line">{words.none}</p>
        )}
        {plan && <Without plan={plan} go={bench.go} />}
        <div class="pad-x adds">
          <Button label={words.partByHand} look="quiet" icon="plus" onTap={() => void byHand(bench)} />
        </div>
      </main>
    </>
  );
}

/** About how high a row is, px. */
const rowHigh = 72;

type ByStockProps = { readonly plan: Plan; readonly bench: Bench };

function ByStock({ plan, bench }: ByStockProps) {
  const stocks = byStock(plan);
  const before = (k: number) => stocks.slice(0, k).reduce((all, { parts }) => all + parts.length, 0);
  return (
    <>
      {stocks.map(({ name = words.byHand, parts }, k) => (
        <section key={name} aria-label={name}>
          <h2 class="sec pad-x">{name}</h2>
          <ul>
            <NearRows
              of={parts}
              id={({ id }) => id}
              high={rowHigh}
              before={before(k)}
              rows={plan.parts.length}
              draw={(part) => <PartRow part={part} plan={plan} bench={bench} />}
            />
          </ul>
        </section>
      ))}
    </>
  );
}

type WithoutProps = { readonly plan: Plan; readonly go: Bench['go'] };

/** What is wrong with a case stands on its own page, at the blank that makes it: the way there. */
const Without = ({ plan, go }: WithoutProps) => (
  <>
    {casesWithout(plan).map(({ id, name }) => (
      <button key={id} type="button" class="sect" onClick={() => go({ at: 'case', id })}>
        <b>{words.notWorked(name)}</b>
        <Icon name="next" />
      </button>
    ))}
  </>
);

/** A part with nothing cut in it yet: its sizes are asked for first, grooves may follow. */
async function byHand(bench: Pick<Bench, 'newId' | 'act' | 'go'>): Promise<void> {
  const id = bench.newId();
  const made = await bench.act(words.partByHand, editBoard(id, { name: words.part, made: 'alike' }));
  if (made) bench.go({ at: 'change', board: id });
}

const SizeOf = ({ size: { sum, mark }, tape }: { readonly size: Size; readonly tape: Tape }) =>
  isZero(sum.value) ? (
    <span class="muted">{words.notSaid}</span>
  ) : (
    <Mixed value={mark.value} rest={mark.rest} tape={tape} />
  );

type RowProps = {
  readonly part: Part;
  readonly plan: Plan;
  readonly bench: Pick<Bench, 'go' | 'folded'>;
};

function PartRow({ part, plan, bench }: RowProps) {
  const ticks = bench.folded.value.ticks;
  const ops = workOn(plan, part.id);
  const { tape } = plan.job;
  return (
    <button type="button" class="nextset" onClick={() => bench.go({ at: 'part', id: part.id })}>
      <span class="grow">
        <b>{partWord(part.name)}</b>
        <span class="s muted block">
          {words.state(part, ops.filter((op) => ticks.has(op.id)).length, ops.length)}
        </span>
      </span>
      <span class="pairsize">
        <SizeOf size={part.length} tape={tape} />
        <span aria-hidden="true">×</span>
        <SizeOf size={part.width} tape={tape} />
      </span>
    </button>
  );
}
