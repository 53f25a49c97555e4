import type { Job, PlanSheet } from '../../job/job';
import type { Tape } from '../../length/tape';
import { writeLength } from '../../length/write';
import { type Breakdown, isSettled, type PoolView, useIn } from '../../plan/breakdown';
import type { Plan } from '../../plan/plan';
import { layOp } from '../../plan/progress';
import { layProblemOf } from '../../trade/sheets/lay-problem';
import { piecesIn, placesOf } from '../../trade/sheets/tree';
import { Button, Chip } from '../../ui/button';
import { SheetThumb } from '../../ui/sheet-drawing';
import type { Bench } from '../bench';
import { Warned } from './warned';
import * as words from './words';
import './sheets.css';

type PlanProps = {
  readonly bench: Bench;
  readonly plan: Plan;
  readonly found: Breakdown;
  readonly view: PoolView;
};

/** The plan taken up, and what it lacks. */
export function PoolPlan(props: PlanProps) {
  const { bench, plan, view, found } = props;
  const { sheets, toLay } = view;
  const settled = isSettled(view);
  const canLay = toLay.pieces.length > 0 && view.problems.length === 0;
  const begin = () => found.kerf && bench.laying.start(view.pool.id, layProblemOf(toLay, found.kerf));
  return (
    <>
      {sheets.length > 0 && (
        <div class="thumbs pad-x">
          {sheets.map((sheet) => (
            <PlannedThumb key={sheet.id} {...props} sheet={sheet} />
          ))}
        </div>
      )}
      {sheets.length > 0 && settled && (
        <Proof view={view} job={plan.job} onAgain={canLay ? begin : undefined} />
      )}
      {sheets.length === 0 && <p class="pad-x note">{noPlanText(view, plan.job.tape)}</p>}
      {sheets.length > 0 && !settled && <Lacks view={view} tape={plan.job.tape} />}
      {!settled && canLay && (
        <div class="pad-x adds">
          <Button label={layOutText(view)} look="main full" onTap={begin} />
        </div>
      )}
    </>
  );
}

type ProofProps = { readonly view: PoolView; readonly job: Job; readonly onAgain: (() => void) | undefined };

/** How wide the sticks of a pool are taken to be where their width is not said; undefined where it is. */
export function asWide({ pool }: PoolView, job: Job): string | undefined {
  const unsaid = pool.stocks.find(
    ({ id, kind }) => kind === 'stick' && job.stock.some((s) => s.id === id && s.wide === undefined),
  );
  return unsaid && writeLength(unsaid.wide, job.tape);
}

/** What is known of the plan in hand, and the way to look again. */
function Proof({ view, job, onAgain }: ProofProps) {
  const { pool, sheets, proof } = view;
  const count = new Set(sheets.filter((s) => !s.left).map((s) => `${s.stock} ${s.no}`)).size;
  const { least, proved } = proof;
  return (
    <div class="pad-x proof">
      <p class="note">
        {words.proofWords({
          kind: pool.kind,
          count,
          least,
          proved: proved === true,
          asWide: asWide(view, job),
        })}
      </p>
      {onAgain && <Chip label={words.again} onTap={onAgain} />}
    </div>
  );
}

/** What stands where nothing is laid out: what there is to lay out, or that all is cut. */
function noPlanText({ pool, standing: { missing } }: PoolView, tape: Tape): string {
  if (missing.length === 0) return words.allCut;
  const sizes = [...new Set(pool.stocks.map((s) => words.sizeWords(s, tape)))];
  return words.toLayOut(missing.length, pool.kind, sizes);
}

function layOutText({ sheets, fresh }: PoolView): string {
  if (sheets.length === 0) return words.layOut;
  return fresh.length === sheets.length ? words.layOutAgain : words.layOutRest;
}

type LacksProps = { readonly view: PoolView; readonly tape: Tape };

/** Where the plan and the pieces no longer agree. */
function Lacks({ view, tape }: LacksProps) {
  const { missing, misfits, twice, stale } = view.standing;
  const isOut = (id: string) =>
    !view.outgrown.some((o) => o.piece === id) && !view.fresh.some((s) => piecesIn(s.tree).includes(id));
  return (
    <ul class="pad-x facts">
      {view.changed && <Warned text={words.outdated} />}
      {missing.length > 0 && <Warned text={words.notLaid(missing)} />}
      {misfits.map((misfit) => (
        <Warned key={misfit.piece.id} text={words.misfit(misfit, isOut(misfit.piece.id), tape)} />
      ))}
      {twice.length > 0 && <Warned text={words.laidTwice(twice)} />}
      {stale.length > 0 && <Warned text={words.unwanted(stale.length)} />}
    </ul>
  );
}

/** A sheet of the plan, small, with how far it is cut. */
function PlannedThumb({ bench, plan, found, sheet }: PlanProps & { readonly sheet: PlanSheet }) {
  const { tape } = plan.job;
  const stock = found.stocks.get(sheet.stock);
  const places = placesOf(sheet, sheet.kerf);
  const cuts = places.filter((p) => p.branch.is === 'cut');
  const use = useIn(sheet, stock);
  const done = cuts.filter((p) => bench.folded.value.ticks.has(layOp(sheet.id, p.path))).length;
  return (
    <button type="button" class="thumb" onClick={() => bench.go({ at: 'layout', id: sheet.id })}>
      <SheetThumb size={sheet.size} places={places} stick={stock?.kind === 'stick'} />
      <b>{words.sheetTitle(sheet, stock, tape)}</b>
      {use && <span class="s uses">{words.useWords(use, sheet.size, tape)}</span>}
      <span class="s muted">{words.cutsDone(done, cuts.length)}</span>
    </button>
  );
}
