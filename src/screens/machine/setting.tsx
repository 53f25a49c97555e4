import { useState } from 'preact/hooks';
import { blocks, type Checklist, isDone } from '../../plan/checklist';
import { runOf, unmadeAt } from '../../plan/run';
import { tickChanges } from '../../plan/ticking';
import { cautionOf } from '../../trade/cautions/caution';
import type { Card } from '../../trade/setups/checklist';
import { isPutUp } from '../../trade/setups/install-steps';
import type { Operation } from '../../trade/setups/operation';
import { placingOf } from '../../trade/setups/placing';
import type { Bench } from '../bench';
import { capital } from '../shared/capital';
import { Caution } from '../shared/caution';
import type { Whole } from '../shared/caution-line';
import { onWords } from '../shared/cut-words';
import { leave } from '../shared/leave';
import { NotedAtSaw, PicturesButton } from '../shared/noted';
import { OneNumber } from '../shared/one-number';
import { tickAct } from '../shared/piece-words';
import { placingWords } from '../shared/placing-words';
import { ReachLines } from '../shared/reach-lines';
import { setupTitle } from '../shared/setup-title';
import { SpoiledDock } from '../shared/spoiled';
import { ThinnerLines } from '../shared/thinner-lines';
import { useWake } from '../shared/use-wake';
import { wayTo } from './blocked';
import { CleatTold } from './cleat-told';
import { DowelMarks } from './dowel-marks';
import { Finish } from './finish';
import { LastCall } from './last-call';
import { OtherFigures } from './other-figures';
import { OtherMachine } from './other-machine';
import { OtherSize } from './other-size';
import { Pieces } from './pieces';
import { Recipe } from './recipe';
import { RowMarks } from './row-marks';
import { figuresOf, nextCard, readyOn, waitsFor } from './setting-in-hand';
import { Strip } from './strip';
import { type AskedHere, Ways } from './ways';
import * as words from './words';

type SettingProps = { readonly bench: Bench; readonly list: Checklist; readonly card: Card };

/** One figure on the machine, and all that is cut at it. */
export function SettingInHand({ bench, list, card }: SettingProps) {
  const [asking, setAsking] = useState<AskedHere>();
  const [calling, setCalling] = useState<() => void>();
  const wake = useWake(bench);
  const [first] = card.operations;
  if (!first) return null;
  const { tape } = list.plan.job;
  const run = runOf(list, card);
  const unmade = unmadeAt(list, card);
  /** Nothing is left with something begun and unmade but by a tap that says so. */
  const away = (go: () => void) => (unmade.length > 0 ? setCalling(() => go) : go());
  const toCard = (to: Card | undefined) =>
    to ? bench.go({ at: 'setup', id: to.id }, true) : leave(bench, { at: 'cuts' });
  const inHand: InHand = { bench, list, card, toCard: (to) => away(() => toCard(to)) };
  const Asking = asking && docks[asking];
  const place = { of: 'setup', id: first.setup.key } as const;
  return (
    <OneNumber
      {...{ bench, wake, tape }}
      heading={words.heading(first, tape)}
      leave={{ label: words.leave, onTap: () => away(() => leave(bench, { at: 'cuts' })) }}
      tool={<Finish bench={bench} />}
      strip={!isPutUp(first.what) && <Strip {...{ list, card, first }} />}
      row={{ done: run.map((c) => isDone(list, c)), at: run.indexOf(card) }}
      progress={words.progress(run.filter((c) => isDone(list, c)).length, run.length)}
      title={setupTitle(first)}
      figure={first.setup.figure}
      aloud={words.aloudOf(readyOn(list, card) ?? first, tape)}
      scrolls={<Caution bench={bench} code={cautionOf(first)} whole={wholeAt(list, card)} />}
      goTo={(k) => inHand.toCard(run[k])}
      main={mainAction(inHand)}
      instead={
        calling && (
          <LastCall
            {...{ list, card, unmade }}
            onStay={() => setCalling(undefined)}
            onLeave={() => {
              setCalling(undefined);
              calling();
            }}
          />
        )
      }
      onKeyDown={(event) => deskKeys(event, inHand)}
    >
      <NotedAtSaw bench={bench} place={place} parts={partsOn(card)} />
      <ReachLines bench={bench} operations={card.operations} />
      <ThinnerLines plan={list.plan} operations={card.operations} inset />
      <Pieces {...{ bench, list, card }} onTick={(op) => tick(inHand, op)} />
      <p class="pad-x note">{capital(onWords(first.setup))}</p>
      <CleatTold bench={bench} plan={list.plan} op={first} />
      <RowMarks list={list} card={card} />
      <DowelMarks list={list} card={card} />
      <OtherFigures bench={bench} op={figuresOf(list, card) ?? first} />
      <Ways {...{ bench, list, card, first }} onAsk={setAsking} />
      <Recipe bench={bench} id={first.setup.key} build={first.setup.build} machine={first.setup.machine} />
      <PicturesButton bench={bench} place={place} />
      {Asking && <Asking {...{ bench, list, card }} onClose={() => setAsking(undefined)} />}
    </OneNumber>
  );
}

const partsOn = ({ operations }: Card): readonly string[] => [...new Set(operations.map(({ part }) => part))];

/** A step of putting up has all its words; where it is blocked its reasons to go ahead come before them. */
function wholeAt(list: Checklist, { operations }: Card): Whole | undefined {
  if (!operations.some(({ what }) => isPutUp(what))) return undefined;
  const waits = operations.some((op) => !list.doing.done(op.id) && blocks(list, op).length > 0);
  return waits ? 'where-high' : 'always';
}

const docks = { spoiled: SpoiledDock, 'other-size': OtherSize, machine: OtherMachine } as const;

type InHand = SettingProps & { readonly toCard: (to: Card | undefined) => void };

const tick = ({ bench, list, card }: InHand, op: Operation): void =>
  void bench.act(tickAct(op, list.doing.done(op.id)), tickChanges(list, card, op));

/** The big bar: the piece to be cut, else the next setting, else that all is cut. */
function mainAction(inHand: InHand) {
  const { list, card, toCard } = inHand;
  const ready = readyOn(list, card);
  if (ready) {
    const onTap = () => {
      navigator.vibrate?.(10);
      tick(inHand, ready);
    };
    return {
      label: words.isDone(ready),
      sub: placingWords(placingOf(ready), list.plan.job.tape).edge,
      onTap,
    };
  }
  const waits = waitsFor(list, card);
  const to = waits && wayTo(waits.by, list, waits.op);
  if (waits && to) return { label: words.firstSeeTo[waits.by.by], onTap: () => inHand.bench.go(to) };
  const next = nextCard(list, card);
  return {
    label: next ? words.nextSetting(next, list) : words.allCut,
    sub: words.cutBoth(list, card),
    onTap: () => toCard(next),
  };
}

/** Desk keys: Space ticks, N next, B back, U undo. */
function deskKeys(event: KeyboardEvent, inHand: InHand): void {
  const { bench, list, card, toCard } = inHand;
  if (event.target instanceof HTMLButtonElement && (event.key === ' ' || event.key === 'Enter')) return;
  const run = runOf(list, card);
  const ready = readyOn(list, card);
  const beside = (by: number) => run[run.indexOf(card) + by];
  if (event.key === ' ' && ready) tick(inHand, ready);
  else if (event.key === 'n' && beside(1)) toCard(beside(1));
  else if (event.key === 'b' && beside(-1)) toCard(beside(-1));
  else if (event.key === 'u') void bench.undo();
  else return;
  event.preventDefault();
}
