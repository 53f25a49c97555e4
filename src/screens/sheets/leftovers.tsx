import type { PlanSheet } from '../../job/job';
import { leftoversOf } from '../../plan/breakdown';
import { offcutId } from '../../plan/offcut-id';
import type { Plan } from '../../plan/plan';
import { keepLeftover } from '../../plan/take-plan';
import type { SheetStock } from '../../trade/sheets/stock';
import type { Rect } from '../../trade/sheets/tree';
import { Chip } from '../../ui/button';
import { Icon } from '../../ui/icon';
import type { Bench } from '../bench';
import * as words from './words';

type LeftoversProps = {
  readonly bench: Pick<Bench, 'act'>;
  readonly plan: Plan;
  readonly sheet: PlanSheet;
  readonly stock: SheetStock | undefined;
  readonly done: (path: string) => boolean;
};

/** What a sheet has left so far, each to be kept as an offcut: a recut looks there first. */
export function Leftovers({ bench, plan, sheet, stock, done }: LeftoversProps) {
  const left = leftoversOf(sheet, done);
  const { tape } = plan.job;
  if (left.length === 0) return null;
  return (
    <section aria-label={words.leftOver}>
      <h2 class="sec pad-x">{words.leftOver}</h2>
      <ul>
        {left.map(({ path, size }) => {
          const id = offcutId(sheet.id, path);
          const kept = plan.job.offcuts.some((o) => o.id === id);
          const used = plan.job.sheets.some((s) => s.left === id && !s.gone);
          const own = alongGrain(size, sheet, stock);
          return (
            <li key={path} class="nextset ascut">
              <b class="grow">{words.sizeWords(own, tape)}</b>
              {kept || used ? (
                <span class="muted">
                  <Icon name="tick" /> {used ? words.inPlan : words.kept}
                </span>
              ) : (
                <Chip
                  label={words.keepOffcut}
                  onTap={() =>
                    void bench.act(words.offcutKept(words.sizeWords(own, tape)), keepLeftover(id, sheet, own))
                  }
                />
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
}

/** An offcut's length is its way along the face grain. */
const alongGrain = (size: Rect, sheet: PlanSheet, stock: SheetStock | undefined): Rect =>
  stock?.grain === 'wide' && !sheet.left ? { long: size.wide, wide: size.long } : size;
