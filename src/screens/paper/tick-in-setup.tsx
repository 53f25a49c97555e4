import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { type Checklist, isDone } from '../../plan/checklist';
import { offersOf } from '../../plan/offers';
import { changeFor } from '../../plan/run';
import { letterAt, type SetupCode, setupCodes } from '../../plan/setup-codes';
import { allOfCard } from '../../plan/tick-in';
import { standChanges, tickChanges, ticksOf } from '../../plan/ticking';
import type { Operation } from '../../trade/setups/operation';
import { Blank } from '../../ui/blank';
import { Button } from '../../ui/button';
import { KeySheet } from '../../ui/key-sheet';
import { LetterTick } from '../../ui/tick-box';
import type { Bench } from '../bench';
import { heldWords } from '../shared/held-words';
import { setAct, tickAct } from '../shared/piece-words';
import { Sentence } from '../shared/sentence';
import { boxOfSet } from './setup-sheet-words';
import * as words from './tick-in-words';
import './tick-in.css';

type InHandProps = { readonly bench: Bench; readonly list: Checklist };

type SetupTickInProps = InHandProps & {
  /** Where it is chosen of what the page is. */
  readonly which: ComponentChildren;
};

const nextOpen = (list: Checklist, codes: readonly SetupCode[], after: number): SetupCode | undefined => {
  const open = codes.filter(({ card }) => !isDone(list, card));
  return open.find(({ no }) => no > after) ?? open[0];
};

/** A page of setups: one by its number, a row for each of its boxes. */
export function SetupTickIn({ bench, list, which }: SetupTickInProps) {
  const codes = setupCodes(list);
  const [no, setNo] = useState(() => nextOpen(list, codes, 0)?.no ?? 1);
  const [asking, setAsking] = useState(false);
  const code = codes[Math.min(no, codes.length) - 1];
  if (!code) return null;
  return (
    <>
      <main class={asking ? 'page docked' : 'page'}>
        {which}
        <Sentence label={words.whichSetup}>
          <p>
            {words.pageOf}{' '}
            <Blank label={words.whichSetup} open={asking} onTap={() => setAsking(true)}>
              {code.no}
            </Blank>
          </p>
        </Sentence>
        <Setup {...{ bench, list, code }} />
      </main>
      {!asking && <AllOfIt {...{ bench, list, code }} next={nextOpen(list, codes, code.no)} onNext={setNo} />}
      {asking && (
        <KeySheet
          title={words.whichSetup}
          tape={list.plan.job.tape}
          fill="count"
          nowCount={undefined}
          refuse={(value) =>
            typeof value === 'number' && !codes[value - 1] ? words.noSetup(value, codes.length) : undefined
          }
          onCount={(value) => value !== undefined && setNo(value)}
          onClose={() => setAsking(false)}
        />
      )}
    </>
  );
}

type SetupProps = InHandProps & { readonly code: SetupCode };

/** What stands on the page, to compare, and a row for each box. */
function Setup({ bench, list, code: { no, check, card } }: SetupProps) {
  const [first] = card.operations;
  if (!first) return null;
  const { tape } = list.plan.job;
  const change = changeFor(list, card);
  const offers = offersOf(list);
  return (
    <section aria-label={words.heading(first, tape)}>
      <h2 class="sec pad-x">{words.heading(first, tape)}</h2>
      <p class="pad-x note">{words.build(first, tape)}</p>
      <p class="pad-x note pagesays">{words.compare(check, no)}</p>
      <ul>
        {change && (
          <li class="nextset">
            <LetterTick
              letter={boxOfSet}
              label={`${boxOfSet}, ${words.set}`}
              ticked={false}
              onTap={() => void bench.act(setAct(first, tape), standChanges(list, card))}
            />
            <span class="grow">
              <b>{words.set}</b>
            </span>
          </li>
        )}
        {card.operations.map((op, k) => {
          const offer = list.doing.done(op.id) ? undefined : offers(op.id);
          const held = offer && !offer.ok ? heldWords(list, offer.error) : '';
          return <Row key={op.id} {...{ bench, list, op, held }} card={card} letter={letterAt(k)} />;
        })}
      </ul>
    </section>
  );
}

type RowProps = InHandProps & {
  readonly card: SetupCode['card'];
  readonly op: Operation;
  readonly letter: string;
  /** Why it may not be ticked; empty where it may. */
  readonly held: string;
};

const Row = ({ bench, list, card, op, letter, held }: RowProps) => {
  const ticked = list.doing.done(op.id);
  const { tape } = list.plan.job;
  return (
    <li class="nextset">
      <LetterTick
        letter={letter}
        label={words.box(letter, op, tape)}
        ticked={ticked}
        blocked={held !== ''}
        saving={bench.saving.value.has(op.id)}
        onTap={() => held === '' && void bench.act(tickAct(op, ticked), tickChanges(list, card, op))}
      />
      <span class="grow">
        <b>{words.piece(op)}</b>
        <span class="s muted block">{words.what(op, tape)}</span>
        {held && <span class="s block">{held}</span>}
      </span>
    </li>
  );
};

type AllProps = SetupProps & {
  readonly next: SetupCode | undefined;
  readonly onNext: (no: number) => void;
};

/** The whole page at a tap, one act; what waits for something else stays open. Then the next setup. */
function AllOfIt({ bench, list, code, next, onNext }: AllProps) {
  const { card } = code;
  const { ops, held } = allOfCard(list, card);
  const change = changeFor(list, card);
  if (ops.length === 0 && !change)
    return (
      <div class="fixedbar">
        {next ? (
          <Button look="main full" label={words.next(next.no)} onTap={() => onNext(next.no)} />
        ) : (
          <p class="note">{words.allDone}</p>
        )}
      </div>
    );
  return (
    <div class="fixedbar">
      <Button
        look="main full"
        label={words.all(ops.length)}
        onTap={() => void bench.act(words.allAct(code, ops.length), ticksOf(list, card, ops))}
      />
      {held.length > 0 && <p class="note">{words.held(held.length)}</p>}
    </div>
  );
}
