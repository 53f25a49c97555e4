import { useState } from 'preact/hooks';
import { equals } from '../../length/length';
import type { Bank } from '../../trade/fronts/bank';
import type { Opening } from '../../trade/fronts/opening';
import type { WorkedColumn, WorkedFronts } from '../../trade/fronts/worked';
import { BankDrawing, type DrawnFront } from '../../ui/bank-drawing';
import { Bar, BarButton, Segment } from '../../ui/bar';
import { Icon } from '../../ui/icon';
import { Inline } from '../../ui/mixed';
import type { Bench } from '../bench';
import { counted } from '../shared/counted';
import { exactlyOrMetric as w } from '../shared/exact-words';
import { UndoButton } from '../shared/undo-button';
import { WhyRow } from '../shared/why-row';
import { AsFitted } from './as-fitted';
import { BlankList } from './blank-list';
import { bankIn, nextFront } from './column-of';
import { Asks, Worth } from './facts';
import { lastGood } from './last-good';
import { type From, MarkList, MarksBeside } from './marks-beside';
import { ShimList } from './shim-list';
import { Skewed } from './skewed';

/** The fronts of a bank: drawn to scale with their marks, and as fitted. */
export function FrontsScreen({ bench, id }: { readonly bench: Bench; readonly id: string }) {
  const found = bankIn(bench.plan.value, id);
  const job = bench.job.value;
  if (!found || !job) return <NoBank bench={bench} />;
  const good = found.fronts.ok ? found.fronts.value : lastGood(bench, id);
  return (
    <>
      <Bar
        title={found.bank.name || 'Drawers'}
        sub={good ? subOf(good) : 'What goes in'}
        leave={{ label: 'Job', onTap: () => bench.go({ at: 'job' }) }}
      >
        <UndoButton bench={bench} wordless />
        <BarButton boxed label="Change" onTap={() => bench.go({ at: 'bank', id })} />
      </Bar>
      <main class="page">
        <Asks bench={bench} bank={found} />
        {good && <Columns bench={bench} fronts={good} stale={!found.fronts.ok} />}
      </main>
    </>
  );
}

export const NoBank = ({ bench }: { readonly bench: Bench }) => (
  <>
    <Bar title="Drawers" leave={{ label: 'Job', word: true, onTap: () => bench.go({ at: 'job' }) }} />
    <main class="page">
      <p class="pad-x empty-line">These drawers are not in the job.</p>
    </main>
  </>
);

const subOf = ({ columns, reveals }: WorkedFronts): string => {
  const high = columns[0]?.opening.high.value;
  return `${high ? `${w(high)} high, ` : ''}${w(reveals.between)} gaps`;
};

type ColumnsProps = { readonly bench: Bench; readonly fronts: WorkedFronts; readonly stale: boolean };

