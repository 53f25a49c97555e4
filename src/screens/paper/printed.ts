import { assertNever } from '../../length/result';
import { breakdownOf } from '../../plan/breakdown';
import { type Checklist, checklistOf, isDone, standingCard } from '../../plan/checklist';
import type { Plan } from '../../plan/plan';
import { runOf } from '../../plan/run';
import type { Reach } from '../../trade/machines/limits';
import type { Leaf } from '../../ui/paper/flow';
import type { Page, WidthOf } from '../../ui/paper/ink';
import type { Bench } from '../bench';
import { reachOf } from '../shared/shop-lists';
import { sheetsDone } from './list-words';
import { partPages } from './part-list';
import * as words from './print-words';
import { setupPages } from './setup-sheet';
import { sheetPages, sheetsOnPaper } from './sheet-list';

/** On what, and when, a list is printed. */
type On = { readonly day: string; readonly leaf: Leaf; readonly widthOf: WidthOf };

/** A list that may be printed: whether there is anything of it, what it leaves out, its pages one by one. */
export type Printed = {
  readonly empty: boolean;
  readonly notes: readonly string[];
  readonly pages: (on: On) => Iterable<Page>;
};

type Of = Pick<Bench, 'folded' | 'shop' | 'settings'>;

/** @param next of setups, only those of the build that comes next */
export function printedOf(bench: Of, plan: Plan, of: words.PrintId, next: boolean): Printed {
  const list = checklistOf(plan, bench.folded.value);
  switch (of) {
    case 'setups':
      return setups(list, reachOf(bench), next);
    case 'parts':
      return { empty: plan.parts.length === 0, notes: [], pages: (on) => partPages({ ...on, list }) };
    case 'sheets':
      return sheets(bench, plan);
    default:
      return assertNever(of);
  }
}

function setups(list: Checklist, reach: Reach, next: boolean): Printed {
  const done = list.cards.filter((card) => isDone(list, card)).length;
  const stand = standingCard(list);
  const some = next && stand ? new Set(runOf(list, stand)) : undefined;
  return {
    empty: done === list.cards.length,
    notes: done > 0 ? [words.leftOut(done)] : [],
    pages: (on) => setupPages({ ...on, list, reach, some }),
  };
}

function sheets({ folded, shop }: Of, plan: Plan): Printed {
  const of = { plan, folded: folded.value, found: breakdownOf(plan, shop.value, folded.value) };
  const { open, cut, missing } = sheetsOnPaper(of);
  return {
    empty: open === 0,
    notes: [...(cut > 0 ? [sheetsDone(cut)] : []), ...missing],
    pages: (on) => sheetPages({ ...on, ...of }),
  };
}
