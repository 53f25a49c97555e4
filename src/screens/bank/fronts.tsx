import { useState } from 'preact/hooks';
import { equals } from '../../length/length';
import type { Tape } from '../../length/tape';
import type { BankPlan } from '../../plan/bank-plan';
import type { Bank } from '../../trade/fronts/bank';
import { isOwnFront } from '../../trade/fronts/corner';
import type { WorkedColumn, WorkedFronts } from '../../trade/fronts/worked';
import { BankDrawing, type DrawnFront } from '../../ui/bank-drawing';
import { Bar, BarButton, Segment } from '../../ui/bar';
import { Button } from '../../ui/button';
import type { Bench } from '../bench';
import { GonePage } from '../shared/gone-page';
import { InlineMark } from '../shared/mark-and-rest';
import { UndoButton } from '../shared/undo-button';
import { WhyRow } from '../shared/why-row';
import { AsFitted } from './as-fitted';
import { BlankList } from './blank-list';
import { bankIn, nextFront } from './column-of';
import { Asks, Worth } from './facts';
import * as words from './fronts-words';
import { lastGood } from './last-good';
import { type From, MarkList, MarksBeside } from './marks-beside';
import { ShimList } from './shim-list';
import { Skewed } from './skewed';
import {
  boxesSlidesPulls,
  change,
  column as columnName,
  drawers,
  nameOf,
  notInJob,
  openingMeasured,
  toJob,
  whatGoesIn,
} from './words';

/** The fronts of a bank: drawn to scale with their marks, and as fitted. */
export function FrontsScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const found = bankIn(bench.plan.value, id);
  const job = bench.job.value;
  if (!found || !job) return <NoBank bench={bench} />;
  const good = found.fronts.ok ? found.fronts.value : lastGood(bench, id);
  return (
    <>
      <Bar
        title={nameOf(found.bank)}
        sub={good ? subOf(good) : whatGoesIn}
        leave={{ label: toJob, onTap: () => bench.go({ at: 'job' }) }}
      >
        <UndoButton bench={bench} wordless />
        <BarButton boxed label={change} onTap={() => bench.go({ at: 'bank', id })} />
      </Bar>
      <main class="page">
        {!found.fronts.ok && <Asks bench={bench} bank={found} />}
        {good && <Columns bench={bench} found={found} fronts={good} />}
      </main>
    </>
  );
}

export const NoBank = ({ bench }: { readonly bench: Bench }) => (
  <GonePage
    title={drawers}
    leave={{ label: toJob, word: true, onTap: () => bench.go({ at: 'job' }) }}
    says={notInJob}
  />
);

const subOf = ({ columns, reveals }: WorkedFronts): string =>
  words.sub(columns[0]?.opening.high.value, reveals.between);

type ColumnsProps = {
  readonly bench: Bench;
  readonly found: BankPlan;
  /** As they are; while they do not work out, as they last were. */
  readonly fronts: WorkedFronts;
};

function Columns({ bench, found, fronts }: ColumnsProps) {
  const { bank } = fronts;
  const stale = !found.fronts.ok;
  const own = isOwnFront(bank);
  const [no, setNo] = useState(() => fronts.columns.find((c) => nextFront(bank, c))?.no ?? 1);
  const [side, setSide] = useState<Side>('left');
  const [from, setFrom] = useState<From>(bank.order === 'down' ? 'top' : 'bottom');
  const [picked, setPicked] = useState<number>();
  const tape = bench.job.value?.tape ?? '1/32';
  const column = fronts.columns.find((c) => c.no === no) ?? fronts.columns[0];
  if (!column) return null;
  const uneven = !same(column);
  const shown = uneven ? side : 'left';
  const now = picked ?? (own ? undefined : nextFront(bank, column));
  const onColumn = (to: number) => {
    setNo(to);
    setPicked(undefined);
  };
  return (
    <>
      <div class="seglines">
        {fronts.columns.length > 1 && <WhichColumn {...{ fronts, column }} onColumn={onColumn} />}
        {uneven && <WhichSide side={shown} onSide={setSide} />}
        <WhichEnd from={from} onFrom={setFrom} />
      </div>
      <Marks {...{ bank, column, from, now, stale, tape }} side={shown} onFront={setPicked} />
      {!stale && !own && <AsFitted key={`${column.no}~${now}`} {...{ bench, bank, column }} no={now} />}
      <Facts {...{ fronts, column, tape }} />
      {!stale && <Asks bench={bench} bank={found} />}
      {!own && <Skewed {...{ bench, fronts, column, tape }} />}
      <Worth bench={bench} fronts={fronts} column={column} />
      <BlankList {...{ bench, fronts, column, tape }} />
      {!own && <ShimList {...{ bench, column, tape }} />}
      <Ways bench={bench} id={bank.id} measured={column.opening.measured} />
    </>
  );
}

