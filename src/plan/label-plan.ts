import type { Job } from '../job/job';
import type { Lot } from '../job/loads';
import type { Part } from '../trade/carcass/part';
import type { CopyName, DrawerPlace, PartName } from '../trade/carcass/part-name';
import { hasDrawer, thingsIn } from './bank-plan';
import type { Plan } from './plan';

/** A label: the drawer, or the shelf or tray, and what lives in it. */
export type Label = { readonly things: readonly Lot[] } & (
  | { readonly on: 'drawer'; readonly place: DrawerPlace }
  | { readonly on: 'part'; readonly name: PartName; readonly copy?: CopyName }
);

/** The labels of one bank, or of one case. */
export type LabelSet = { readonly id: string; readonly named: string; readonly labels: readonly Label[] };

/** Labels of a job: one for every drawer and every tray, and for each other shelf that something goes onto. */
export function labelsOf(plan: Pick<Plan, 'job' | 'banks' | 'parts'>): readonly LabelSet[] {
  const { job } = plan;
  const banks = [...plan.banks.values()].map(({ bank, fronts }): LabelSet => {
    const several = fronts.ok && fronts.value.columns.length > 1;
    const labels = fronts.ok
      ? fronts.value.columns.flatMap((column) =>
          column.heights.map((_, k): Label => {
            const no = k + 1;
            const place = { no, ...(several ? { column: column.no } : {}) };
            return { on: 'drawer', place, things: thingsIn(job, bank.id, { no, column: column.no }) };
          }),
        )
      : [];
    return { id: bank.id, named: bank.name ?? '', labels };
  });
  const cases = job.cases.map((c): LabelSet => {
    const own = plan.parts.filter((p) => p.of === c.id && p.name.role === 'inside');
    return { id: c.id, named: c.name, labels: own.flatMap((part) => onPart(job, part)) };
  });
  return [...banks, ...cases].filter(({ labels }) => labels.length > 0);
}

/** Every tray, whatever lies on it; of shelves those something goes onto. */
function onPart(job: Job, part: Part): readonly Label[] {
  const { name } = part;
  const isTray = name.role === 'inside' && name.kind === 'trays';
  return Array.from({ length: part.copies }, (_, k) => k + 1).flatMap((copy): readonly Label[] => {
    const things = job.things.filter((thing) => thing.part === part.id && (thing.piece ?? 1) === copy);
    if (!isTray && things.length === 0) return [];
    return [{ on: 'part', name, ...(part.copies > 1 ? { copy } : {}), things }];
  });
}

/** What goes nowhere yet: it has no label. */
export const withoutPlace = (job: Pick<Job, 'things' | 'banks'>): readonly Lot[] =>
  job.things.filter((thing) => thing.part === undefined && !hasDrawer(job, thing));
