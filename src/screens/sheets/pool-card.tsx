import type { PlanSheet } from '../../job/job';
import { type Breakdown, isSettled, type PoolView, useIn } from '../../plan/breakdown';
import type { Plan } from '../../plan/plan';
import { layOp } from '../../plan/progress';
import { isCurrent, isProved, leastSheets, sheetCount, takePlan } from '../../plan/take-plan';
import { laidSheetsOf } from '../../trade/sheets/laid-sheet';
import { layProblemOf } from '../../trade/sheets/lay-problem';
import { piecesIn, placesOf } from '../../trade/sheets/tree';
import { Button, Chip } from '../../ui/button';
import { Icon } from '../../ui/icon';
import { SheetThumb } from '../../ui/sheet-drawing';
import type { Bench } from '../bench';
import type { Laying } from '../shared/laying';
import {
  cannotWords,
  listed,
  plural,
  problemWords,
  proofWords,
  sheetTitle,
  sizeWords,
  unitOf,
  useWords,
} from './words';

export type PoolProps = {
  readonly bench: Bench;
  readonly plan: Plan;
  readonly found: Breakdown;
  readonly view: PoolView;
};

/** One stuff of the job: its sheets as planned, or what laying them out has come to. */
export function PoolCard(props: PoolProps) {
  const { bench, plan, view, found } = props;
  const laying = bench.laying.all.value.get(view.pool.id);
  const { tape } = plan.job;
  return (
    <section class="pool" aria-label={view.name}>
      <div class="sechead">
        <h2 class="sec">{view.name}</h2>
        <Chip
          label={plural(view.pool.pieces.length, 'piece')}
          onTap={() => bench.go({ at: 'pieces', id: view.pool.id })}
        />
      </div>
      {laying ? <Search {...props} laying={laying} /> : <Taken {...props} />}
      {found.kerf && view.problems.length > 0 && (
        <ul class="pad-x facts">
          {view.problems.map((problem, k) => (
            <li key={k} class="fact warn">
              <Icon name="warn" />
              {problemWords(problem, found, tape)}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** The plan taken up, and what it lacks. */
function Taken(props: PoolProps) {
  const { bench, plan, view, found } = props;
  const { tape } = plan.job;
  const { standing, sheets, toLay, proof } = view;
  const settled = isSettled(view);
  const whole = new Set(sheets.filter((s) => !s.left).map((s) => `${s.stock} ${s.no}`)).size;
  const isOut = (id: string) =>
    !view.outgrown.some((o) => o.piece === id) && !view.fresh.some((s) => piecesIn(s.tree).includes(id));
  const begin = () => found.kerf && bench.laying.start(view.pool.id, layProblemOf(toLay, found.kerf));
  return (
    <>
      {sheets.length > 0 && (
        <>
          <div class="thumbs pad-x">
            {sheets.map((sheet) => (
              <PlannedThumb key={sheet.id} {...props} sheet={sheet} />
            ))}
          </div>
          {settled && (
            <div class="pad-x proof">
              <p class="note">
                {proofWords({
                  kind: view.pool.kind,
                  count: whole,
                  least: proof.least,
                  proved: proof.proved === true,
                })}
              </p>
              {toLay.pieces.length > 0 && view.problems.length === 0 && <Chip label="Again" onTap={begin} />}
            </div>
          )}
        </>
      )}
      {sheets.length === 0 && standing.missing.length > 0 && (
        <p class="pad-x note">
          {plural(standing.missing.length, 'piece')} to lay out on{' '}
          {view.pool.kind === 'stick' ? 'sticks' : 'sheets'} {sizes(props)}.
        </p>
      )}
      {sheets.length === 0 && standing.missing.length === 0 && <p class="pad-x note">All cut.</p>}
      {sheets.length > 0 && !settled && (
        <ul class="pad-x facts">
          {view.changed && (
            <li class="fact warn">
              <Icon name="warn" />
              The plan was made for other sizes: a sheet, the kerf or a piece has changed since. Lay out
              again.
            </li>
          )}
          {standing.missing.length > 0 && (
            <li class="fact warn">
              <Icon name="warn" />
              On no sheet yet: {listed(standing.missing.map((p) => p.name))}.
            </li>
          )}
          {standing.misfits.map(({ piece, laid, short }) => (
            <li key={piece.id} class="fact warn">
              <Icon name="warn" />
              {piece.name} lies at {sizeWords(laid, tape)},{' '}
              {!isOut(piece.id)
                ? `now wants ${sizeWords(piece, tape)}: lay out the rest.`
                : short
                  ? `less than its finished ${sizeWords(piece.finished, tape)}: spoil it and cut another.`
                  : `now wants ${sizeWords(piece, tape)}.`}
            </li>
          ))}
          {standing.twice.length > 0 && (
            <li class="fact warn">
              <Icon name="warn" />
              Laid out twice: {listed(standing.twice.map((p) => p.name))}. Two plans met; lay out again.
            </li>
          )}
          {standing.stale.length > 0 && (
            <li class="fact warn">
              <Icon name="warn" />
              {plural(standing.stale.length, 'piece')} on the plan nobody wants any more.
            </li>
          )}
        </ul>
      )}
      {!settled && toLay.pieces.length > 0 && view.problems.length === 0 && (
        <div class="pad-x adds">
          <Button
            label={
              sheets.length === 0
                ? 'Lay out'
                : view.fresh.length === sheets.length
                  ? 'Lay out again'
                  : 'Lay out the rest'
            }
            look="main full"
            onTap={begin}
          />
        </div>
      )}
    </>
  );
}

const sizes = ({ view, plan }: PoolProps): string =>
  listed([
    ...new Set(
      view.pool.stocks.map((s) =>
        s.kind === 'stick'
          ? `${sizeWords({ long: s.long, wide: s.wide }, plan.job.tape)}`
          : sizeWords(s, plan.job.tape),
      ),
    ),
  ]);

function PlannedThumb({ bench, plan, found, sheet }: PoolProps & { readonly sheet: PlanSheet }) {
  const stock = found.stocks.get(sheet.stock);
  const places = placesOf(sheet, sheet.kerf);
  const cuts = places.filter((p) => p.branch.is === 'cut');
  const use = useIn(sheet, stock);
  const done = cuts.filter((p) => bench.folded.value.ticks.has(layOp(sheet.id, p.path))).length;
  return (
    <button type="button" class="thumb" onClick={() => bench.go({ at: 'layout', id: sheet.id })}>
      <SheetThumb size={sheet.size} places={places} stick={stock?.kind === 'stick'} />
      <b>{sheetTitle(sheet, stock, plan.job.tape)}</b>
      {use && <span class="s uses">{useWords(use, sheet.size, plan.job.tape)}</span>}
      <span class="s muted">
        {done === 0
          ? plural(cuts.length, 'cut')
          : done === cuts.length
            ? 'all cut'
            : `${done} of ${cuts.length}`}
      </span>
    </button>
  );
}

/** A search under way or over: the best plan so far, and what is known of a better one. */
function Search(props: PoolProps & { readonly laying: Laying }) {
  const { bench, plan, view, found, laying } = props;
  const { best, problem, state } = laying;
  const { id, kind } = view.pool;
  const count = best ? sheetCount(best, problem) : 0;
  const proved = best !== undefined && isProved(best, problem);
  const running = state === 'running';
  const current = isCurrent(view, problem, found.kerf);
  const take = async () => {
    if (!best || !current) return;
    const changes = takePlan(
      view,
      { laid: best, problem },
      { job: plan.job, stocks: found.stocks, newId: bench.newId },
    );
    if (await bench.act(`${view.name}: plan of ${unitOf(kind, count)}`, changes)) bench.laying.letGo(id);
  };
  return (
    <>
      {best && (
        <div class="thumbs pad-x">
          {laidSheetsOf(best.sheets, problem).map((sheet, k) => (
            <div key={k} class="thumb">
              <SheetThumb size={sheet.size} places={placesOf(sheet, problem.kerf)} stick={kind === 'stick'} />
            </div>
          ))}
        </div>
      )}
      <p class="pad-x note" role="status">
        {state === 'cannot' && laying.error && cannotWords(laying.error, view, problem.alike)}
        {state === 'failed' && 'The search could not start on this phone.'}
        {!best && running && `Laying out ${plural(view.toLay.pieces.length, 'piece')}.`}
        {best && proofWords({ kind, count, least: leastSheets(best, problem), proved })}
        {best && running && (proved ? ' Looking for fewer settings and a larger offcut.' : ' Still looking.')}
        {best && !running && !proved && ' Not proved: a better one may exist.'}
        {!current && ' Something was cut or changed since it was begun: leave it and lay out again.'}
      </p>
      <div class="pad-x adds two">
        {running ? (
          <Button label="Stop" onTap={() => bench.laying.stop(id)} />
        ) : (
          <Button
            label={best ? 'Look further' : 'Leave it'}
            onTap={() => (best ? bench.laying.goOn(id) : bench.laying.letGo(id))}
          />
        )}
        {best && current && <Button label="Cut by this plan" look="main" onTap={() => void take()} />}
      </div>
      {best && !running && (
        <div class="pad-x adds">
          <Button label="Leave this plan" look="quiet" onTap={() => bench.laying.letGo(id)} />
        </div>
      )}
    </>
  );
}
