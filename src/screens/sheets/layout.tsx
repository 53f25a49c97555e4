import { useState } from 'preact/hooks';
import type { PlanSheet } from '../../job/job';
import type { Tape } from '../../length/tape';
import { type Breakdown, breakdownOf, type PoolView, useIn } from '../../plan/breakdown';
import type { Plan } from '../../plan/plan';
import { standingSheets } from '../../plan/progress';
import type { CutStep } from '../../trade/sheets/cut-steps';
import type { SheetStock } from '../../trade/sheets/stock';
import { Bar } from '../../ui/bar';
import { Icon } from '../../ui/icon';
import { KeySheet } from '../../ui/key-sheet';
import type { Bench } from '../bench';
import { GonePage } from '../shared/gone-page';
import { tickCut } from '../shared/tick-cut';
import { UndoButton } from '../shared/undo-button';
import { useWake } from '../shared/use-wake';
import { CutBar } from './cut-bar';
import { CutList } from './cut-list';
import { Leftovers } from './leftovers';
import { SheetDrawn } from './sheet-drawn';
import { useCuts } from './use-cuts';
import * as words from './words';
import { cutWrong } from './wrong';
import './layout.css';

type LayoutProps = {
  readonly bench: Bench;
  readonly id: string;
  readonly path?: string | undefined;
};

/** One sheet, cut by cut: where the next one goes, what it keeps, and what it leaves. */
export function LayoutScreen({ bench, id, path }: LayoutProps) {
  const plan = bench.plan.value;
  const found = plan && breakdownOf(plan, bench.shop.value, bench.folded.value);
  const sheet = plan && standingSheets(plan.job, bench.folded.value).find((s) => s.id === id);
  const view = sheet && found?.pools.find((v) => v.pool.stocks.some((s) => s.id === sheet.stock));
  if (!plan || !found || !sheet || !view) {
    const leave = { label: words.sheets, word: true, onTap: () => bench.go({ at: 'sheets' }) };
    return <GonePage title={words.sheet} leave={leave} says={words.sheetGone} />;
  }
  return <SheetInHand key={id} {...{ bench, plan, found, sheet, view, path }} />;
}

type SheetInHandProps = {
  readonly bench: Bench;
  readonly plan: Plan;
  readonly found: Breakdown;
  readonly sheet: PlanSheet;
  readonly view: PoolView;
  readonly path: string | undefined;
};

function SheetInHand(props: SheetInHandProps) {
  const { bench, plan, found, sheet, view } = props;
  const { tape } = plan.job;
  useWake(bench);
  const [wrong, setWrong] = useState<CutStep>();
  const [says, setSays] = useState<string>();
  const stock = found.stocks.get(sheet.stock);
  const stick = stock?.kind === 'stick';
  const cuts = useCuts(props);
  const at = (path: string | undefined) =>
    bench.go({ at: 'layout', id: sheet.id, ...(path === undefined ? {} : { path }) }, true);
  const tick = async (step: CutStep) => {
    setSays(undefined);
    const { made, refused } = await tickCut({ bench, plan, sheet, stock, cuts }, step);
    if (refused) setSays(refused);
    if (made) at(undefined);
  };
  const mark = (step: CutStep) => {
    setSays(undefined);
    setWrong(step);
  };
  return (
    <>
      <SheetBar {...{ bench, plan, sheet, stock }} />
      <main class="page sheetpage">
        <Use {...{ sheet, stock, tape }} />
        <SheetDrawn {...{ bench, found, sheet, view, tape, stick, cuts }} />
        <Missing view={view} />
        <Leftovers {...{ bench, plan, sheet, stock }} done={(path) => cuts.done({ path })} />
        <CutList {...cuts} tape={tape} onCut={at} />
        {!stick && <p class="pad-x note">{words.goodFaceDown}</p>}
      </main>
      <CutBar {...{ bench, found, tape, stick, cuts, says, at }} onTick={tick} onWrong={mark} />
      {wrong && <WrongDock {...props} step={wrong} onSays={setSays} onClose={() => setWrong(undefined)} />}
    </>
  );
}

type WrongProps = SheetInHandProps & {
  readonly step: CutStep;
  readonly onSays: (says: string | undefined) => void;
  readonly onClose: () => void;
};

/** What is kept of a cut that came out elsewhere. */
const WrongDock = ({ step, onSays, onClose, ...on }: WrongProps) => (
  <KeySheet
    title={words.cameOutTitle(step, on.plan.job.tape)}
    tape={on.plan.job.tape}
    fill="length"
    now={undefined}
    onLength={(value) => value && void cutWrong(on, step, value).then(onSays)}
    onClose={onClose}
  />
);

type SheetOf = { readonly sheet: PlanSheet; readonly stock: SheetStock | undefined };

type BarProps = SheetOf & { readonly bench: Bench; readonly plan: Plan };

function SheetBar({ bench, plan, sheet, stock }: BarProps) {
  const grain = words.grains[sheet.left ? 'long' : (stock?.grain ?? 'long')];
  return (
    <Bar
      title={words.sheetTitle(sheet, stock, plan.job.tape)}
      sub={`${stock?.name ?? ''}${stock?.kind === 'stick' ? '' : `, ${grain}`}`}
      leave={{ label: words.sheets, onTap: () => bench.go({ at: 'sheets' }) }}
    >
      <UndoButton bench={bench} />
    </Bar>
  );
}

/** How much of a stick is used. */
function Use({ sheet, stock, tape }: SheetOf & { readonly tape: Tape }) {
  const use = useIn(sheet, stock);
  if (!use) return null;
  return <p class="pad-x note stickuse">{words.stickUse(words.useWords(use, sheet.size, tape))}</p>;
}

/** Pieces of the pool that lie on no sheet any more. */
function Missing({ view: { standing } }: { readonly view: PoolView }) {
  if (standing.missing.length === 0) return null;
  return (
    <p class="pad-x fact warn">
      <Icon name="warn" />
      {words.missing(standing.missing)}
    </p>
  );
}
