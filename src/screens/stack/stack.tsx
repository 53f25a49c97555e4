import { useState } from 'preact/hooks';
import { editRecipe } from '../../job/edits';
import { add, type Length, subtract, zero } from '../../length/length';
import { writeDecimal } from '../../length/write';
import { leastBuried } from '../../trade/joints/rabbets';
import { type StackStock, setIn } from '../../trade/stacks/pieces';
import { spreadShims } from '../../trade/stacks/spread';
import { type Stack, stackFor } from '../../trade/stacks/stack';
import { correct, learnCorrection, type TestCut } from '../../trade/stacks/test-cut';
import { Bar, Segment } from '../../ui/bar';
import { Icon } from '../../ui/icon';
import { KeySheet } from '../../ui/key-sheet';
import { Given, Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { Caution } from '../shared/caution';
import { buildWords } from '../shared/cut-words';
import { leave } from '../shared/leave';
import { keepLists, listsOf } from '../shared/shop-lists';
import {
  askSet,
  correctionText,
  errorWords,
  pieceWords,
  sizeWords,
  stackErrorText,
} from '../shared/stack-words';
import { useLength, useStays } from '../shared/stays';
import { UndoButton } from '../shared/undo-button';
import { AskSet } from './ask-set';

/** The stack for a groove, out of the box as it is; then its test cut. Kept as the recipe of that build. */
export function StackScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const plan = bench.plan.value;
  const ops = plan?.operations.filter((op) => op.setup.build === id) ?? [];
  const [first] = ops;
  const back = { label: 'Back', onTap: () => leave(bench, { at: 'setup', id }) };
  const set = setIn(listsOf(bench.settings.value).stack);
  const [asking, setAsking] = useState(!set);
  if (!plan || !first) {
    return (
      <>
        <Bar title="Stack" leave={back} />
        <main class="page">
          <p class="pad-x empty-line">No cut wants this stack any more.</p>
        </main>
      </>
    );
  }
  const want = first.setup.cutter ?? add(widest(ops.map((op) => op.figure)), leastBuried);
  return (
    <>
      <Bar title="Stack" sub={buildWords(first.setup, plan.job.tape)} leave={back}>
        <UndoButton bench={bench} />
      </Bar>
      <main class="page">
        {asking || !set ? (
          <AskSet bench={bench} onDone={() => setAsking(false)} />
        ) : (
          <>
            <Recipes bench={bench} build={id} want={want} set={set} />
            <Test bench={bench} build={id} want={want} set={set} height={first.setup.height} />
          </>
        )}
        <div class="pad-x adds">
          {!asking && (
            <a class="btn quiet" href="#/shop">
              What lies in the box
            </a>
          )}
          <a class="btn quiet" href="#/shims">
            Shims for a gap
          </a>
        </div>
      </main>
      <div class="fixedbar">
        <Caution bench={bench} code="stack" />
      </div>
    </>
  );
}

/** Rabbets are cut with the stack partly buried: as wide as the widest, and a little in the fence. */
const widest = (figures: readonly Length[]): Length =>
  figures.reduce((most, x) => (subtract(x, most).s > 0n ? x : most), zero);

type RecipeProps = {
  readonly bench: Bench;
  readonly build: string;
  readonly want: Length;
  readonly set: StackStock;
};

function Recipes({ bench, build, want, set }: RecipeProps) {
  const found = stackFor(set, want);
  const kept = bench.job.value?.recipes[build]?.stack;
  const keep = (stack: Stack) =>
    void bench.act(
      'Stack kept as the recipe',
      editRecipe(build, {
        stack: stack.chosen.flatMap(({ size, count }) => Array.from({ length: count }, () => size)),
      }),
    );
  return (
    <>
      <div class="setting">
        <Mixed value={want} size="result" tape="0.001" />
        <div class="side s muted">wanted</div>
      </div>
      {!found.ok && (
        <p class="pad-x wrongline">
          <Icon name="warn" />
          {stackErrorText(found.error)}
        </p>
      )}
      {!found.ok && found.error.code === 'none-fits' && (
        <StackRows title="Nearest" stack={found.error.nearest} onKeep={keep} />
      )}
      {found.ok && (
        <StackRows
          title={found.value.closest ? 'Fewest pieces' : 'Between the outers'}
          stack={found.value.fewest}
          onKeep={keep}
        />
      )}
      {found.ok && found.value.closest && (
        <StackRows title="Closest" stack={found.value.closest} onKeep={keep} />
      )}
      {!set.arbor && <p class="pad-x note">{askSet.noArbor}</p>}
      {kept && (
        <p class="pad-x note">
          <Icon name="tick" /> Recipe kept: {kept.map(sizeWords).join(' + ') || 'the outers alone'}.
        </p>
      )}
    </>
  );
}

