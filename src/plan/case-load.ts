import { howMany, type Ratio, ratio } from '../length/length';
import { loadOf } from '../trade/boxes/contents';
import type { PartName } from '../trade/carcass/part-name';
import { shelfMost } from '../trade/loads/even-shelf';
import type { Sag } from '../trade/loads/sag';
import type { Plan } from './plan';
import { type Span, spansOf, worstOf } from './shelf-loads';

/** A shelf by the limit it comes nearest to, or is furthest over: its sag, or the pounds one may carry. */
type NearestLimit = {
  readonly name: PartName;
  readonly by: 'sag' | 'load';
  /** None where nobody said how stiff it is. */
  readonly sag?: Sag;
  /** What stands on it and its own weight; none where nothing stands on it. */
  readonly load?: Ratio;
  /** How much more that is than a shelf may carry. */
  readonly heavy?: Ratio;
};

/** What stands in a case in short: how many things, how heavy, and its worst shelf. Pounds. */
export type CaseLoad = {
  readonly things: number;
  readonly pounds: Ratio;
  readonly unweighed: number;
  readonly worst?: NearestLimit;
  /** Other shelves that are over a limit. */
  readonly others: number;
};

/**
 * The load of a case of the job: what is in its drawers and on its shelves, and its worst shelf.
 *
 * @param id of the case
 * @returns pounds
 */
export function loadOfCase({ job, worked }: Pick<Plan, 'job' | 'worked'>, id: string): CaseLoad {
  const banks = job.banks.filter(({ of }) => of === id).map((bank) => bank.id);
  const inIt = job.things.filter(
    ({ bank, part }) => part?.startsWith(`${id}~`) || (bank !== undefined && banks.includes(bank)),
  );
  const { contents, unweighed } = loadOf(inIt);
  const found = worked.get(id);
  const spans = found?.ok ? spansOf(job, found.value) : [];
  const [first, ...rest] = spans.flatMap(limitOf);
  const worst = first && rest.reduce((a, b) => (a.share.lt(b.share) ? b : a), first);
  const over = [first, ...rest].filter((one) => one && isOver(one));
  return {
    things: inIt.reduce((so, { count }) => so + count, 0),
    pounds: contents,
    unweighed,
    ...(worst ? { worst: worst.limit } : {}),
    others: over.filter((one) => one !== worst).length,
  };
}

type Limit = { readonly limit: NearestLimit; readonly share: Ratio };

const isOver = ({ limit: { sag, heavy } }: Limit): boolean => (heavy ?? sag?.over) !== undefined;

/** Under what stands on it; a bare shelf by its sag alone, evenly loaded by the standard. */
function limitOf(span: Span): readonly Limit[] {
  const on = worstOf(span);
  const found = on?.sag ?? span.even?.sag;
  const sag = found?.ok ? found.value : undefined;
  const bySag = sag && share(sag);
  const byLoad = on && (on.load.div(shelfMost) as Ratio);
  const by = byLoad && (!bySag || bySag.lt(byLoad)) ? 'load' : 'sag';
  const most = by === 'load' ? byLoad : bySag;
  if (!most) return [];
  const told = { ...(sag && { sag }), ...(on && { load: on.load }), ...(on?.heavy && { heavy: on.heavy }) };
  return [{ limit: { name: span.part.name, by, ...told }, share: most }];
}

/** How much of what is allowed it sags. */
const share = ({ sag, allowed }: Sag): Ratio => (allowed.n === 0n ? ratio(0n) : howMany(sag, allowed));
