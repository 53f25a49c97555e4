import { useState } from 'preact/hooks';
import { type Checklist, groupsOf, isDone } from '../../plan/checklist';
import type { Card } from '../../trade/setups/checklist';
import { Icon } from '../../ui/icon';
import { Mixed } from '../../ui/mixed';
import type { Bench } from '../bench';
import { buildWords } from '../shared/cut-words';
import { setupTitle } from '../shared/setup-title';
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
  return (
    <>
      {runsOfBuild(open).map((cards) => (
        <Build key={cards[0]?.id} {...{ cards, list, stand, go }} />
      ))}
      {done.length > 0 && <Done cards={done} list={list} go={go} />}
    </>
  );
}

/** So many rows of one build are shown; of more, all but the last few are behind a tap. */
const mostShown = 6;

/** The cards at one build, under its name. */
function Build({ cards, list, stand, go }: BySetupProps & { readonly cards: readonly Card[] }) {
  const [unfolded, setUnfolded] = useState(false);
  const op = cards[0]?.operations[0];
  if (!op) return null;
  const all = cards.length <= mostShown || unfolded;
  return (
    <div class="build">
      <h2 class="sec pad-x">{buildWords(op.setup, list.plan.job.tape)}</h2>
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

type CardRowProps = Omit<BySetupProps, 'stand'> & { readonly card: Card; readonly now: boolean };

function CardRow({ card, list, go, now }: CardRowProps) {
  const [op] = card.operations;
  if (!op) return null;
  const cut = card.operations.filter((o) => list.doing.done(o.id)).length;
  const names = groupsOf(card, list.plan).map((g) => words.groupName(g, list.plan.job.tape));
  const { figure } = op.setup;
  return (
    <button
      type="button"
      class={now ? 'nextset now' : 'nextset'}
      onClick={() => go({ at: 'setup', id: card.id })}
    >
      <span class="grow">
        <b>{setupTitle(op)}</b>
        <span class="s muted block">{words.cardParts(names, cut, card.operations.length)}</span>
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