function StackRows({
  title,
  stack,
  onKeep,
}: {
  readonly title: string;
  readonly stack: Stack;
  readonly onKeep: (stack: Stack) => void;
}) {
  const { order, ridges } = spreadShims(stack);
  return (
    <section class="stackbox" aria-label={title}>
      <div class="sechead">
        <h2 class="sec">{title}</h2>
        <span class="muted">
          cuts {writeDecimal(stack.width)}, {errorWords(stack.error)}
        </span>
      </div>
      <p class="pad-x">{stack.chosen.map(pieceWords).join(', ') || 'The two outers alone'}</p>
      <ol class="arbor pad-x" aria-label="On the arbor, from one outer to the other">
        {order.map((piece, k) => (
          <li key={k} class={piece.kind}>
            <span>{piece.kind === 'outer' ? 'outer' : sizeWords(piece.size)}</span>
          </li>
        ))}
      </ol>
      {ridges.length > 0 && (
        <p class="pad-x note">
          More than about .020 in one gap may leave a ridge: gap {ridges.map((r) => r.gap).join(' and ')}.
        </p>
      )}
      <div class="pad-x adds">
        <button type="button" class="btn" onClick={() => onKeep(stack)}>
          This one is on the arbor
        </button>
      </div>
    </section>
  );
}

const cuts: readonly { readonly value: TestCut; readonly label: string }[] = [
  { value: 'stack', label: 'Width' },
  { value: 'one-wall', label: 'One wall' },
  { value: 'slot-both-sides', label: 'Slot, both' },
  { value: 'wood-both-sides', label: 'Tongue, both' },
  { value: 'depth', label: 'Depth' },
];

/** Reads X, wants Y: how much, and which way. */
function Test({ bench, build, want, set, height }: RecipeProps & { readonly height: Length | undefined }) {
  const own = `${bench.job.value?.id} ${build}`;
  const [cut, setCut] = useStays<TestCut>(
    `test cut ${own}`,
    cuts.map(({ value }) => value),
    'stack',
  );
  const [open, setOpen] = useState<'got' | 'want'>();
  const [given, setGiven] = useLength(`test cut measures ${own}`);
  const [other, setOther] = useLength(`test cut wanted ${own}`);
  const wanted = other ?? (cut === 'depth' ? (height ?? want) : want);
  const got = given;
  const found = got && correct(cut, { want: wanted, got });
  const stack = stackFor(set, want);
  return (
    <section class="testcut" aria-label="Test cut">
      <h2 class="sec pad-x">Test cut in scrap of the same sheet</h2>
      <div class="pad-x segs">
        <Segment
          label="What was measured"
          choices={cuts.map(({ value, label }) => ({
            label,
            chosen: cut === value,
            onTap: () => setCut(value),
          }))}
        />
      </div>
      <button type="button" class="nextset" onClick={() => setOpen('want')}>
        <span class="grow">Want</span>
        <Given value={wanted} />
      </button>
      <button type="button" class="nextset" onClick={() => setOpen('got')}>
        <span class="grow">It measures</span>
        {got ? <Given value={got} /> : <span class="muted">not measured</span>}
      </button>
      {found?.ok && <p class="pad-x verdict">{correctionText(found.value)}</p>}
      {got && found?.ok && cut === 'stack' && found.value.direction !== 'leave-it' && stack.ok && (
        <Learn bench={bench} stack={stack.value.fewest} got={got} />
      )}
      {open && (
        <KeySheet
          key={`${open}${cut}`}
          title={open === 'got' ? 'The test cut measures' : 'What is wanted'}
          tape="0.001"
          fill="length"
          now={open === 'got' ? got : wanted}
          onLength={(value) => {
            if (open === 'want') setOther(value);
            else {
              setGiven(value);
              void bench.act('Test cut measured', editRecipe(build, { got: value }));
            }
          }}
          onClose={() => setOpen(undefined)}
        />
      )}
    </section>
  );
}

/** A set that always cuts wide or narrow is told apart once, and every later stack is reckoned with it. */
function Learn({
  bench,
  stack,
  got,
}: {
  readonly bench: Bench;
  readonly stack: Stack;
  readonly got: Length;
}) {
  const found = learnCorrection(stack, got);
  if (!found.ok) return null;
  const lists = listsOf(bench.settings.value);
  const now = lists.stack.correction ?? zero;
  const says = `${found.value.s < 0n ? '−' : '+'}${writeDecimal(found.value).replace('-', '')}`;
  if (subtract(now, found.value).n === 0n)
    return <p class="pad-x note">This set cuts {says}: every stack is reckoned with it.</p>;
  return (
    <div class="pad-x adds">
      <button
        type="button"
        class="btn"
        onClick={() => keepLists(bench, { stack: { ...lists.stack, correction: found.value } })}
      >
        Remember: this set cuts {says}
      </button>
    </div>
  );
}
