import type { Job } from '../../job/job';
import type { Breakdown, PoolView } from '../../plan/breakdown';
import type { Plan } from '../../plan/plan';
import { isCurrent, isProved, leastSheets, sheetCount, takePlan } from '../../plan/take-plan';
import { laidSheetsOf } from '../../trade/sheets/laid-sheet';
import { placesOf } from '../../trade/sheets/tree';
import { Button } from '../../ui/button';
import { SheetThumb } from '../../ui/sheet-drawing';
import type { Bench } from '../bench';
import type { Laying } from '../shared/laying';
import { asWide } from './pool-plan';
import { cannotWords } from './problem-words';
import * as words from './words';
import './sheets.css';

type SearchProps = {
  readonly bench: Pick<Bench, 'act' | 'newId' | 'laying'>;
  readonly plan: Plan;
  readonly found: Breakdown;
  readonly view: PoolView;
  readonly laying: Laying;
};

/** A search under way or over: the best plan so far, and what is known of a better one. */
export function PoolSearch(props: SearchProps) {
  const { bench, plan, view, found, laying } = props;
  const { best, problem, state } = laying;
  const { id } = view.pool;
  const current = isCurrent(view, problem, found.kerf);
  return (
    <>
      {best && <Best view={view} laying={laying} best={best} />}
      <p class="pad-x note" role="status">
        {stateText(view, plan.job, laying)}
        {!current && words.changedSince}
      </p>
      <div class="pad-x adds two">
        {state === 'running' ? (
          <Button label={words.stop} onTap={() => bench.laying.stop(id)} />
        ) : (
          <Button
            label={best ? words.lookFurther : words.leaveIt}
            onTap={() => (best ? bench.laying.goOn(id) : bench.laying.letGo(id))}
          />
        )}
        {best && current && (
          <Button label={words.cutByPlan} look="main" onTap={() => void take(props, best)} />
        )}
      </div>
      {best && state !== 'running' && (
        <div class="pad-x adds">
          <Button label={words.leavePlan} look="quiet" onTap={() => bench.laying.letGo(id)} />
        </div>
      )}
    </>
  );
}

type Laid = NonNullable<Laying['best']>;

type BestProps = { readonly view: PoolView; readonly laying: Laying; readonly best: Laid };

/** The sheets of the best plan so far, small. */
const Best = ({ view, laying: { problem }, best }: BestProps) => (
  <div class="thumbs pad-x">
    {laidSheetsOf(best.sheets, problem).map((sheet, k) => (
      <div key={k} class="thumb">
        <SheetThumb
          size={sheet.size}
          places={placesOf(sheet, problem.kerf)}
          stick={view.pool.kind === 'stick'}
        />
      </div>
    ))}
  </div>
);

/** How the search stands: what it found, whether that is proved, what it could not do. */
function stateText(view: PoolView, job: Job, { best, problem, state, error }: Laying): string {
  if (best) {
    const { kind } = view.pool;
    const proved = isProved(best, problem);
    const [count, least] = [sheetCount(best, problem), leastSheets(best, problem)];
    const wide = asWide(view, job);
    const found = words.proofWords({ kind, count, least, proved, asWide: wide });
    const open =
      state !== 'running' && wide !== undefined ? '' : words.searchState(state === 'running', proved);
    return `${failure(view, { problem, state, error })}${found}${open}`;
  }
  if (state === 'running') return words.layingOut(view.toLay.pieces.length);
  return failure(view, { problem, state, error });
}

type Failed = Pick<Laying, 'problem' | 'state'> & { readonly error: Laying['error'] | undefined };

function failure(view: PoolView, { problem, state, error }: Failed): string {
  if (state === 'failed') return words.noSearch;
  return state === 'cannot' && error ? cannotWords(error, view, problem.alike) : '';
}

/** Takes the plan up: its sheets are cut by it from now on. */
async function take({ bench, plan, found, view, laying }: SearchProps, best: Laid): Promise<void> {
  const { problem } = laying;
  const { id, kind } = view.pool;
  const to = { job: plan.job, stocks: found.stocks, newId: bench.newId };
  const changes = takePlan(view, { laid: best, problem }, to);
  const units = words.unitOf(kind, sheetCount(best, problem));
  if (await bench.act(words.planTaken(view.name, units), changes)) bench.laying.letGo(id);
}
