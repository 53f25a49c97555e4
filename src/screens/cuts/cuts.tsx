import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { type Checklist, checklistOf, cutCount, isDone, standingCard } from '../../plan/checklist';
import { breakdownCount } from '../../plan/progress';
import type { Card } from '../../trade/setups/checklist';
import { Bar, Segment } from '../../ui/bar';
import { Button } from '../../ui/button';
import { Icon } from '../../ui/icon';
import { StoryStick } from '../../ui/story-stick';
import type { Bench } from '../bench';
import { OneMark } from '../shared/one-mark';
import { TimerLines } from '../shared/timer-lines';
import { TooManyOperations } from '../shared/too-many';
import { UndoButton } from '../shared/undo-button';
import { ByPart } from './by-part';
import { BySetup } from './by-setup';
import { Misfits } from './misfits';
import { plainCuts } from './plain';
import * as words from './words';
import './cuts.css';

/** The checklist: sorted by what stands on the machine, never by part, unless a part is asked for. */
export function CutsScreen({ bench }: { readonly bench: Bench }) {
  const plan = bench.plan.value;
  const folded = bench.folded.value;
  const list = useMemo(() => plan && checklistOf(plan, folded), [plan, folded]);
  if (!list || list.plan.operations.length === 0) return <Empty bench={bench} over={plan?.over} />;
  return <Cuts bench={bench} list={list} />;
}

type CutsProps = { readonly bench: Bench; readonly list: Checklist };

function Cuts({ bench, list }: CutsProps) {
  const [by, setBy] = useState<'setup' | 'part'>('setup');
  const { plan } = list;
  const { cut, of } = cutCount(list);
  const stand = standingCard(list);
  return (
    <>
      <Bar title={words.cuts} sub={words.cutOf(cut, of)}>
        <UndoButton bench={bench} />
      </Bar>
      <main class="page">
        {list.cards.length > 0 && <Progress list={list} stand={stand} />}
        <BreakDown bench={bench} />
        <TimerLines job={plan.job} />
        <OrderLine list={list} />
        <Misfits list={list} bench={bench} />
        <OneMark bench={bench} plan={plan} operations={plan.operations} />
        <div class="pad-x segs">
          <Segment
            label={words.sorted}
            choices={[
              { label: words.bySetup, chosen: by === 'setup', onTap: () => setBy('setup') },
              { label: words.byPart, chosen: by === 'part', onTap: () => setBy('part') },
            ]}
          />
        </div>
        {by === 'setup' ? (
          <BySetup list={list} stand={stand} go={bench.go} />
        ) : (
          <ByPart list={list} go={bench.go} />
        )}
        <Out phone={bench.phone} go={bench.go} list={list} />
      </main>
      <Printed list={list} />
    </>
  );
}

type OutProps = {
  readonly phone: Pick<Bench['phone'], 'share'>;
  readonly go: Bench['go'];
  readonly list: Checklist;
};

/** The plain list, copied out or printed; sheets with boxes for a helper, and the way back for what was ticked. */
const Out = ({ phone, go, list }: OutProps) => (
  <div class="pad-x adds">
    <Button
      look="quiet"
      icon="share"
      label={words.copyOut}
      onTap={() => void phone.share(words.sharedName(list.plan.job.name), plainCuts(list))}
    />
    <Button look="quiet" label={words.printOut} onTap={() => print()} />
    <Button look="quiet" label={words.setupSheets} onTap={() => go({ at: 'print', id: 'setups' })} />
    <Button look="quiet" label={words.tickIn} onTap={() => go({ at: 'tickin' })} />
    <a class="btn quiet" href="#/timers">
      {words.timers}
    </a>
  </div>
);

/** The plain list where it is printed, on whoever's word: written as a print begins, for it is long in a large job. */
function Printed({ list }: { readonly list: Checklist }) {
  const paper = useRef<HTMLPreElement>(null);
  useEffect(() => {
    const write = () => {
      if (paper.current) paper.current.textContent = plainCuts(list);
    };
    addEventListener('beforeprint', write);
    return () => removeEventListener('beforeprint', write);
  }, [list]);
  return <pre class="printed" aria-hidden="true" ref={paper} />;
}

type ProgressProps = { readonly list: Checklist; readonly stand: Card | undefined };

function Progress({ list, stand }: ProgressProps) {
  const done = list.cards.map((card) => isDone(list, card));
  return (
    <div class="progress pad-x">
      <StoryStick
        done={done}
        now={stand && list.cards.indexOf(stand)}
        label={words.setupsDone(done.filter(Boolean).length, done.length)}
      />
    </div>
  );
}

const Empty = ({ bench, over }: { readonly bench: Bench; readonly over: number | undefined }) => (
  <>
    <Bar title={words.cuts} sub={bench.job.value?.name ?? ''}>
      <UndoButton bench={bench} />
    </Bar>
    <main class="page">
      {over === undefined ? (
        <p class="pad-x empty-line">{words.nothingToCut}</p>
      ) : (
        <TooManyOperations over={over} />
      )}
      <div class="pad-x">
        <Button look="main full" label={words.toJob} onTap={() => bench.go({ at: 'job' })} />
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
      return op ? words.ringMember(op, list.plan.job.tape) : id;
    });
    return (
      <p class="wrongline pad-x">
        <Icon name="warn" />
        {words.ring(names)}
      </p>
    );
  }
  const { runs, builds, proved, leastRuns } = order.value;
  return <p class="pad-x note">{words.order({ settings: runs.length, builds, proved, least: leastRuns })}</p>;
}

/** Pieces come out of their sheets before anything else is cut in them. */
function BreakDown({ bench }: { readonly bench: Bench }) {
  const job = bench.job.value;
  const { cut, of } = job ? breakdownCount(job, bench.folded.value) : { cut: 0, of: 0 };
  if (of === 0 || cut === of) return null;
  return (
    <button type="button" class="nextset" onClick={() => bench.go({ at: 'sheets' })}>
      <span class="grow">
        <b>{words.breakDown}</b>
        <span class="s muted block">{words.cutsMade(cut, of)}</span>
      </span>
      <Icon name="next" />
    </button>
  );
}
