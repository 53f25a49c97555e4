import { useState } from 'preact/hooks';
import { type Checklist, checklistOf, cutCount, groupsOf, isDone, standingCard } from '../../plan/checklist';
import { breakdownCount } from '../../plan/progress';
import type { Card } from '../../trade/setups/checklist';
import { Bar, Segment } from '../../ui/bar';
import { Icon } from '../../ui/icon';
import { Mixed } from '../../ui/mixed';
import { StoryStick } from '../../ui/story-stick';
import type { Bench } from '../bench';
import { counted } from '../shared/counted';
import { buildWords, whichWords } from '../shared/cut-words';
import { setupTitle } from '../shared/setup-title';
import { TooManyOperations } from '../shared/too-many';
import { UndoButton } from '../shared/undo-button';
import { ByPart } from './by-part';
import { Misfits } from './misfits';
import { plainCuts } from './plain';

/** The checklist: sorted by what stands on the machine, never by part, unless a part is asked for. */
export function CutsScreen({ bench }: { readonly bench: Bench }) {
  const [by, setBy] = useState<'setup' | 'part'>('setup');
  const plan = bench.plan.value;
  if (!plan || plan.operations.length === 0) return <Empty bench={bench} over={plan?.over} />;
  const list = checklistOf(plan, bench.folded.value);
  const { cut, of } = cutCount(list);
  const stand = standingCard(list);
  return (
    <>
      <Bar title="Cuts" sub={`${cut} of ${of} cut`}>
        <UndoButton bench={bench} />
      </Bar>
      <main class="page">
        {list.cards.length > 0 && (
          <div class="progress pad-x">
            <StoryStick
              done={list.cards.map((card) => isDone(list, card))}
              now={stand && list.cards.indexOf(stand)}
              label={`${list.cards.filter((c) => isDone(list, c)).length} of ${counted(list.cards.length, 'setup', 'setups')} done`}
            />
          </div>
        )}
        <BreakDown bench={bench} />
        <OrderLine list={list} />
        <Misfits list={list} bench={bench} />
        <div class="pad-x segs">
          <Segment
            label="Sorted"
            choices={[
              { label: 'By setup', chosen: by === 'setup', onTap: () => setBy('setup') },
              { label: 'By part', chosen: by === 'part', onTap: () => setBy('part') },
            ]}
          />
        </div>
        {by === 'setup' ? (
          <BySetup list={list} stand={stand} bench={bench} />
        ) : (
          <ByPart list={list} bench={bench} />
        )}
        <div class="pad-x adds">
          <button
            type="button"
            class="btn quiet"
            onClick={() => void bench.phone.share(`${plan.job.name || 'Job'} cuts`, plainCuts(list))}
          >
            <Icon name="share" />
            Copy out as text
          </button>
          <button type="button" class="btn quiet" onClick={() => print()}>
            Print for a helper
          </button>
        </div>
      </main>
      <pre class="printed" aria-hidden="true">
        {plainCuts(list)}
      </pre>
    </>
  );
}

const Empty = ({ bench, over }: { readonly bench: Bench; readonly over: number | undefined }) => (
  <>
    <Bar title="Cuts" sub={bench.job.value?.name ?? ''}>
      <UndoButton bench={bench} />
    </Bar>
    <main class="page">
      {over === undefined ? (
        <p class="pad-x empty-line">
          Nothing to cut yet. Give a case its outside sizes, or lay out a board: its cuts stand here, sorted
          by what is on the machine.
        </p>
      ) : (
        <TooManyOperations over={over} />
      )}
      <div class="pad-x">
        <button type="button" class="btn main full" onClick={() => bench.go({ at: 'job' })}>
          To the job
        </button>
      </div>
    </main>
  </>
);

/** How good the order is: proved, or how far from the bound; or the ring that keeps it from being one. */
function OrderLine({ list }: { readonly list: Checklist }) {
  const { order, byId } = list.plan;
  if (!order.ok) {
    const names = order.error.ring.map((id) => {
      const op = byId.get(id);
      return op ? `${op.name}, ${whichWords(op) || op.what}` : id;
    });
    return (
      <p class="wrongline pad-x">
        <Icon name="warn" />
        These wait for one another in a ring, so none can begin: {names.join(' → ')} → {names[0]}. Take one
        “after” away.
      </p>
    );
  }
  const { runs, proved, leastRuns } = order.value;
  const bound = proved ? 'no order has fewer' : `no order has fewer than ${leastRuns}`;
  return (
    <p class="pad-x note">
      {counted(runs.length, 'setting', 'settings')} in {counted(order.value.builds, 'set-up', 'set-ups')} of
      blade, stack or bench; {bound}.
    </p>
  );
}