function Columns({ bench, fronts, stale }: ColumnsProps) {
  const { bank } = fronts;
  const [no, setNo] = useState(() => fronts.columns.find((c) => nextFront(bank, c))?.no ?? 1);
  const [side, setSide] = useState<'left' | 'right'>('left');
  const [from, setFrom] = useState<From>(bank.order === 'down' ? 'top' : 'bottom');
  const [picked, setPicked] = useState<number>();
  const tape = bench.job.value?.tape ?? '1/32';
  const column = fronts.columns.find((c) => c.no === no) ?? fronts.columns[0];
  if (!column) return null;
  const uneven = !same(column);
  const shown = uneven ? side : 'left';
  const now = picked ?? nextFront(bank, column);
  return (
    <>
      <div class="seglines">
        {fronts.columns.length > 1 && (
          <Segment
            label="Column"
            choices={fronts.columns.map((c) => ({
              label: `Column ${c.no}`,
              chosen: c.no === column.no,
              onTap: () => {
                setNo(c.no);
                setPicked(undefined);
              },
            }))}
          />
        )}
        {uneven && (
          <Segment
            label="Upright"
            choices={(['left', 'right'] as const).map((x) => ({
              label: x === 'left' ? 'Left upright' : 'Right upright',
              chosen: x === shown,
              onTap: () => setSide(x),
            }))}
          />
        )}
        <Segment
          label="Figures from"
          choices={(['top', 'bottom'] as const).map((x) => ({
            label: `From the ${x}`,
            chosen: x === from,
            onTap: () => setFrom(x),
          }))}
        />
      </div>
      <div class="markhead">
        <span>Front ends</span>
        <span>Next starts</span>
      </div>
      <Drawn {...{ bench, bank, column, from, now, stale }} side={shown} onFront={setPicked} />
      <MarkList stands={column[shown]} at={{ bank, opening: column.opening[shown], tape, from }} />
      <p class="s muted pad-x">
        Edges from the {from} of the opening, as wide as{' '}
        <Inline value={column.width.mark.value} tape={tape} /> fronts go. <b class="rem">+</b> strong,{' '}
        <b class="rem">−</b> scant.
      </p>
      <ul class="bays pad-x">
        <WhyRow words="Fronts together" sum={fronts.total} tape={tape} />
        <WhyRow words="Wide" sum={column.width.sum} tape={tape} />
        <WhyRow words="Lower edge over the bottom" sum={column.opening.sill} tape={tape} />
      </ul>
      <Skewed {...{ bench, fronts, column, tape }} />
      <Worth bench={bench} fronts={fronts} column={column} />
      <BlankList {...{ bench, fronts, column, tape }} />
      <ShimList {...{ bench, column, tape }} />
      <div class="pad-x adds">
        <button type="button" class="btn" onClick={() => bench.go({ at: 'opening', id: bank.id })}>
          <Icon name="measure" />
          {column.opening.measured ? 'Opening, as measured' : 'Measure the opening'}
        </button>
        <button type="button" class="btn" onClick={() => bench.go({ at: 'one', id: bank.id, what: 'marks' })}>
          Mark one at a time
        </button>
        <button type="button" class="btn" onClick={() => bench.go({ at: 'boxes', id: bank.id })}>
          Boxes, slides, pulls
        </button>
        <button type="button" class="btn" onClick={() => bench.go({ at: 'contents', id: bank.id })}>
          What goes in them
        </button>
      </div>
      {!stale && <AsFitted key={`${column.no}~${now}`} {...{ bench, bank, column }} no={now} />}
    </>
  );
}

const same = ({ left, right }: WorkedColumn): boolean =>
  left.every((x, k) => {
    const y = right[k];
    return y && equals(x.top, y.top) && equals(x.bottom, y.bottom);
  });

type DrawnProps = {
  readonly bench: Bench;
  readonly bank: Bank;
  readonly column: WorkedColumn;
  readonly side: 'left' | 'right';
  readonly from: From;
  readonly now: number | undefined;
  readonly stale: boolean;
  readonly onFront: (no: number) => void;
};

function Drawn({ bench, bank, column, side, from, now, stale, onFront }: DrawnProps) {
  const tape = bench.job.value?.tape ?? '1/32';
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
        opening={openingAt(column.opening, side)}
        fronts={fronts}
        tape={tape}
        stale={stale}
        fromTop={from === 'top'}
        label={`Column of ${counted(fronts.length, 'front', 'fronts')}, to scale`}
        beside={(gap) => (
          <MarksBeside
            stands={stands}
            gap={gap}
            at={{ bank, opening: openingAt(column.opening, side), tape, from }}
          />
        )}
        onFront={onFront}
      />
      {stale && <p class="note pad-x">before this change</p>}
    </>
  );
}

const openingAt = (opening: Opening, side: 'left' | 'right') => opening[side];

/** Fitted fronts are the first of the order. */
function isFitted(bank: Bank, column: WorkedColumn, no: number): boolean {
  return bank.order === 'down' ? no <= column.fitted : no > bank.count - column.fitted;
}
