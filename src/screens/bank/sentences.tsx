import { editBank, editFitted, editFront } from '../../job/edits';
import type { Change } from '../../job/entry';
import { ratio } from '../../length/length';
import type { BankPlan } from '../../plan/bank-plan';
import { type Bank, type BankStock, frontNo, usualBank } from '../../trade/fronts/bank';
import { revealsOf } from '../../trade/fronts/reveals';
import { frontNumbers } from '../../trade/fronts/stands';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import { type Ask, AskBlank } from '../shared/ask';
import { wordFor } from '../shared/counted';
import * as asks from './asks';
import type { BankLength } from './words';

export type Slip = {
  readonly bench: Bench;
  readonly found: BankPlan;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
  readonly act: (label: string, changes: readonly Change[]) => void;
};

/** The blanks of a sentence about these drawers. */
const blanks = ({ bench, found: { bank }, open, onOpen }: Slip) => {
  const blank = (ask: Ask) => <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  return {
    blank,
    length: (field: BankLength, usual?: Parameters<typeof asks.bankLength>[2]) =>
      blank(asks.bankLength(bank, field, usual)),
    of: (stock: BankStock) => bench.job.value && blank(asks.bankStock(bank, stock, bench.job.value)),
  };
};

export function OpeningSentence(slip: Slip) {
  const { bench, found } = slip;
  const { bank } = found;
  const { blank, length } = blanks(slip);
  const job = bench.job.value;
  if (!job) return null;
  return (
    <section class="fillin" aria-label="Opening">
      {blank(asks.bankName(bank))} in {blank(asks.bankCase(bank, job))}
      {bank.of === undefined ? (
        <>
          {' '}
          {length('width')} wide, {length('height')} high and {length('depth')} deep, its lower edge{' '}
          {length('sill', usualBank.band)} over the bottom.
        </>
      ) : (
        <>
          , bay {blank(asks.bankCount(bank, 'bay', 'Which bay, from the left as you face it'))}, on{' '}
          {blank(asks.bankOver(bank, job))}, {blank(asks.bankCount(bank, 'across', 'Columns side by side'))}{' '}
          {bank.across === 1 ? 'column' : 'columns'} wide.
        </>
      )}
    </section>
  );
}

export function FrontsSentence(slip: Slip) {
  const { found } = slip;
  const { bank } = found;
  const { blank, length, of } = blanks(slip);
  // a front's measure is from the end the fitting began at
  const begun = found.fronts.ok && found.fronts.value.columns.some((c) => c.fitted > 0);
  return (
    <section class="fillin run" aria-label="Fronts">
      {blank(asks.bankCount(bank, 'count', 'How many fronts'))} {wordFor(bank.count, 'front', 'fronts')} of{' '}
      {of('front')}, {blank(asks.bankFit(bank))}, {blank(asks.bankShare(bank))}
      <Shared {...slip} />. <Gaps {...slip} /> They go on{' '}
      {begun ? (bank.order === 'down' ? 'top down' : 'bottom up') : blank(asks.bankOrder(bank))}; a difference
      goes to {blank(asks.bankGoes(bank))}.
      <FrontToggles {...slip} />
      {bank.fromBlank && (
        <>
          {' '}
          Trim {length('trim', usualBank.trim)} at each end, band {length('band', usualBank.band)} on each
          edge.
        </>
      )}
    </section>
  );
}

/** How heights differ from front to front. */
function Shared(slip: Slip) {
  const { bank } = slip.found;
  const { blank, length } = blanks(slip);
  if (bank.share === 'step') return <>: {length('step', usualBank.step)} each</>;
  if (bank.share !== 'ratio') return null;
  const ratio = { title: 'How many times the one above', usual: usualBank.ratio };
  return <>: times {blank(asks.bankAmount(bank, 'ratio', ratio))}</>;
}

function Gaps(slip: Slip) {
  const { bank } = slip.found;
  const { length } = blanks(slip);
  const { top, between, bottom, side, gap } = revealsOf(bank);
  return (
    <>
      Gaps {length('between', between)} between
      {bank.fit === 'overlay' ? (
        <>
          , covering {length('top', top.abs() as typeof top)} at the top,{' '}
          {length('bottom', bottom.abs() as typeof top)} at the bottom, {length('side', side)} at the sides
          {bank.across > 1 && <>, {length('gap', gap)} over a partition</>}.
        </>
      ) : (
        <>
          , {length('top', top)} at the top, {length('bottom', bottom)} at the bottom, {length('side', side)}{' '}
          at each side.
        </>
      )}
    </>
  );
}

function FrontToggles({ found: { bank }, act }: Slip) {
  const toggle = (label: string, field: 'contentsFirst' | 'alike' | 'fromBlank') => (
    <Toggle
      on={bank[field]}
      label={label}
      onTap={() => act(label, editBank(bank.id, { [field]: !bank[field] }))}
    />
  );
  return (
    <span class="runacts">
      {toggle('Contents first', 'contentsFirst')}
      {bank.share === 'equal' && toggle('All cut alike', 'alike')}
      {toggle('Out of one blank', 'fromBlank')}
    </span>
  );
}

type ToggleProps = { readonly on: boolean; readonly label: string; readonly onTap: () => void };

const Toggle = ({ on, label, onTap }: ToggleProps) => (
  <button type="button" class="chip" aria-pressed={on} onClick={onTap}>
    {on && <Icon name="tick" />} {label}
  </button>
);