type BySetupProps = {
  readonly list: Checklist;
  readonly stand: Card | undefined;
  readonly bench: Bench;
};

/** Cards in order under the blade or stack they share; what is done is folded at the end. */
function BySetup({ list, stand, bench }: BySetupProps) {
  const [shown, setShown] = useState<ReadonlySet<string>>(new Set());
  const open = list.cards.filter((card) => !isDone(list, card));
  const done = list.cards.filter((card) => isDone(list, card));
  const builds = runsOfBuild(open);
  return (
    <>
      {builds.map((cards) => {
        const [first] = cards;
        const op = first?.operations[0];
        if (!first || !op) return null;
        const all = cards.length <= mostShown || shown.has(first.id);
        return (
          <div key={first.id} class="build">
            <h2 class="sec pad-x">{buildWords(op.setup, list.plan.job.tape)}</h2>
            {(all ? cards : cards.slice(0, mostShown - 1)).map((card) => (
              <CardRow key={card.id} {...{ card, list, bench }} now={card === stand} />
            ))}
            {!all && (
              <button
                type="button"
                class="nextset more"
                onClick={() => setShown(new Set([...shown, first.id]))}
              >
                <span class="grow">{cards.length - mostShown + 1} more settings at this one</span>
                <Icon name="down" />
              </button>
            )}
          </div>
        );
      })}
      {done.length > 0 && <Done cards={done} list={list} bench={bench} />}
    </>
  );
}

const mostShown = 6;

function Done({
  cards,
  list,
  bench,
}: {
  readonly cards: readonly Card[];
  readonly list: Checklist;
  readonly bench: Bench;
}) {
  const [open, setOpen] = useState(false);
  const pieces = cards.reduce((n, card) => n + card.operations.length, 0);
  return (
    <section aria-label="Done">
      <button type="button" class="nextset" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span class="grow">
          <b>{cards.length === 1 ? 'One setting done' : `${cards.length} settings done`}</b>
          <span class="s muted block">
            {pieces === 1 ? 'one tick' : `${pieces} ticks`}; their figures stay on the card
          </span>
        </span>
        <Icon name="down" />
      </button>
      {open && cards.map((card) => <CardRow key={card.id} {...{ card, list, bench }} now={false} />)}
    </section>
  );
}

function CardRow({
  card,
  list,
  bench,
  now,
}: {
  readonly card: Card;
  readonly list: Checklist;
  readonly bench: Bench;
  readonly now: boolean;
}) {
  const [op] = card.operations;
  if (!op) return null;
  const cut = card.operations.filter((o) => list.doing.done(o.id)).length;
  const names = groupsOf(card, list.plan).map((g) => g.name);
  const count = card.operations.length > 1 ? ` · ${cut} of ${card.operations.length}` : '';
  const { figure } = op.setup;
  return (
    <button
      type="button"
      class={now ? 'nextset now' : 'nextset'}
      onClick={() => bench.go({ at: 'setup', id: card.id })}
    >
      <span class="grow">
        <b>{setupTitle(op)}</b>
        <span class="s muted block">
          {names.slice(0, 3).join(', ')}
          {names.length > 3 && ` and ${names.length - 3} more`}
          {count}
        </span>
      </span>
      {figure && <Mixed value={figure.value} rest={figure.rest} tape={list.plan.job.tape} />}
    </button>
  );
}

/** Cards that follow one another at one build. */
function runsOfBuild(cards: readonly Card[]): readonly (readonly Card[])[] {
  const runs: Card[][] = [];
  for (const card of cards) {
    const last = runs[runs.length - 1];
    const build = card.operations[0]?.setup.build;
    if (last && last[0]?.operations[0]?.setup.build === build) last.push(card);
    else runs.push([card]);
  }
  return runs;
}

/** Pieces come out of their sheets before anything else is cut in them. */
function BreakDown({ bench }: { readonly bench: Bench }) {
  const job = bench.job.value;
  const { cut, of } = job ? breakdownCount(job, bench.folded.value) : { cut: 0, of: 0 };
  if (of === 0 || cut === of) return null;
  return (
    <button type="button" class="nextset" onClick={() => bench.go({ at: 'sheets' })}>
      <span class="grow">
        <b>Break down the sheets</b>
        <span class="s muted block">
          {cut} of {counted(of, 'cut', 'cuts')} made
        </span>
      </span>
      <Icon name="next" />
    </button>
  );
}
