import { useEffect, useState } from 'preact/hooks';
import { tickOf } from '../../job/edits';
import type { PlanSheet } from '../../job/job';
import { forDrawing } from '../../length/length';
import { writeLength } from '../../length/write';
import { type Breakdown, breakdownOf, type PoolView, stepsOf, useIn } from '../../plan/breakdown';
import { begunBelow, notCut, takenFrom } from '../../plan/not-cut';
import type { Plan } from '../../plan/plan';
import { layOp, standingSheets } from '../../plan/progress';
import type { Caution as CautionCode } from '../../trade/cautions/caution';
import type { CutStep } from '../../trade/sheets/cut-steps';
import { placesOf } from '../../trade/sheets/tree';
import { Bar } from '../../ui/bar';
import { Button } from '../../ui/button';
import { Icon } from '../../ui/icon';
import { KeySheet } from '../../ui/key-sheet';
import { SheetDrawing, SheetThumb } from '../../ui/sheet-drawing';
import type { Bench } from '../bench';
import { Caution } from '../shared/caution';
import { counted } from '../shared/counted';
import { UndoButton } from '../shared/undo-button';
import { useWake } from '../shared/use-wake';
import { CutList } from './cut-list';
import { CutPanel } from './cut-panel';
import { Leftovers } from './leftovers';
import { cutDone, listed, sheetTitle, useWords } from './words';
import { cutWrong } from './wrong';

