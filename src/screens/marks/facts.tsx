import { useState } from 'preact/hooks';
import {
  compare,
  forDrawing,
  half,
  inches,
  isPositive,
  isZero,
  type Length,
  less,
  subtract,
  zero,
} from '../../length/length';
import { grainOf, markAt } from '../../length/tape';
import { spoken, writeDecimal, writeLength } from '../../length/write';
import type { View } from '../../plan/board-layout';
import { fenceMarkShift } from '../../trade/grooves/fence-marks';
import { thinnestWeb } from '../../trade/grooves/lands';
import { spacerFor } from '../../trade/grooves/lay-out';
import { centredStart, drift, realPitch } from '../../trade/grooves/place';
import { machineFor } from '../../trade/machines/groove-machines';
import { tapeError } from '../../trade/tolerance/tape-error';
import { Blank } from '../../ui/blank';
import { Icon } from '../../ui/icon';
import { KeySheet } from '../../ui/key-sheet';
import { Given, Mixed, Remainder } from '../../ui/mixed';
import { OpenBook } from '../../ui/open-book';
import type { Bench } from '../bench';
import { callGroove } from '../shared/layout-words';
import { useLength } from '../shared/stays';
import { warningText } from '../shared/warning-words';
import { droppedText, webText } from './facts-words';

type FactsProps = { readonly view: View; readonly bench: Bench; readonly show: 'marks' | 'stops' };

/** What is worth knowing of a layout: what was left out, thin wood, which end is safe, how stepping would drift. */
export function Facts({ view, bench, show }: FactsProps) {
  const { board, layout } = view;
  const { still } = machineFor(board.machine);
  const spacer = board.mate ? spacerFor(board.datum ?? zero, board.mate) : undefined;
  return (
    <section class="facts pad-x" aria-label="Worth knowing">
      {layout.dropped.map((d) => (
        <p key={d.groove.id} class="fact">
          {droppedText(d)}
        </p>
      ))}
      {layout.warnings.map((warning, k) => (
        <p key={k} class="fact warn">
          <Icon name="warn" />
          {warningText(warning, layout)}
        </p>
      ))}
      {spacer && isPositive(spacer.spacer) && (
        <p class="fact">
          One stop for both: set it for the {spacer.at === 'mate' ? board.name || 'board' : board.mateName},
          and put a <Given value={spacer.spacer} /> spacer between the stop and the{' '}
          {spacer.at === 'mate' ? board.mateName : board.name || 'board'}.
        </p>
      )}
      {board.made === 'pair' && <Pair view={view} />}
      <WebLeft view={view} />
      <EndForEnd view={view} />
      {still === 'pencil' && <Rebuilt view={view} />}
      {(still || show === 'marks') && <Stepping view={view} bench={bench} />}
    </section>
  );
}

/** The thinnest wood left, also where it is sound; a warning says it where it is not. */
function WebLeft({ view: { board, layout } }: { readonly view: View }) {
  const found = board.thickness && thinnestWeb(layout.grooves, board.thickness);
  if (!found || !board.thickness || !isPositive(found.web)) return null;
  if (layout.warnings.some(({ code }) => code === 'web')) return null;
  return <p class="fact">{webText(found, { layout, thickness: board.thickness })}</p>;
}

function EndForEnd({ view }: { readonly view: View }) {
  const { board, layout } = view;
  if (layout.endForEndSafe) {
    return <p class="fact good">End-for-end safe: turned round, the same grooves fall in the same places.</p>;
  }
  const run = board.runs[0];
  const facts = layout.facts[0];
  const alone =
    board.runs.length === 1 && board.wides.length === 0 && run?.width && facts?.pitch && board.length;
  if (!alone || !run?.width || !facts?.pitch || !board.length) return null;
  const start = centredStart(board.length, facts.pitch, { n: facts.nears.length, width: run.width });
  if (!isPositive(start)) return null;
  return (
    <p class="fact">
      Not end-for-end safe. Started at {writeLength(start)} from the end it would be, and one mistake fewer
      could be made.
    </p>
  );
}

/**
 * What stepping would cost beside absolute marks, shown before the choice; the tape's own error; the pitch as found.
 */
