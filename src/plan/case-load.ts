import { howMany, type Ratio, ratio } from '../length/length';
import { loadOf } from '../trade/boxes/contents';
import type { PartName } from '../trade/carcass/part-name';
import type { Sag } from '../trade/loads/sag';
import type { Plan } from './plan';
import { type Span, spansOf, worstOf } from './shelf-loads';

/** What stands in a case in short: how many things, how heavy, and the shelf that sags most for what is allowed. */
export type CaseLoad = {
  readonly things: number;
  readonly pounds: Ratio;
  readonly unweighed: number;
  readonly worst?: { readonly name: PartName; readonly sag: Sag };
  /** A shelf that carries more than one may, and by how much. */
  readonly heavy?: { readonly name: PartName; readonly by: Ratio };
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
  const sags = spans.flatMap(sagIn);
  const [heavy] = spans.flatMap((span) => {
    const by = worstOf(span)?.heavy;
    return by ? [{ name: span.part.name, by }] : [];
  });
  const [first, ...rest] = sags;
  const worst = first && rest.reduce((a, b) => (share(a.sag).lt(share(b.sag)) ? b : a), first);
  return {
    things: inIt.reduce((so, { count }) => so + count, 0),
    pounds: contents,
    unweighed,
    ...(worst ? { worst } : {}),
    ...(heavy ? { heavy } : {}),
  };
}

/** Under what stands on it, else evenly loaded by the standard. */
function sagIn(span: Span): readonly { readonly name: PartName; readonly sag: Sag }[] {
  const sag = worstOf(span)?.sag ?? span.even?.sag;
  return sag?.ok ? [{ name: span.part.name, sag: sag.value }] : [];
}

/** How much of what is allowed it sags. */
const share = ({ sag, allowed }: Sag): Ratio => (allowed.n === 0n ? ratio(0n) : howMany(sag, allowed));
