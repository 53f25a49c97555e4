import { blocks, type Checklist, type Group, groupsOf } from '../../plan/checklist';
import { machineAt } from '../../trade/machines/machines';
import type { Card } from '../../trade/setups/checklist';
import type { Operation } from '../../trade/setups/operation';
import type { Setup } from '../../trade/setups/setup';
import { Chip } from '../../ui/button';
import { Mixed, Remainder } from '../../ui/mixed';
import { LetterTick } from '../../ui/tick-box';
import type { Bench } from '../bench';
import { pieceNote, readyOn, stocksFitted } from './setup-card';
import * as words from './words';
import './setup.css';
import '../shared/set-rows.css';

type SettingProps = { readonly list: Checklist; readonly card: Card; readonly setup: Setup };

/** The figure a machine is set to, and what stands on it. */
export function Setting({ list, card, setup }: SettingProps) {
  const { tape } = list.plan.job;
  const { figure } = setup;
  return (
    <>
      {figure && (
        <div class="setting">
          <Mixed value={figure.value} rest={figure.rest} size="setting" tape={tape} />
          <div class="side">
            <Remainder rest={figure.rest} tape={tape} />
          </div>
        </div>
      )}
      <p class="pad-x ends">{words.standsOn(setup, tape, stocksFitted(list, card))}</p>
    </>
  );
}

/** From a dado stack: to the stack itself, and to its grooves one at a time. */
export function StackChips({ list, card, setup, go }: SettingProps & { readonly go: Bench['go'] }) {
  if (machineAt(setup.machine).cuts !== 'stack') return null;
  const groove = readyOn(list, card)?.groove ?? card.operations.find((op) => op.groove)?.groove;
  return (
    <div class="pad-x runacts">
      <Chip label={words.stackAndTest} onTap={() => go({ at: 'stack', id: setup.build })} />
      {groove && (
        <Chip
          label={words.oneAtSaw}
          onTap={() => go({ at: 'saw', board: groove.board, setting: groove.setting })}
        />
      )}
    </div>
  );
}

const oneByOne: Partial<Record<Operation['what'], string>> = {
  marks: 'marks',
  slide: 'sticks',
  'front-on': 'fit',
};

/** Steps of a bank of drawers may be gone through one number at a time. */
export function OneAtATime({ go, op }: { readonly go: Bench['go']; readonly op: Operation }) {
  const what = oneByOne[op.what];
  if (!what) return null;
  const id = op.part.replace(/~bench$/, '');
  return (
    <div class="pad-x runacts">
      <Chip label={words.oneAtATime} onTap={() => go({ at: 'one', id, what })} />
      <Chip label={words.frontsDrawn} onTap={() => go({ at: 'fronts', id })} />
    </div>
  );
}

type Ticking = {
  readonly list: Checklist;
  readonly saving: ReadonlySet<string>;
  readonly onTick: (op: Operation) => void;
  readonly onBlocked: (op: Operation) => void;
};

/** A box for every piece of a card, part by part. */
export const Pieces = ({ card, ...ticking }: Ticking & { readonly card: Card }) => (
  <>
    {groupsOf(card, ticking.list.plan).map((group) => (
      <PiecesOf key={group.part} group={group} {...ticking} />
    ))}
  </>
);

function PiecesOf({ group, list, saving, onTick, onBlocked }: Ticking & { readonly group: Group }) {
  const { pieces } = group;
  return (
    <div class="piece">
      <div class="nm">
        {words.groupName(group, list.plan.job.tape)}
        <span>
          {pieceNote(
            list,
            pieces.map((p) => p.op),
          )}
        </span>
      </div>
      <div class="copies">
        {pieces.map(({ op, letter }) => {
          const blocked = blocks(list, op).length > 0;
          return (
            <LetterTick
              key={op.id}
              letter={letter}
              label={words.pieceTick(op, list.plan.job.tape)}
              ticked={list.doing.done(op.id)}
              blocked={blocked}
              saving={saving.has(op.id)}
              onTap={() => (blocked ? onBlocked(op) : onTick(op))}
            />
          );
        })}
      </div>
    </div>
  );
}
