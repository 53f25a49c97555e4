import { useState } from 'preact/hooks';
import { cutterTape, markAt } from '../../length/tape';
import { writeLength } from '../../length/write';
import { type Checklist, groupsOf, isDone } from '../../plan/checklist';
import { runsOfBuild, standingOn } from '../../plan/run';
import { machineAt } from '../../trade/machines/machines';
import type { Card } from '../../trade/setups/checklist';
import type { Setup } from '../../trade/setups/setup';
import { Icon } from '../../ui/icon';
import { Mixed, Remainder } from '../../ui/mixed';
import { WhenNear } from '../../ui/when-near';
import type { Bench } from '../bench';
import { machineName } from '../shared/machines/machine-names';
import { groupName } from '../shared/piece-words';
import { setupTitle } from '../shared/setup-title';
import { ThinnerLines } from '../shared/thinner-lines';
import * as words from './words';
import './cuts.css';

type BySetupProps = {
  readonly list: Checklist;
  readonly stand: Card | undefined;
  readonly go: Bench['go'];
};

/** Cards in order under the blade or stack they share; what is done is folded at the end. */
export function BySetup({ list, stand, go }: BySetupProps) {
  const open = list.cards.filter((card) => !isDone(list, card));
  const done = list.cards.filter((card) => isDone(list, card));
  const runs = runsOfBuild(open);
  const rows = runs.map(({ length }) => Math.min(length, mostShown));
  const sum = (upTo: number) => rows.slice(0, upTo).reduce((all, n) => all + n, 0);
  return (
    <>
      {runs.map((cards, k) => (
        <WhenNear
          key={cards[0]?.id}
          of={cards[0] ?? cards}
          high={headHigh + rowHigh * (rows[k] ?? 0)}
          before={sum(k)}
          rows={sum(runs.length)}
          draw={() => <Build {...{ cards, list, stand, go }} />}
        />
      ))}
      {done.length > 0 && <Done cards={done} list={list} go={go} />}
    </>
  );
}

/** So many rows of one build are shown; of more, all but the last few are behind a tap. */
const mostShown = 6;
/** About how high the head of a build and each of its rows are, px. */
const [headHigh, rowHigh] = [49, 86];

/** The cards at one build: its machine, the change to it, its settings. */
function Build({ cards, list, stand, go }: BySetupProps & { readonly cards: readonly Card[] }) {
  const [unfolded, setUnfolded] = useState(false);
  const [first] = cards;
  const op = first?.operations[0];
  if (!op) return null;
  const all = cards.length <= mostShown || unfolded;
  return (
    <div class="build">
      <h2 class="sec pad-x">{machineName(op.setup)}</h2>
      <ChangeRow card={first} {...{ list, go }} />
      {(all ? cards : cards.slice(0, mostShown - 1)).map((card) => (
        <CardRow key={card.id} {...{ card, list, go }} now={card === stand} />
      ))}
      {!all && (
        <button type="button" class="nextset more" onClick={() => setUnfolded(true)}>
          <span class="grow">{words.moreSettings(cards.length - mostShown + 1)}</span>
          <Icon name="down" />
        </button>
      )}
    </div>
  );
}

type RowProps = Omit<BySetupProps, 'stand'> & { readonly card: Card };

/** A change of stack, bit or height: a row of its own before the settings it serves. */
function ChangeRow({ card, list, go }: RowProps) {
  const [op] = card.operations;
  const { cuts } = machineAt(op?.setup.machine ?? 'hand');
  if (!op?.setup.cutter || cuts === 'tool' || standingOn(list)?.setup.build === op.setup.build) return null;
  return (
    <button type="button" class="changerow" onClick={() => go({ at: 'setup', id: card.id })}>
      <span class="grow">
        <b>{words.changeTo(op.setup, list.plan.job.tape)}</b>
      </span>
      <Icon name="next" />
    </button>
  );
}

type DoneProps = Omit<BySetupProps, 'stand'> & { readonly cards: readonly Card[] };

function Done({ cards, list, go }: DoneProps) {
  const [open, setOpen] = useState(false);
  const pieces = cards.reduce((n, card) => n + card.operations.length, 0);
  return (
    <section aria-label={words.done}>
      <button type="button" class="nextset" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span class="grow">
          <b>{words.settingsDone(cards.length)}</b>
          <span class="s muted block">{words.ticksKept(pieces)}</span>
        </span>
        <Icon name="down" />
      </button>
      {open && cards.map((card) => <CardRow key={card.id} {...{ card, list, go }} now={false} />)}
    </section>
  );
}

/** A setting in three columns: stack over height, pieces over how they lie, figure over remainder. */
function CardRow({ card, list, go, now }: RowProps & { readonly now: boolean }) {
  const [op] = card.operations;
  if (!op) return null;
  const { tape } = list.plan.job;
  const cut = card.operations.filter((o) => list.doing.done(o.id)).length;
  const names = groupsOf(card, list.plan).map((g) => groupName(g, tape));
  const { figure } = op.setup;
  return (
    <button
      type="button"
      class={now ? 'nextset cutrow now' : 'nextset cutrow'}
      onClick={() => go({ at: 'setup', id: card.id })}
    >
      <OnArbor setup={op.setup} list={list} />
      <span class="sr">{setupTitle(op)}</span>
      <span class="grow">
        <b>{words.cardParts(names, cut, card.operations.length)}</b>
        <span class="s muted block">{words.cardSays(list, card)}</span>
        <ThinnerLines plan={list.plan} operations={card.operations} />
      </span>
      {figure && (
        <span class="set-to">
          <Mixed value={figure.value} rest={figure.rest} tape={tape} />
          <Remainder rest={figure.rest} tape={tape} by={false} />
        </span>
      )}
    </button>
  );
}

/** Stack over height, with the table between them. */
function OnArbor({
  setup: { cutter, height, machine },
  list,
}: {
  readonly setup: Setup;
  readonly list: Checklist;
}) {
  const { tape } = list.plan.job;
  if (!cutter && !height) return null;
  const fine = cutterTape(tape);
  return (
    <span class="on-arbor">
      <span>{cutter ? writeLength(markAt(cutter, fine).value, fine) : ' '}</span>
      <span>{height ? words.raised(writeLength(height, tape), machine) : ' '}</span>
    </span>
  );
}
