import { useState } from 'preact/hooks';
import { editJob, letAheadOf, tickOf } from '../../job/edits';
import type { Change } from '../../job/entry';
import { equals } from '../../length/length';
import type { Tape } from '../../length/tape';
import { writeLength } from '../../length/write';
import { blocks, type Checklist, checklistOf, groupsOf, isDone } from '../../plan/checklist';
import { cautionOf } from '../../trade/cautions/caution';
import { machineAt } from '../../trade/machines/machines';
import { jointOf } from '../../trade/setups/changes';
import type { Card } from '../../trade/setups/checklist';
import { isStep, type Operation } from '../../trade/setups/operation';
import { Bar } from '../../ui/bar';
import { ChoiceDock } from '../../ui/dock';
import { Mixed, Remainder } from '../../ui/mixed';
import { LetterTick } from '../../ui/tick-box';
import type { Bench } from '../bench';
import { Caution } from '../shared/caution';
import { buildWords, onWords, whatWords } from '../shared/cut-words';
import { setupTitle } from '../shared/setup-title';
import { SpoiledDock } from '../shared/spoiled';
import { UndoButton } from '../shared/undo-button';
import { useWake } from '../shared/use-wake';
import { LastCall } from './last-call';
import { Recipe } from './recipe';

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
    <>
      <Bar title="Setup" leave={{ label: 'Cuts', word: true, onTap: () => bench.go({ at: 'cuts' }) }} />
      <main class="page">
        <p class="pad-x empty-line">
          Nothing wants this setup any more: a size has changed since. What was found out at it is kept.
        </p>
        <Recipe bench={bench} id={id.split('~~')[0] ?? id} />
      </main>
    </>
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
  const wake = useWake(bench);
  const { setup } = first;
  const machine = machineAt(setup.machine);
  const { tape } = list.plan.job;
  const at = list.cards.indexOf(card);
  const next =
    list.cards.slice(at + 1).find((c) => !isDone(list, c)) ??
    list.cards.find((c) => c !== card && !isDone(list, c));
  const ready = card.operations.find((op) => !list.doing.done(op.id) && blocks(list, op).length === 0);
  const groove = ready?.groove ?? card.operations.find((op) => op.groove)?.groove;
  const tick = (op: Operation) =>
    void bench.act(`${list.doing.done(op.id) ? 'Not cut' : 'Cut'}: ${op.name}`, tickChanges(list, card, op));
  const leave = (to: Card | undefined) => {
    if (to) void bench.act(`Now at: ${titleOf(to, tape)}`, editJob({ standing: to.id }));
    bench.go(to ? { at: 'setup', id: to.id } : { at: 'cuts' }, to !== undefined);
  };
  return (
    <>
      <Bar
        title={setupTitle(first)}
        sub={`Setting ${at + 1} of ${list.cards.length}, ${wake === 'on' ? 'stays on' : 'may sleep'}`}
        leave={{ label: 'Cuts', onTap: () => bench.go({ at: 'cuts' }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class="page">
        <section class="setup">
          {setup.figure && (
            <div class="setting">
              <Mixed value={setup.figure.value} rest={setup.figure.rest} size="setting" tape={tape} />
              <div class="side">
                <Remainder rest={setup.figure.rest} tape={tape} />
              </div>
            </div>
          )}
          <p class="pad-x ends">
            {buildWords(setup, tape)}
            {onWords(setup) && `: ${onWords(setup)}`}.{stackFor(list, card)}
          </p>
          {machine.cuts === 'stack' && (
            <div class="pad-x runacts">
              <button type="button" class="chip" onClick={() => bench.go({ at: 'stack', id: setup.build })}>
                Stack and test cut
              </button>
              {groove && (
                <button
                  type="button"
                  class="chip"
                  onClick={() => bench.go({ at: 'saw', board: groove.board, setting: groove.setting })}
                >
                  One at a time at the saw
                </button>
              )}
            </div>
          )}
          <OneAtATime bench={bench} op={first} />
          {groupsOf(card, list.plan).map((group) => (
            <div key={group.part} class="piece">
              <div class="nm">
                {group.name}
                <span>
                  {pieceNote(
                    list,
                    group.pieces.map((p) => p.op),
                  )}
                </span>
              </div>
              <div class="copies">
                {group.pieces.map(({ op, letter }) => (
                  <LetterTick
                    key={op.id}
                    letter={letter}
                    label={`${op.name}, ${whatWords(op)}`}
                    ticked={list.doing.done(op.id)}
                    blocked={blocks(list, op).length > 0}
                    saving={bench.saving.value.has(op.id)}
                    onTap={() => (blocks(list, op).length > 0 ? setAsked(op) : tick(op))}
                  />
                ))}
              </div>
            </div>
          ))}
          <LastCall list={list} card={card} />
        </section>
        {!machine.noRecipe && <Recipe bench={bench} id={setup.key} build={setup.build} />}
        {next && (
          <button type="button" class="nextset" onClick={() => bench.go({ at: 'setup', id: next.id }, true)}>
            <span class="grow">
              <b>Then: {next.operations[0] && setupTitle(next.operations[0])}</b>
              <span class="s muted block">{next.operations[0]?.name}</span>
            </span>
            {next.operations[0]?.setup.figure && (
              <Mixed value={next.operations[0].setup.figure.value} tape={tape} />
            )}
          </button>
        )}
      </main>
      <div class="fixedbar three">
        <Caution bench={bench} code={cautionOf(first)} />
        {card.operations.some((op) => op.part !== 'test' && !op.part.endsWith('~bench')) && (
          <button type="button" class="btn" onClick={() => setSpoiling(true)}>
            Spoiled
          </button>
        )}
        {ready && (
          <button type="button" class="btn" onClick={() => leave(next)}>
            Leave
          </button>
        )}
        <button type="button" class="btn main" onClick={() => (ready ? tick(ready) : leave(next))}>
          {ready ? doneWords(ready) : next ? 'Next setup' : 'All cut. Back to Cuts'}
        </button>
      </div>
      {spoiling && <SpoiledDock bench={bench} list={list} card={card} onClose={() => setSpoiling(false)} />}
      {asked && (
        <ChoiceDock
          title={`${asked.name} waits for: ${blockWords(list, asked)}`}
          choices={reasons.map((value) => ({ value, label: value }))}
          chosen={undefined}
          onChoose={(why) => {
            void bench.act(`Let go ahead: ${asked.name}`, letAheadOf(asked.id, why));
            setAsked(undefined);
          }}
          onClose={() => setAsked(undefined)}
        />
      )}
    </>
  );
}

const oneByOne: Partial<Record<Operation['what'], string>> = {
  marks: 'marks',
  slide: 'sticks',
  'front-on': 'fit',
};

/** Steps of a bank of drawers may be gone through one number at a time. */
function OneAtATime({ bench, op }: { readonly bench: Bench; readonly op: Operation }) {
  const what = oneByOne[op.what];
  if (!what) return null;
  const id = op.part.replace(/~bench$/, '');
  return (
    <div class="pad-x runacts">
      <button type="button" class="chip" onClick={() => bench.go({ at: 'one', id, what })}>
        One at a time
      </button>
      <button type="button" class="chip" onClick={() => bench.go({ at: 'fronts', id })}>
        The fronts, drawn
      </button>
    </div>
  );
}

/** Which stock the stack is built for: a dado fits its own sheet, whatever it is cut in. */
function stackFor(list: Checklist, card: Card): string {
  const names = card.operations.flatMap(
    (op) => list.plan.job.stock.find((s) => s.id === op.fits)?.name ?? [],
  );
  const [first] = names;
  return first ? ` Build the stack for ${[...new Set(names)].join(' and ')}.` : '';
}

/** Why a blocked cut may go ahead: kept with it. */
const reasons = [
  'Go ahead: measured another way',
  'Go ahead: cut over size, to be trimmed',
  'Go ahead: already done elsewhere',
  'Go ahead: I know what I do',
];

const titleOf = (card: Card, tape?: Tape): string => {
  const [op] = card.operations;
  if (!op) return '';
  const figure = op.setup.figure ? ` ${writeLength(op.setup.figure.value, tape)}` : '';
  return `${setupTitle(op)}${figure}`;
};

function doneWords(op: Operation): string {
  if (op.what === 'test') return 'Test cut fits';
  if (isStep(op)) return `${setupTitle(op)}: done`;
  return `${op.name} is cut`;
}

/** A tick says as well what stands on the machine, where that was not known. */
function tickChanges(list: Checklist, card: Card, op: Operation): readonly Change[] {
  if (list.doing.done(op.id)) return [{ kind: 'untick', op: op.id }];
  const stands = list.plan.job.standing === card.id ? [] : editJob({ standing: card.id });
  return [...tickOf(op.id, op.figure, jointOf(op)), ...stands];
}

function blockWords(list: Checklist, op: Operation): string {
  const words = blocks(list, op).map((b) =>
    b.by === 'stock'
      ? `${list.plan.job.stock.find((s) => s.id === b.stock)?.name ?? 'the sheet'} is not measured`
      : b.by === 'layout'
        ? 'its grooves cannot be set out yet, see Marks'
        : b.by === 'opening'
          ? `its opening, not measured ${b.bank.endsWith('~back') ? 'front and back' : 'yet'}`
          : `${b.op.name}, ${isStep(b.op) ? setupTitle(b.op).toLowerCase() : whatWords(b.op)}`,
  );
  return words.length > 2 ? `${words[0]} and ${words.length - 1} more` : words.join(' and ');
}

/** What is said beside the pieces: what blocks the first, or what a cut one was cut to. */
function pieceNote(list: Checklist, ops: readonly Operation[]): string {
  const off = ops.find((op) => {
    const was = list.cutTo(op.id)?.figure;
    return was && !equals(was, op.figure) && op.what !== 'test' && !isStep(op);
  });
  const was = off && list.cutTo(off.id)?.figure;
  if (was)
    return `cut at ${writeLength(was, list.plan.job.tape)}, now wants ${writeLength(off.figure, list.plan.job.tape)}`;
  const blocked = ops.find((op) => blocks(list, op).length > 0);
  if (blocked) return `blocked by ${blockWords(list, blocked)}`;
  const let_ = ops.map((op) => list.plan.job.let[op.id]).find(Boolean);
  if (let_) return let_;
  const [first] = ops;
  const done = ops.filter((op) => list.doing.done(op.id)).length;
  return done > 0 && done < ops.length ? `${done} of ${ops.length}` : first ? whatWords(first) : '';
}