/** What lets held heights go, in every column; nothing when none is held. */
const lettingGo = (bank: Bank): readonly Change[] =>
  Object.entries(bank.columns).flatMap(([column, { fitted }]) =>
    Object.entries(fitted).flatMap(([front, { held, trim }]) =>
      held || trim
        ? editFitted(
            { bank: bank.id, column: Number(column), front: Number(front) },
            { held: undefined, trim: undefined },
          )
        : [],
    ),
  );

/** A height given to a front stays; the others share what is left. */
export function HeightsList(slip: Slip) {
  const { found, act } = slip;
  const { bank, fronts } = found;
  const { blank } = blanks(slip);
  const given = frontNumbers(bank).some((no) => frontNo(bank, no).high);
  return (
    <section class="fillin run" aria-label="Heights">
      From the top:{' '}
      {frontNumbers(bank).map((no) => (
        <span key={no}>
          {no > 1 && ', '}
          {no}: {blank(asks.frontHigh(bank, no, fronts.ok ? fronts.value.heights[no - 1] : undefined))}
          {bank.share === 'weights' && <> share {blank(asks.frontWeight(bank, no, ratio(1n)))}</>}
        </span>
      ))}
      .
      <Freed
        label="Heights are held since they were cut or fitted: let them go"
        changes={lettingGo(bank)}
        onTap={(changes) => act('Heights let go', changes)}
      />
      <Freed
        label="Share them all out"
        changes={given ? frontNumbers(bank).flatMap((no) => editFront(bank.id, no, { high: undefined })) : []}
        onTap={(changes) => act('Heights shared out', changes)}
      />
    </section>
  );
}

type FreedProps = {
  readonly label: string;
  readonly changes: readonly Change[];
  readonly onTap: (changes: readonly Change[]) => void;
};

/** Lets go what is held; nothing where nothing is. */
const Freed = ({ label, changes, onTap }: FreedProps) =>
  changes.length > 0 ? (
    <span class="runacts">
      <Toggle on={false} label={label} onTap={() => onTap(changes)} />
    </span>
  ) : null;

export function BoxSentence(slip: Slip) {
  const { found } = slip;
  const { bank, drawers } = found;
  const { blank, length, of } = blanks(slip);
  const slides = drawers?.ok ? drawers.value.slides : undefined;
  return (
    <section class="fillin run" aria-label="Boxes">
      Box sides of {of('side')}, fronts of {of('boxFront')}, backs of {of('boxBack')}, bottoms of{' '}
      {of('boxBottom')} {blank(asks.bankBottom(bank))}. {length('boxDeep', slides?.long)} deep; a lap of{' '}
      {length('lap', usualBank.lap)} before the side ends; backs let {length('backDado', usualBank.backDado)}{' '}
      into the sides, {length('behind', usualBank.behind)} from their ends. Groove{' '}
      {length('grooveDeep', usualBank.grooveDeep)} deep, {length('grooveUp', usualBank.grooveUp)} up,{' '}
      {length('grooveFit', usualBank.grooveFit)} over its bottom; bottoms {length('ease', usualBank.ease)}{' '}
      easy.
    </section>
  );
}

export function TailSentence(slip: Slip) {
  const { bank } = slip.found;
  const { blank, length } = blanks(slip);
  return (
    <section class="fillin run" aria-label="Dovetails">
      Tails laid out {blank(asks.bankTails(bank))}
      {bank.tailsHow === 'template' ? (
        <>
          , pitch {length('pitch', usualBank.pitch)}, pins {length('pin', usualBank.pin)} at the end line
        </>
      ) : (
        <>
          , half pins {length('halfPin', usualBank.halfPin)} and pins {length('pin', usualBank.pin)} at the
          end line, {blank(asks.bankCount(bank, 'tails', 'How many tails; nought, and it is worked out'))}{' '}
          {wordFor(bank.tails, 'tail', 'tails')}
        </>
      )}
      , sloping one in{' '}
      {blank(asks.bankAmount(bank, 'slope', { title: 'Slope of the tails: one in', usual: usualBank.slope }))}
      .
    </section>
  );
}

export function SlideSentence(slip: Slip) {
  const { bench, found } = slip;
  const { bank } = found;
  const shop = bench.shop.value;
  const { blank, length } = blanks(slip);
  return (
    <section class="fillin run" aria-label="Slides">
      Slides {length('slideLong', shop.slideLength)} long,{' '}
      {length('slideHigh', shop.slideHeight ?? usualBank.slideHigh)} high, taking{' '}
      {length('clearance', shop.slideThickness ?? usualBank.clearance)} at each side; their middle{' '}
      {length('centre', usualBank.centre)} up the box, the box {length('boxUp', usualBank.boxUp)} over the
      lower edge of its front, {length('play', usualBank.play)} air over it. A pair carries{' '}
      {blank(asks.bankAmount(bank, 'rating', { title: 'What a pair carries, pounds, by its maker' }))} lb.
    </section>
  );
}

export function PullSentence(slip: Slip) {
  const { bank } = slip.found;
  const { blank, length } = blanks(slip);
  return (
    <section class="fillin run" aria-label="Screws and pulls">
      Each front is held from inside by{' '}
      {blank(asks.bankCount(bank, 'frontScrews', 'Screws that hold each front'))}{' '}
      {wordFor(bank.frontScrews, 'screw', 'screws')}.{' '}
      {blank(asks.bankCount(bank, 'pulls', 'Pulls on each front'))} {wordFor(bank.pulls, 'pull', 'pulls')} a
      front
      {bank.pulls > 0 && (
        <>
          , screws {length('centres')} apart, {length('fromTop', usualBank.fromTop)} down
          {bank.pulls > 1 && <>, {length('fromEnd')} in from each end</>}
        </>
      )}
      .
    </section>
  );
}