/** One sheet, cut by cut: where the next one goes, what it keeps, and what it leaves. */
export function LayoutScreen({
  bench,
  id,
  path,
}: {
  readonly bench: Bench;
  readonly id: string;
  readonly path?: string | undefined;
}) {
  const plan = bench.plan.value;
  const found = plan && breakdownOf(plan, bench.shop.value, bench.folded.value);
  const sheet = plan && standingSheets(plan.job, bench.folded.value).find((s) => s.id === id);
  const view = sheet && found?.pools.find((v) => v.pool.stocks.some((s) => s.id === sheet.stock));
  if (!plan || !found || !sheet || !view) {
    return (
      <>
        <Bar title="Sheet" leave={{ label: 'Sheets', word: true, onTap: () => bench.go({ at: 'sheets' }) }} />
        <main class="page">
          <p class="pad-x empty-line">This sheet is no longer in the plan: it was laid out anew.</p>
        </main>
      </>
    );
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

const grains = {
  long: 'grain up',
  wide: 'grain across',
  none: 'no grain',
} as const;

function SheetInHand(props: SheetInHandProps) {
  const { bench, plan, found, sheet, view, path } = props;
  const { tape } = plan.job;
  useWake(bench);
  const [wrong, setWrong] = useState<CutStep>();
  const [says, setSays] = useState<string>();
  const stock = found.stocks.get(sheet.stock);
  const stick = stock?.kind === 'stick';
  const use = useIn(sheet, stock);
  const steps = stepsOf(sheet, plan.job, { stocks: found.stocks, shop: bench.shop.value });
  const { ticks } = bench.folded.value;
  const done = (step: Pick<CutStep, 'path'>) => ticks.has(layOp(sheet.id, step.path));
  const next = steps.find((step) => !done(step));
  const now = steps.find((step) => step.path === path) ?? next;
  // the cut to be made is in sight, above the panel that says it
  useEffect(() => document.querySelector('.cutno.now')?.scrollIntoView({ block: 'nearest' }), [now?.path]);
  const name = (piece: string) => found.pieces.get(piece)?.name ?? 'no longer wanted';
  const at = (to: string | undefined) =>
    bench.go(
      to === undefined ? { at: 'layout', id: sheet.id } : { at: 'layout', id: sheet.id, path: to },
      true,
    );
  const tick = async (step: CutStep) => {
    const op = layOp(sheet.id, step.path);
    const cut = `${sheetTitle(sheet, stock, tape)}, cut ${step.no}`;
    setSays(undefined);
    if (done(step)) {
      const begun = begunBelow(step, { sheet, job: plan.job, folded: bench.folded.value });
      if (begun)
        setSays(
          `${sheetTitle(begun, stock, tape)} came out of this cut and is begun: take its cuts back first.`,
        );
      else
        await bench.act(`Not cut: ${cut}`, notCut(step, { sheet, done: steps.filter(done), job: plan.job }));
      return;
    }
    if (await bench.act(`Cut: ${cut}`, [...tickOf(op, step.figure.value), ...takenFrom(sheet)]))
      at(undefined);
  };
  const after =
    now && !done(now) ? steps.find((step) => step.path === now.path.slice(0, -1) && !done(step)) : undefined;
  const others = view.sheets.filter((s) => s.id !== sheet.id);
  const wide = drawnWide(sheet, { stick, alone: others.length === 0 });
  return (
    <>
      <Bar
        title={sheetTitle(sheet, stock, tape)}
        sub={`${stock?.name ?? ''}${stick ? '' : `, ${grains[sheet.left ? 'long' : (stock?.grain ?? 'long')]}`}`}
        leave={{ label: 'Sheets', onTap: () => bench.go({ at: 'sheets' }) }}
      >
        <UndoButton bench={bench} />
      </Bar>
      <main class="page sheetpage">
        {use && <p class="pad-x note stickuse">This stick {useWords(use, sheet.size, tape)}.</p>}
        <div class="sheetwrap">
          <SheetDrawing
            size={sheet.size}
            places={placesOf(sheet, sheet.kerf)}
            cuts={steps.map((step) => ({
              path: step.path,
              no: step.no,
              state: step === now && !done(step) ? 'now' : done(step) ? 'done' : 'planned',
            }))}
            tape={tape}
            label={`${sheetTitle(sheet, stock, tape)}, ${counted(steps.length, 'cut', 'cuts')}`}
            piece={(piece) => {
              const own = found.pieces.get(piece);
              return own && { name: own.name, long: own.long };
            }}
            wide={wide}
            stick={stick}
          />
          {others.length > 0 && (
            <div class="sidethumbs">
              {others.map((other) => (
                <button
                  key={other.id}
                  type="button"
                  class="thumb"
                  onClick={() => bench.go({ at: 'layout', id: other.id }, true)}
                >
                  <SheetThumb size={other.size} places={placesOf(other, other.kerf)} stick={stick} />
                  <span>{sheetTitle(other, found.stocks.get(other.stock), tape)}</span>
                </button>
              ))}
            </div>
          )}
        </div>
        {view.standing.missing.length > 0 && (
          <p class="pad-x fact warn">
            <Icon name="warn" />
            On no sheet any more: {listed(view.standing.missing.map((p) => p.name))}. Lay out the rest on
            Sheets.
          </p>
        )}
        <Leftovers {...{ bench, plan, sheet, stock, done: (p: string) => ticks.has(layOp(sheet.id, p)) }} />
        <CutList {...{ steps, now, done, tape, onCut: at }} />
        {!stick && <p class="pad-x note">Good face down for a circular saw.</p>}
      </main>
      <div class="cutbar">
        {says && (
          <p class="pad-x saysline" role="alert">
            {says}
          </p>
        )}
        {now ? (
          <CutPanel {...{ step: now, done: done(now), tape, name, shop: bench.shop.value, stick }} />
        ) : (
          <p class="pad-x empty-line">
            {steps.length === 0 ? 'Nothing to cut: the piece is the sheet.' : 'All cut.'}
          </p>
        )}
        <div class="fixedbar three">
          <Caution bench={bench} code={stick ? 'stick-cut' : cautionAt(now)} />
          <button
            type="button"
            class="btn"
            disabled={!now || steps.indexOf(now) === 0}
            onClick={() => now && at(steps[steps.indexOf(now) - 1]?.path)}
          >
            Back
          </button>
          {now && !done(now) && !after && (
            <Button
              label="Cut wrong"
              onTap={() => {
                setSays(undefined);
                setWrong(now);
              }}
            />
          )}
          {now ? (
            <Button
              label={
                after
                  ? `First cut ${after.no}`
                  : done(now)
                    ? next
                      ? 'To the next cut'
                      : 'Not cut after all'
                    : `${cutDone(now)}, next`
              }
              look="main"
              onTap={() => (after ? at(after.path) : done(now) && next ? at(undefined) : void tick(now))}
            />
          ) : (
            <Button label="To the sheets" look="main" onTap={() => bench.go({ at: 'sheets' })} />
          )}
        </div>
      </div>
      {wrong && (
        <KeySheet
          title={`What is kept came out at, ${wrong.keep === 'near' ? 'instead of' : 'the trim off, instead of'} ${writeLength(wrong.figure.value, tape)}`}
          tape={tape}
          fill="length"
          now={undefined}
          onLength={(value) =>
            value && void cutWrong({ bench, plan, found, sheet }, wrong, value).then(setSays)
          }
          onClose={() => setWrong(undefined)}
        />
      )}
    </>
  );
}

/**
 * So wide the sheet is drawn, pixels: what the phone has beside the other sheets, and so that most of it is in sight.
 */
function drawnWide(
  { size }: PlanSheet,
  { stick, alone }: { readonly stick: boolean; readonly alone: boolean },
): number {
  const room = Math.min(innerWidth, 560) - 32 - (alone ? 20 : 104);
  if (stick) return Math.min(room, 150);
  const inSight = 0.58 * innerHeight * (forDrawing(size.wide) / Math.max(forDrawing(size.long), 0.01));
  return Math.max(Math.min(room, 200), Math.min(room, inSight));
}

/** What can hurt at a cut of a sheet: by what it is made with. */
function cautionAt(step: CutStep | undefined): CautionCode {
  switch (step?.tool) {
    case 'fence':
      return 'rip';
    case 'stop':
      return 'crosscut';
    default:
      return 'sheet-cut';
  }
}
