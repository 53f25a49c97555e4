import { useState } from 'preact/hooks';
import { editBank, editFitted } from '../../job/edits';
import { equals, type Length } from '../../length/length';
import { markAt, type Tape } from '../../length/tape';
import type { Bank } from '../../trade/fronts/bank';
import { fitOrder } from '../../trade/fronts/stands';
import type { WorkedColumn } from '../../trade/fronts/worked';
import type { Shim } from '../../trade/stacks/pile';
import { Dots } from '../../ui/blank';
import { Button } from '../../ui/button';
import { ChoiceDock } from '../../ui/dock';
import { Given } from '../../ui/given';
import { KeySheet } from '../../ui/key-sheet';
import type { Bench } from '../bench';
import { InlineMark } from '../shared/mark-and-rest';
import { listsOf } from '../shared/shop-lists';
import { choices } from './ask-words';
import { plannedReach, type Reading, readingOf, takenOff, takenUp } from './column-of';
import { Difference } from './difference';
import * as words from './fit-words';
import { isFresh } from './fitted-reading';
import { pileText } from './gap-words';
import { gapBefore, pilesFor } from './piles';
import './bank.css';
import { Acts } from '../shared/sentence';

type Side = 'left' | 'right';

type FrontProps = {
  readonly bank: Bank;
  readonly column: WorkedColumn;
  readonly no: number;
  readonly tape: Tape;
};

/** The calipers round one front: what was planned, what was read, and what the difference comes to. */
export function Calipers({ bench, ...front }: FrontProps & { readonly bench: Bench }) {
  const { bank, column, no, tape } = front;
  const [open, setOpen] = useState<Side | 'goes'>();
  const reading = readingOf(bank, column.no, no);
  const on = fitOrder(bank).indexOf(no) < column.fitted;
  const taken = isFresh(bank, column.no, no) ? takenUp(bench, bank, { column: column.no, no }) : undefined;
  const { shims } = listsOf(bench.settings.value);
  return (
    <>
      <section class="asbuilt" aria-label={words.frontAsBuilt(no)}>
        <h2>{words.heading(no, bank.order)}</h2>
        <Planned {...front}>{taken ? '' : on ? words.inUse : shimsText(front, shims)}</Planned>
        <Jaws reading={reading} onOpen={setOpen} />
        {taken ? (
          <Difference {...{ bank, taken, tape }} act={bench.act} onGoes={() => setOpen('goes')} />
        ) : (
          <FrontActs {...{ bench, bank, on }} at={{ column: column.no, no }} />
        )}
      </section>
      {(open === 'left' || open === 'right') && (
        <Keys {...front} act={bench.act} side={open} now={reading[open]} onClose={() => setOpen(undefined)} />
      )}
      {open === 'goes' && <Goes bank={bank} act={bench.act} onClose={() => setOpen(undefined)} />}
    </>
  );
}

/** The shims for the gap before a front; nothing where none are written down: the list of gaps says so. */
function shimsText({ bank, column, no }: FrontProps, shims: readonly Shim[]): string {
  const piles = pilesFor(gapBefore(bank, column, no), shims);
  return piles ? words.shimsBefore(pileText(piles)) : '';
}

function Planned({ bank, column, no, tape, children }: FrontProps & { readonly children: string }) {
  const at = (side: Side) => markAt(plannedReach(bank, column, { no, side }), tape);
  const [left, right] = [at('left'), at('right')];
  const apart = equals(left.value, right.value) ? {} : { right: <InlineMark mark={right} tape={tape} /> };
  return (
    <p class="s muted pad8">
      {words.planned({ left: <InlineMark mark={left} tape={tape} />, ...apart, state: children })}
    </p>
  );
}

type JawsProps = { readonly reading: Reading; readonly onOpen: (side: Side) => void };

const Jaws = ({ reading, onOpen }: JawsProps) => (
  <div class="jaws">
    {(['left', 'right'] as const).map((side) => (
      <button key={side} type="button" class="val" onClick={() => onOpen(side)}>
        <span class="s">{words.sides[side]}</span>
        {reading[side] ? <Given value={reading[side]} /> : <Dots />}
      </button>
    ))}
  </div>
);

type ActsProps = {
  readonly bench: Pick<Bench, 'act' | 'go'>;
  readonly bank: Bank;
  readonly at: { readonly column: number; readonly no: number };
  readonly on: boolean;
};

/** What can be done with a front that has nothing new read. */
const FrontActs = ({ bench, bank, at, on }: ActsProps) => (
  <Acts>
    {on && (
      <Button label={words.takeOff} onTap={() => void bench.act(words.takenOff(at.no), takenOff(bank, at))} />
    )}
    <button
      type="button"
      class="btn main grow"
      onClick={() => bench.go({ at: 'one', id: bank.id, what: 'fit' })}
    >
      {words.oneAtATime}
    </button>
  </Acts>
);

type KeysProps = FrontProps & {
  readonly act: Bench['act'];
  readonly side: Side;
  readonly now: Length | undefined;
  readonly onClose: () => void;
};

const Keys = ({ bank, column, no, tape, act, side, now, onClose }: KeysProps) => (
  <KeySheet
    key={side}
    title={words.keysTitle(no, side, bank.order)}
    tape={tape}
    fill="length"
    kind="length"
    now={now}
    onLength={(value) =>
      void act(
        words.readAct(no, side),
        editFitted({ bank: bank.id, column: column.no, front: no }, { [side]: value }),
      )
    }
    onClose={onClose}
  />
);

type GoesProps = { readonly bank: Bank; readonly act: Bench['act']; readonly onClose: () => void };

const Goes = ({ bank, act, onClose }: GoesProps) => (
  <ChoiceDock
    title={words.goes}
    choices={choices.goes.choices}
    chosen={bank.goes}
    onChoose={(goes: Bank['goes']) => {
      void act(words.goes, editBank(bank.id, { goes }));
      onClose();
    }}
    onClose={onClose}
  />
);
