import { useState } from 'preact/hooks';
import { add, type Length, subtract, zero } from '../../length/length';
import type { Plan } from '../../plan/plan';
import { leastBuried } from '../../trade/joints/rabbets';
import type { Operation } from '../../trade/setups/operation';
import { setIn } from '../../trade/stacks/pieces';
import { Bar } from '../../ui/bar';
import type { Bench } from '../bench';
import { Caution } from '../shared/caution';
import { buildWords } from '../shared/cut-words';
import { leave } from '../shared/leave';
import { listsOf } from '../shared/shop-lists';
import { UndoButton } from '../shared/undo-button';
import { AskSet } from './ask-set';
import { Recipes } from './recipes';
import { Test } from './test-cut';
import * as words from './words';

/** The stack for a groove, out of the box as it is; then its test cut. Kept as the recipe of that build. */
export function StackScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const plan = bench.plan.value;
  const ops = plan?.operations.filter((op) => op.setup.build === id) ?? [];
  const [first] = ops;
  const back = { label: words.back, onTap: () => leave(bench, { at: 'setup', id }) };
  if (!plan || !first) {
    return (
      <>
        <Bar title={words.title} leave={back} />
        <main class="page">
          <p class="pad-x empty-line">{words.notWanted}</p>
        </main>
      </>
    );
  }
  return (
    <>
      <Bar title={words.title} sub={buildWords(first.setup, plan.job.tape)} leave={back}>
        <UndoButton bench={bench} />
      </Bar>
      <StackPage {...{ bench, plan, first, ops }} build={id} />
      <div class="fixedbar">
        <Caution bench={bench} code="stack" />
      </div>
    </>
  );
}

type PageProps = {
  readonly bench: Bench;
  readonly plan: Plan;
  readonly build: string;
  /** The operations cut with it, and the first of them. */
  readonly ops: readonly Operation[];
  readonly first: Operation;
};

function StackPage({ bench, plan, build, ops, first: { setup } }: PageProps) {
  const set = setIn(listsOf(bench.settings.value).stack);
  const [asking, setAsking] = useState(!set);
  const want = setup.cutter ?? add(widest(ops.map((op) => op.figure)), leastBuried);
  return (
    <main class="page">
      {asking || !set ? (
        <AskSet bench={bench} onDone={() => setAsking(false)} />
      ) : (
        <>
          <Recipes job={plan.job} act={bench.act} {...{ build, want, set }} />
          <Test job={plan.job} {...{ bench, build, want, set }} height={setup.height} />
        </>
      )}
      <div class="pad-x adds">
        {!asking && (
          <a class="btn quiet" href="#/shop">
            {words.inTheBox}
          </a>
        )}
        <a class="btn quiet" href="#/shims">
          {words.shimsForGap}
        </a>
      </div>
    </main>
  );
}

/** Rabbets are cut with the stack partly buried: as wide as the widest, and a little in the fence. */
const widest = (figures: readonly Length[]): Length =>
  figures.reduce((most, x) => (subtract(x, most).s > 0n ? x : most), zero);
