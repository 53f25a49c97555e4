import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { absolute, half, type Length, less, subtract } from '../../length/length';
import { grainOf, markAt, type Tape } from '../../length/tape';
import { spoken, writeLength } from '../../length/write';
import type { View } from '../../plan/board-layout';
import { drift, realPitch } from '../../trade/grooves/place';
import { tapeError } from '../../trade/tolerance/tape-error';
import { Blank } from '../../ui/blank';
import { Given } from '../../ui/given';
import { KeySheet } from '../../ui/key-sheet';
import { Mixed, Remainder } from '../../ui/mixed';
import { shownOn } from '../../ui/unit-in-hand';
import type { Bench } from '../bench';
import { closely } from '../shared/exact-words';
import { callGroove } from '../shared/groove-name';
import { useLength } from '../shared/stays';
import * as words from './facts-words';

type SteppingProps = {
  readonly view: View;
  /** What one step of the shop's pin or block is off by, where it is known. */
  readonly stepError: Length | undefined;
  readonly keepShop: Bench['keepShop'];
};

const titles = { step: words.stepTitle, found: words.readTitle };

/**
 * What stepping would cost beside absolute marks, shown before the choice; the tape's own error; the pitch as found.
 */
export function Stepping({ view, stepError, keepShop }: SteppingProps) {
  const [open, setOpen] = useState<keyof typeof titles>();
  const [found, setFound] = useLength(`found ${view.board.id}`);
  const row = pitchedRow(view);
  if (!row) return null;
  const { pitch, n, first, reach, last } = row;
  const blank = (what: keyof typeof titles, now: ComponentChildren) => (
    <Blank length label={titles[what]} open={open === what} onTap={() => setOpen(what)}>
      {now}
    </Blank>
  );
  return (
    <div class="fact stepping">
      <Drift tape={view.tape} pitch={pitch} n={n} stepError={stepError} />
      <p class="note">{words.stepOff(blank('step', stepError && closely(stepError)))}</p>
      <p class="note">{tapeText(reach, view.tape)}</p>
      <p>{words.asRead(callGroove(view.layout, last), blank('found', found && <Given value={found} />))}</p>
      {found && <AsFound found={found} first={first} wanted={reach} n={n} />}
      {open && (
        <KeySheet
          key={open}
          title={titles[open]}
          tape="1/64"
          fill="length"
          now={open === 'step' ? stepError : found}
          signed={open === 'step'}
          onLength={(value) => (open === 'step' ? void keepShop('stepError', value) : setFound(value))}
          onClose={() => setOpen(undefined)}
        />
      )}
    </div>
  );
}

/** The first run at a pitch that has more than two grooves: what can be stepped. */
function pitchedRow({ layout, marks }: View) {
  const facts = layout.facts.find((f) => f.pitch && f.nears.length > 2);
  const own = marks.filter((m) => m.groove.run === facts?.run);
  const [first, last] = [own[0], own[own.length - 1]];
  if (!facts?.pitch || !first || !last || own.length < 3) return undefined;
  return {
    pitch: facts.pitch,
    n: facts.nears.length,
    first: first.near.value,
    reach: last.near.value,
    last: last.groove.id,
  };
}

type DriftProps = {
  readonly tape: Tape;
  readonly pitch: Length;
  readonly n: number;
  readonly stepError: Length | undefined;
};

/** Marked off one end, or stepped: what either comes to. */
function Drift({ tape, pitch, n, stepError }: DriftProps) {
  const step = markAt(pitch, tape).value;
  const each = stepError ?? subtract(step, pitch);
  const off = drift(each, n);
  return (
    <p>
      <words.Stepping
        {...{ step, tape, each, off }}
        within={half(grainOf(tape))}
        tooMuch={less(words.mostOff(), absolute(off))}
      />
    </p>
  );
}

const tapeText = (reach: Length, tape: Tape): string =>
  words.tapeText(writeLength(reach, tape), [
    tapeError('I', reach, true),
    tapeError('II', reach, true),
    tapeError('III', reach, true),
  ]);

type AsFoundProps = {
  readonly found: Length;
  readonly first: Length;
  readonly wanted: Length;
  readonly n: number;
};

/** The pitch the grooves really have: from where the last one was found. */
function AsFound({ found, first, wanted, n }: AsFoundProps) {
  if (!less(first, found)) return <p class="note rem">{words.readTooLittle(first)}</p>;
  const pitch = realPitch(first, found, n);
  const tape = shownOn('1/64');
  const mark = markAt(pitch, tape);
  return (
    <div class="nextset rests">
      <div class="grow">
        <b>{words.realPitch}</b>
        <p class="s muted">{words.lastIsOff(subtract(found, wanted))}</p>
        <span class="sr">{spoken(pitch, undefined, tape)}</span>
      </div>
      <Mixed value={mark.value} tape={tape} />
      <Remainder tape={tape} rest={mark.rest} by={false} />
    </div>
  );
}
