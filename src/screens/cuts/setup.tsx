import { useState } from 'preact/hooks';
import { editJob, letAheadOf } from '../../job/edits';
import { type Checklist, checklistOf } from '../../plan/checklist';
import { cautionOf } from '../../trade/cautions/caution';
import { machineAt } from '../../trade/machines/machines';
import type { Card } from '../../trade/setups/checklist';
import type { Operation } from '../../trade/setups/operation';
import { Bar } from '../../ui/bar';
import { Button } from '../../ui/button';
import { ChoiceDock } from '../../ui/dock';
import { Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { Caution } from '../shared/caution';
import { GonePage } from '../shared/gone-page';
import { workWord } from '../shared/part-words';
import { ReachLines } from '../shared/reach-lines';
import { setupTitle } from '../shared/setup-title';
import { SpoiledDock } from '../shared/spoiled';
import { UndoButton } from '../shared/undo-button';
import { useWake } from '../shared/use-wake';
import { LastCall } from './last-call';
import { Recipe } from './recipe';
import { blockWords, nextCard, readyOn, tickChanges } from './setup-card';
import { OneAtATime, Pieces, Setting, StackChips } from './setup-parts';
import * as words from './words';
import './setup.css';

/** One setup: its figure giant, a box for every piece, what still wants it before it is left. */
export function SetupScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const plan = bench.plan.value;
  const list = plan && checklistOf(plan, bench.folded.value);
  const card = list?.cards.find((c) => c.id === id);
  const first = card?.operations[0];
  if (!list || !card || !first) return <Gone bench={bench} id={id} />;
  return <SetupInHand {...{ bench, list, card, first }} />;
}

/** The figure of a setup changes with the readings; its recipe stays under the figure it had. */
function Gone({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  return (
    <GonePage
      title={words.setup}
      leave={{ label: words.cuts, word: true, onTap: () => bench.go({ at: 'cuts' }) }}
      says={words.setupGone}
    >
      <Recipe bench={bench} id={id.split('~~')[0] ?? id} />
    </GonePage>
  );
}

type SetupInHandProps = {
  readonly bench: Bench;
  readonly list: Checklist;
  readonly card: Card;
  readonly first: Operation;
};

function SetupInHand({ bench, list, card, first }: SetupInHandProps) {
  const [spoiling, setSpoiling] = useState(false);
  const [asked, setAsked] = useState<Operation>();
  const awake = useWake(bench) === 'on';
  const { setup } = first;
  const tick = (op: Operation) =>
    void bench.act(words.tickAct(op, list.doing.done(op.id)), tickChanges(list, card, op));
  return (
    <>
      <Bar
        title={setupTitle(first)}
        sub={words.settingOf(list.cards.indexOf(card) + 1, list.cards.length, awake)}
        leave={{ label: words.cuts, onTap: () => bench.go({ at: 'cuts' }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class="page">
        <section class="setup">
          <Setting list={list} card={card} setup={setup} />
          <ReachLines bench={bench} operations={card.operations} />
          <StackChips list={list} card={card} setup={setup} go={bench.go} />
          <OneAtATime go={bench.go} op={first} />
          <Pieces list={list} card={card} saving={bench.saving.value} onTick={tick} onBlocked={setAsked} />
          <LastCall list={list} card={card} />
        </section>
        {!machineAt(setup.machine).noRecipe && <Recipe bench={bench} id={setup.key} build={setup.build} />}
        <Then list={list} card={card} go={bench.go} />
      </main>
      <Actions {...{ bench, list, card, first }} onTick={tick} onSpoiled={() => setSpoiling(true)} />
      {spoiling && <SpoiledDock bench={bench} list={list} card={card} onClose={() => setSpoiling(false)} />}
      {asked && <GoAhead act={bench.act} list={list} op={asked} onClose={() => setAsked(undefined)} />}
    </>
  );
}

type ThenProps = { readonly list: Checklist; readonly card: Card; readonly go: Bench['go'] };

/** The setup that comes after this one. */
function Then({ list, card, go }: ThenProps) {
  const next = nextCard(list, card);
  const op = next?.operations[0];
  if (!next || !op) return null;
  const { figure } = op.setup;
  return (
    <button type="button" class="nextset" onClick={() => go({ at: 'setup', id: next.id }, true)}>
      <span class="grow">
        <b>{words.comesNext(op)}</b>
        <span class="s muted block">{workWord(op.name)}</span>
      </span>
      {figure && <Mixed value={figure.value} tape={list.plan.job.tape} />}
    </button>
  );
}

type ActionsProps = SetupInHandProps & {
  readonly onTick: (op: Operation) => void;
  readonly onSpoiled: () => void;
};

/** The bar below: what spoils a piece, what leaves the setup, and the next tick. */
function Actions({ bench, list, card, first, onTick, onSpoiled }: ActionsProps) {
  const ready = readyOn(list, card);
  const next = nextCard(list, card);
  const leave = () => {
    if (next)
      void bench.act(words.nowAt(next.operations[0], list.plan.job.tape), editJob({ standing: next.id }));
    bench.go(next ? { at: 'setup', id: next.id } : { at: 'cuts' }, next !== undefined);
  };
  const isPiece = (op: Operation) => op.part !== 'test' && !op.part.endsWith('~bench');
  const label = ready ? words.isDone(ready) : next ? words.nextSetup : words.allCut;
  return (
    <div class="fixedbar three">
      <Caution bench={bench} code={cautionOf(first)} />
      {card.operations.some(isPiece) && <Button label={words.spoiled} onTap={onSpoiled} />}
      {ready && <Button label={words.leave} onTap={leave} />}
      <Button look="main" label={label} onTap={() => (ready ? onTick(ready) : leave())} />
    </div>
  );
}

type GoAheadProps = {
  readonly act: Bench['act'];
  readonly list: Checklist;
  readonly op: Operation;
  readonly onClose: () => void;
};

/** What a blocked operation waits for, and the reasons to let it go ahead. */
const GoAhead = ({ act, list, op, onClose }: GoAheadProps) => (
  <ChoiceDock
    title={words.waitsFor(op, blockWords(list, op))}
    choices={words.reasons.map((value) => ({ value, label: value }))}
    chosen={undefined}
    onChoose={(why) => {
      void act(words.aheadAct(op), letAheadOf(op.id, why));
      onClose();
    }}
    onClose={onClose}
  />
);