type WhichColumnProps = {
  readonly fronts: WorkedFronts;
  readonly column: WorkedColumn;
  readonly onColumn: (no: number) => void;
};

const WhichColumn = ({ fronts, column, onColumn }: WhichColumnProps) => (
  <Segment
    label={words.columns}
    choices={fronts.columns.map(({ no }) => ({
      label: columnName(no),
      chosen: no === column.no,
      onTap: () => onColumn(no),
    }))}
  />
);

type Side = 'left' | 'right';

const WhichSide = ({ side, onSide }: { readonly side: Side; readonly onSide: (side: Side) => void }) => (
  <Segment
    label={words.uprights}
    choices={(['left', 'right'] as const).map((x) => ({
      label: words.upright[x],
      chosen: x === side,
      onTap: () => onSide(x),
    }))}
  />
);

const WhichEnd = ({ from, onFrom }: { readonly from: From; readonly onFrom: (from: From) => void }) => (
  <Segment
    label={words.figuresFrom}
    choices={(['top', 'bottom'] as const).map((x) => ({
      label: words.from[x],
      chosen: x === from,
      onTap: () => onFrom(x),
    }))}
  />
);

/** The column to scale, its marks, and from where they are measured. */
function Marks(drawn: DrawnProps) {
  const { bank, column, side, from, tape } = drawn;
  return (
    <>
      <div class="markhead">
        <span>{words.frontEnds}</span>
        <span>{words.nextStarts}</span>
      </div>
      <Drawn {...drawn} />
      <MarkList stands={column[side]} at={{ bank, opening: column.opening[side], tape, from }} />
      <p class="s muted pad-x">{words.edges(from, <InlineMark mark={column.width.mark} tape={tape} />)}</p>
    </>
  );
}

type FactsProps = Pick<DrawnProps, 'column' | 'tape'> & { readonly fronts: WorkedFronts };

/** The sums that hold for the whole column. */
const Facts = ({ fronts, column, tape }: FactsProps) => (
  <ul class="bays pad-x">
    <WhyRow words={words.together} sum={fronts.total} tape={tape} />
    <WhyRow words={words.wide} sum={column.width.sum} mark={column.width.mark} tape={tape} />
    <WhyRow words={words.sill} sum={column.opening.sill} tape={tape} />
  </ul>
);

type WaysProps = { readonly bench: Pick<Bench, 'go'>; readonly id: string; readonly measured: boolean };

/** The ways on from here. */
const Ways = ({ bench, id, measured }: WaysProps) => (
  <div class="pad-x adds">
    <Button
      icon="measure"
      label={measured ? openingMeasured : words.measure}
      onTap={() => bench.go({ at: 'opening', id })}
    />
    <Button label={words.oneAtATime} onTap={() => bench.go({ at: 'one', id, what: 'marks' })} />
    <Button label={boxesSlidesPulls} onTap={() => bench.go({ at: 'boxes', id })} />
    <Button label={words.contents} onTap={() => bench.go({ at: 'contents', id })} />
  </div>
);

const same = ({ left, right }: WorkedColumn): boolean =>
  left.every((x, k) => {
    const y = right[k];
    return y && equals(x.top, y.top) && equals(x.bottom, y.bottom);
  });

type DrawnProps = {
  readonly bank: Bank;
  readonly column: WorkedColumn;
  readonly side: Side;
  readonly from: From;
  readonly tape: Tape;
  readonly now: number | undefined;
  readonly stale: boolean;
  readonly onFront: (no: number) => void;
};

function Drawn({ bank, column, side, from, tape, now, stale, onFront }: DrawnProps) {
  const stands = column[side];
  const fronts: readonly DrawnFront[] = stands.map((at, k) => ({
    no: k + 1,
    height: column.heights[k] ?? at.top,
    ...at,
    state: isFitted(bank, column, k + 1) ? 'fitted' : k + 1 === now ? 'now' : 'planned',
  }));
  return (
    <>
      <BankDrawing
        opening={column.opening[side]}
        fronts={fronts}
        tape={tape}
        stale={stale}
        fromTop={from === 'top'}
        label={words.drawing(fronts.length)}
        beside={(gap) => (
          <MarksBeside stands={stands} gap={gap} at={{ bank, opening: column.opening[side], tape, from }} />
        )}
        onFront={onFront}
      />
      {stale && <p class="note pad-x">{words.before}</p>}
    </>
  );
}

/** Fitted fronts are the first of the order. */
function isFitted(bank: Bank, column: WorkedColumn, no: number): boolean {
  return bank.order === 'down' ? no <= column.fitted : no > bank.count - column.fitted;
}