function Stepping({ view, bench }: { readonly view: View; readonly bench: Bench }) {
  const [open, setOpen] = useState<'step' | 'found'>();
  const [found, setFound] = useLength(`found ${view.board.id}`);
  const facts = view.layout.facts.find((f) => f.pitch && f.nears.length > 2);
  const marks = view.marks.filter((m) => m.groove.run === facts?.run);
  const last = marks[marks.length - 1];
  const first = marks[0];
  if (!facts?.pitch || !first || !last || marks.length < 3) return null;
  const n = facts.nears.length;
  const stepped = markAt(facts.pitch, view.tape);
  const own = bench.shop.value.stepError;
  const each = own ?? (subtract(stepped.value, facts.pitch) as Length);
  const off = drift(each, n);
  const tooMuch = less(inches(1n, 64n), off.abs() as Length);
  const reach = last.near.value;
  return (
    <div class="fact stepping">
      <p>
        <b>Marked off one end</b>, each groove is within {writeLength(half(grainOf(view.tape)), '1/64')}.{' '}
        <b>Stepped</b> at {writeLength(stepped.value, view.tape)}, each step off by {writeDecimal(each)}, the
        last is off by{' '}
        <b>
          {writeDecimal(off)}
          {compare(off, zero) === 0 ? '' : off.s > 0n ? ', past its place' : ', short of its place'}
        </b>
        {tooMuch && <span class="rem"> over 1/64: lay out from one end</span>}.
      </p>
      <p class="note">
        One step of a pin or block is off by{' '}
        <Blank label="Error of one step" open={open === 'step'} onTap={() => setOpen('step')}>
          {own && writeDecimal(own)}
        </Blank>
      </p>
      <p class="note">
        Over {writeLength(reach, view.tape)} a class I tape may be out by{' '}
        {writeDecimal(tapeError('I', reach, true))}, class II by {writeDecimal(tapeError('II', reach, true))},
        class III by {writeDecimal(tapeError('III', reach, true))}, hook included. One tape for the whole job.
      </p>
      <p>
        As found, {callGroove(view.layout, last.groove.id)} reads{' '}
        <Blank
          label="Near edge of the last groove, as read"
          open={open === 'found'}
          onTap={() => setOpen('found')}
        >
          {found && <Given value={found} />}
        </Blank>
      </p>
      {found && <AsFound found={found} first={first.near.value} wanted={reach} n={n} />}
      {open && (
        <KeySheet
          key={open}
          title={open === 'step' ? 'Error of one step' : 'Near edge of the last groove, as read'}
          tape="1/64"
          fill="length"
          now={open === 'step' ? own : found}
          signed={open === 'step'}
          onLength={(value) => (open === 'step' ? void bench.keepShop('stepError', value) : setFound(value))}
          onClose={() => setOpen(undefined)}
        />
      )}
    </div>
  );
}

type AsFoundProps = {
  readonly found: Length;
  readonly first: Length;
  readonly wanted: Length;
  readonly n: number;
};

function AsFound({ found, first, wanted, n }: AsFoundProps) {
  if (!less(first, found))
    return (
      <p class="note rem">The first groove starts at {writeLength(first)}: the last reads more than that.</p>
    );
  const pitch = realPitch(first, found, n);
  const mark = markAt(pitch, '1/64');
  const off = subtract(found, wanted);
  return (
    <div class="nextset">
      <div class="grow">
        <b>Real pitch</b>
        <p class="s muted">
          the last is {writeDecimal(off.abs() as Length)} {off.s < 0n && off.n !== 0n ? 'short' : 'past'}; cut
          the mate to this pitch
        </p>
        <span class="sr">{spoken(pitch)}</span>
      </div>
      <Mixed value={mark.value} tape="1/64" />
      <Remainder tape="1/64" rest={mark.rest} by={false} />
    </div>
  );
}

/** The pair as an open book, and what changes between left and right. */
function Pair({ view }: { readonly view: View }) {
  const { board, layout } = view;
  const stopped = layout.grooves.some((g) => g.stopped);
  const across = board.across ? forDrawing(board.across) : 12;
  const grooves = layout.grooves.map((g) => ({
    id: g.id,
    near: forDrawing(g.near),
    width: forDrawing(g.width),
    done: true,
    ...(g.stopped ? { stopped: forDrawing(g.stopped) } : {}),
  }));
  return (
    <div class="fact">
      <OpenBook
        length={board.length ? forDrawing(board.length) : 1}
        across={across}
        grooves={grooves}
        label="Left and right side as an open book, fronts outward, both standing on the reference end"
      />
      <p class="note">
        Same figures from the same end on both; the front edge leads on one and trails on the other.
        {stopped && ' These grooves stop short of the front, so the stop for their length changes sides.'}
      </p>
    </div>
  );
}

/** Fence pencil marks belong to one stack: how far they all move for another. */
function Rebuilt({ view }: { readonly view: View }) {
  const [open, setOpen] = useState(false);
  const [next, setNext] = useLength(`next stack ${view.board.id}`);
  const { board } = view;
  const now = board.cutter ?? view.marks[0]?.groove.width;
  if (!now) return null;
  const shift = next && fenceMarkShift(now, next, board.grows);
  return (
    <div class="fact stepping">
      <p>
        These pencil marks belong to a stack {writeDecimal(now)} wide. Rebuilt to{' '}
        <Blank label="Width of the next stack" open={open} onTap={() => setOpen(true)}>
          {next && writeDecimal(next)}
        </Blank>
        {shift && isZero(shift) && ' they stay where they are.'}
        {shift && !isZero(shift) && (
          <>
            {' '}
            every mark moves {writeDecimal(shift.abs() as Length)}{' '}
            {isPositive(shift) ? `away from the blade, toward the ${board.end} end` : 'back toward the blade'}
            .
          </>
        )}
      </p>
      {open && (
        <KeySheet
          title="Width of the next stack"
          tape="1/64"
          fill="length"
          now={next}
          onLength={setNext}
          onClose={() => setOpen(false)}
        />
      )}
    </div>
  );
}
