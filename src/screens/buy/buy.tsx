import type { Change } from '../../job/entry';
import type { BankPlan } from '../../plan/bank-plan';
import { breakdownOf } from '../../plan/breakdown';
import { type BuyView, buyView, type Gone, gotChanges, type Row, tickChanges } from '../../plan/buying';
import { needsOf } from '../../plan/needs';
import type { Plan } from '../../plan/plan';
import type { SheetNeed } from '../../trade/buying/need';
import { screwFor } from '../../trade/install/screw';
import { Bar } from '../../ui/bar';
import { Button, Chip } from '../../ui/button';
import { Icon } from '../../ui/icon';
import { TickBox } from '../../ui/tick-box';
import { NearRows } from '../../ui/when-near';
import type { Bench } from '../bench';
import { frontScrew } from '../shared/front-screw';
import { listsOf } from '../shared/shop-lists';
import { UndoButton } from '../shared/undo-button';
import { goneText } from './gone-words';
import * as words from './words';
import './buy.css';
import '../../ui/mixed.css';

/** What to buy, by group, each line with why so many; what is got goes down to the end. Works with no signal. */
export function BuyScreen({ bench }: { readonly bench: Bench }) {
  const plan = bench.plan.value;
  const found = plan && breakdownOf(plan, bench.shop.value, bench.folded.value);
  const view = plan && found && viewOf(bench, plan, needsOf(found));
  if (!view || isBare(view)) return <Empty bench={bench} />;
  const open = view.open.flatMap((g) => g.rows).length;
  const of = open + view.got.length;
  return (
    <>
      <BuyBar bench={bench} sub={words.gotOf(view.got.length, of)} />
      <main class="page">
        {open === 0 && <p class="pad-x empty-line">{words.noneOpen(of)}</p>}
        {view.open.map(({ group, rows }, k) => (
          <section key={group} aria-label={words.groupWords[group]}>
            <h2 class="sec pad-x">{words.groupWords[group]}</h2>
            <ul>
              <BuyRows
                of={rows}
                before={view.open.slice(0, k).flatMap((g) => g.rows).length}
                rows={of}
                bench={bench}
              />
            </ul>
          </section>
        ))}
        <NotCounted view={view} />
        <Got view={view} before={open} bench={bench} />
      </main>
    </>
  );
}

function viewOf(bench: Bench, plan: Plan, needs: readonly SheetNeed[]): BuyView {
  const screw = (bank: BankPlan) => {
    const own = frontScrew(bank, bench.plan.value);
    return own && screwFor({ ...own, lengths: listsOf(bench.settings.value).screws });
  };
  return buyView({
    plan,
    needs,
    ticks: bench.folded.value.ticks,
    slideLength: bench.shop.value.slideLength,
    frontScrew: screw,
    screws: listsOf(bench.settings.value).screws,
    screwsEach: ({ bank }) => bank.frontScrews,
  });
}

const isBare = ({ open, got, gone, not, sheets }: BuyView): boolean =>
  !sheets && [open, got, gone, not].every((list) => list.length === 0);

const BuyBar = ({ bench, sub }: { readonly bench: Bench; readonly sub: string }) => (
  <Bar title={words.title} sub={sub} leave={{ label: words.back, onTap: () => bench.go({ at: 'sheets' }) }}>
    <UndoButton bench={bench} />
  </Bar>
);

const Empty = ({ bench }: { readonly bench: Bench }) => (
  <>
    <BuyBar bench={bench} sub={bench.job.value?.name ?? ''} />
    <main class="page">
      <p class="pad-x empty-line">{words.nothingYet}</p>
      <div class="pad-x">
        <Button label={words.toJob} look="main full" onTap={() => bench.go({ at: 'job' })} />
      </div>
    </main>
  </>
);

/** About how high a line is, px. */
const rowHigh = 200;

type RowsProps = {
  readonly of: readonly Row[];
  /** Lines of the list before these, and all its lines. */
  readonly before: number;
  readonly rows: number;
  readonly bench: Bench;
};

const BuyRows = ({ bench, ...lines }: RowsProps) => (
  <NearRows
    {...lines}
    id={({ op }) => op}
    high={rowHigh}
    draw={(row) => <BuyRow row={row} bench={bench} />}
  />
);

/** The count huge, its unit small; what it is and why so many; the box where the thumb is. */
function BuyRow({ row, bench }: { readonly row: Row; readonly bench: Bench }) {
  const { line, op, ticked, now } = row;
  const { figure, unit } = words.amountWords(line);
  const name = words.lineName(line);
  const changed = words.changedText(row);
  const got = row.now === 'got' || row.now === 'fewer';
  const act = (label: string, changes: readonly Change[]) =>
    void bench.act(words.actOn(label, name), changes);
  return (
    <div class={got ? 'buyline got' : 'buyline'}>
      <p class="many">
        <span class="mx bench">{figure}</span> <span class="s">{unit}</span>
      </p>
      <div class="grow">
        <b>{name}</b>
        {changed && <p class={now === 'more' ? 'wrongline' : 's lit'}>{changed}</p>}
        <p class="note">{words.whyText(line.why)}</p>
        <div class="runacts">
          {now === 'more' && <Chip label={words.gotRest} onTap={() => act(words.gotRest, gotChanges(row))} />}
          <Readings row={row} bench={bench} />
        </div>
      </div>
      <TickBox
        label={words.boxLabel(figure, unit, name)}
        ticked={ticked !== undefined}
        saving={bench.saving.value.has(op)}
        onTap={() => act(ticked ? words.notGot : words.got, tickChanges(row))}
      />
    </div>
  );
}

/** Measured at the rack, before paying. */
function Readings({ row, bench }: { readonly row: Row; readonly bench: Bench }) {
  const { why } = row.line;
  if (why.code !== 'layout') return null;
  const { stock } = why.need;
  return (
    <button type="button" class="chip" onClick={() => bench.go({ at: 'stock', id: stock })}>
      <Icon name="measure" />
      {words.readings}
    </button>
  );
}

/** What the job asks for and the list cannot count: never left out unsaid. */
const NotCounted = ({ view }: { readonly view: BuyView }) => (
  <section aria-label={words.notCounted}>
    <h2 class="sec pad-x">{words.notCounted}</h2>
    <ul class="problems pad-x">
      {view.not.map((not, k) => (
        <li key={k} class="note">
          {words.notText(not)}
        </li>
      ))}
      <li class="note">{words.notReckoned}</li>
    </ul>
  </section>
);

type GotProps = Pick<RowsProps, 'before' | 'bench'> & { readonly view: BuyView };

function Got({ view, before, bench }: GotProps) {
  if (view.got.length + view.gone.length === 0) return null;
  const stocks = bench.job.value?.stock ?? [];
  const said = (gone: Gone) => goneText(gone, (id) => stocks.find((s) => s.id === id)?.name);
  return (
    <section aria-label={words.got}>
      <h2 class="sec pad-x">{words.got}</h2>
      <ul>
        <BuyRows of={view.got} before={before} rows={before + view.got.length} bench={bench} />
        {view.gone.map((gone) => (
          <li key={gone.op} class="buyline got">
            <p class="grow s">{said(gone)}</p>
            <TickBox
              label={said(gone)}
              ticked
              saving={bench.saving.value.has(gone.op)}
              onTap={() => void bench.act(words.notGot, [{ kind: 'untick', op: gone.op }])}
            />
          </li>
        ))}
      </ul>
    </section>
  );
}
