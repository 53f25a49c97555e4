import { type Checklist, checklistOf, isDone } from '../../plan/checklist';
import type { Plan } from '../../plan/plan';
import type { Reach } from '../../trade/machines/limits';
import type { Leaf } from '../../ui/paper/flow';
import type { Page, WidthOf } from '../../ui/paper/ink';
import type { Bench } from '../bench';
import { reachOf } from '../shared/shop-lists';
import * as words from './print-words';
import { setupPages } from './setup-sheet';

/** On what, and when, a list is printed. */
type On = { readonly day: string; readonly leaf: Leaf; readonly widthOf: WidthOf };

/** A list that may be printed: whether there is anything of it, what it leaves out, its pages one by one. */
export type Printed = {
  readonly empty: boolean;
  readonly notes: readonly string[];
  readonly pages: (on: On) => Iterable<Page>;
};

type Of = Pick<Bench, 'folded' | 'shop' | 'settings'>;

export function printedOf(bench: Of, plan: Plan, of: words.PrintId): Printed {
  const list = checklistOf(plan, bench.folded.value);
  switch (of) {
    case 'setups':
      return setups(list, reachOf(bench));
  }
}

function setups(list: Checklist, reach: Reach): Printed {
  const done = list.cards.filter((card) => isDone(list, card)).length;
  return {
    empty: done === list.cards.length,
    notes: done > 0 ? [words.leftOut(done)] : [],
    pages: (on) => setupPages({ ...on, list, reach }),
  };
}
