import { useLayoutEffect, useRef } from 'preact/hooks';
import { blocks, type Checklist, type Group, groupsOf } from '../../plan/checklist';
import type { Card } from '../../trade/setups/checklist';
import type { Operation } from '../../trade/setups/operation';
import { type Placing, placingOf } from '../../trade/setups/placing';
import { Icon } from '../../ui/icon';
import { PieceOnMachine } from '../../ui/piece-on-machine';
import { LetterTick } from '../../ui/tick-box';
import type { Bench } from '../bench';
import { cutOtherwise } from '../shared/at-setup';
import { laidOut } from '../shared/laid-out';
import { OneMark } from '../shared/one-mark';
import { groupName, pieceName, pieceTick } from '../shared/piece-words';
import { placingWords } from '../shared/placing-words';
import { Blocked } from './blocked';
import './machine.css';

type PiecesProps = {
  readonly bench: Bench;
  readonly list: Checklist;
  readonly card: Card;
  readonly onTick: (op: Operation) => void;
};

/** Two pieces stand side by side, each as it lies; more stand in rows; many of one part have a box each. */
export function Pieces({ card, ...props }: PiecesProps) {
  // a test cut that fitted has nothing more to say
  const operations = card.operations.filter((op) => op.what !== 'test' || !props.list.doing.done(op.id));
  const groups = groupsOf({ ...card, operations }, props.list.plan);
  const pair = operations.length === 2;
  const blocked = operations.filter((op) => blocks(props.list, op).length > 0);
  const firstBlocked = blocked[0];
  const top = useRef<HTMLDivElement>(null);
  // what was blocked stood above: without it, what is left begins at the top again
  useLayoutEffect(() => top.current?.parentElement?.scrollTo(0, 0), [blocked.length]);
  const has = (group: Group) => group.pieces.some(({ op }) => op === firstBlocked);
  return (
    <div class={pair ? 'mpieces pair' : 'mpieces'} ref={top}>
      <OneMark bench={props.bench} plan={props.list.plan} operations={operations} />
      {groups.map((group) =>
        group.pieces.length > 2 ? (
          <Many key={group.part} group={group} unfolded={has(group)} {...props} />
        ) : (
          group.pieces.map(({ op }) => (
            <Piece key={op.id} op={op} unfolded={op === firstBlocked} {...props} />
          ))
        ),
      )}
    </div>
  );
}

type ItsProps = Omit<PiecesProps, 'card'> & {
  /** It is the first that is blocked: its reasons are shown. */
  readonly unfolded: boolean;
};

type PieceProps = ItsProps & { readonly op: Operation };

/** One piece: its box, and how it lies, in the picture and in words from the same answer. */
function Piece({ op, bench, list, onTick, unfolded }: PieceProps) {
  const ticked = list.doing.done(op.id);
  const { tape } = list.plan.job;
  const waits = ticked ? [] : blocks(list, op);
  if (waits.length > 0)
    return (
      <div class="mpiece waits">
        <b>{pieceName(op, tape)}</b>
        <Lies placing={placingOf(op)} op={op} list={list} />
        <Blocked {...{ bench, list, op }} unfolded={unfolded} />
      </div>
    );
  const saving = bench.saving.value.has(op.id);
  return (
    <button
      type="button"
      class={saving ? 'mpiece saving' : 'mpiece'}
      role="checkbox"
      aria-checked={ticked}
      aria-busy={saving}
      onClick={() => onTick(op)}
    >
      <span class="sq">{ticked && <Icon name="tick" />}</span>
      <b>{pieceName(op, tape)}</b>
      <Lies placing={placingOf(op)} op={op} list={list} />
      <Notes list={list} op={op} />
    </button>
  );
}

type LiesProps = { readonly placing: Placing; readonly op: Operation; readonly list: Checklist };

function Lies({ placing, op, list }: LiesProps) {
  const { edge, ...others } = placingWords(placing, list.plan.job.tape);
  const picture = laidOut(placing, op, list.plan);
  return (
    <>
      {picture && <PieceOnMachine {...picture} />}
      <span class="lies">
        {edge && <b>{edge}</b>}
        {Object.values(others).map((line) => line && <span key={line}>{line}</span>)}
      </span>
    </>
  );
}

/** What is said of one piece alone: why it was let go ahead, or that it was cut to another figure. */
function Notes({ list, op }: { readonly list: Checklist; readonly op: Operation }) {
  const notes = [list.plan.job.let[op.id], cutOtherwise(list, op)].filter(Boolean);
  return (
    <>
      {notes.map((note) => (
        <small key={note}>{note}</small>
      ))}
    </>
  );
}

/** Several pieces of one part: a box for each, and how they all lie. */
function Many({ group, bench, list, onTick, unfolded }: ItsProps & { readonly group: Group }) {
  const { pieces } = group;
  const { tape } = list.plan.job;
  const waiting = pieces.find(({ op }) => blocks(list, op).length > 0)?.op;
  const [first] = pieces;
  return (
    <div class="mpiece many">
      <b>{groupName(group, tape)}</b>
      {first && <Lies placing={placingOf(first.op)} op={first.op} list={list} />}
      {waiting && <Blocked {...{ bench, list }} op={waiting} unfolded={unfolded} />}
      <div class="copies">
        {pieces.map(({ op, letter }) => (
          <LetterTick
            key={op.id}
            letter={letter}
            label={pieceTick(op, tape)}
            ticked={list.doing.done(op.id)}
            blocked={blocks(list, op).length > 0}
            saving={bench.saving.value.has(op.id)}
            onTap={() => blocks(list, op).length === 0 && onTick(op)}
          />
        ))}
      </div>
    </div>
  );
}
