import type { Change } from '../../job/entry';
import type { Row } from '../../plan/board-layout';
import { checklistOf } from '../../plan/checklist';
import { offersOf } from '../../plan/offers';
import { ticksOf } from '../../plan/ticking';
import type { Bench } from '../bench';
import { heldWords } from '../shared/held-words';
import * as words from './stop-offers-words';

/** What may be ticked of a setting that is not cut in all its copies. */
export type StopOffer = {
  readonly box: string;
  /** The very ticks of the machine's screen, of every copy that may be cut; none where all that is open is blocked. */
  readonly ticks: readonly Change[];
  /** What the first that is blocked waits for, in the words of the machine's screen; empty where none is. */
  readonly held: string;
};

/** What may be ticked now of each setting: no copy that the machine's screen holds back. Nothing without a plan. */
export function stopOffers({
  plan,
  folded,
}: Pick<Bench, 'plan' | 'folded'>): ((row: Row) => StopOffer) | undefined {
  const made = plan.value;
  const list = made && checklistOf(made, folded.value);
  const offers = list && offersOf(list);
  if (!list || !offers) return undefined;
  return ({ setting, copies }) => {
    const open = copies.filter((c) => !c.done).map((c) => offers(c.op));
    const free = open.flatMap((o) => (o.ok ? [o.value] : []));
    const [held] = open.flatMap((o) => (o.ok ? [] : [o.error]));
    const [first] = free;
    return {
      box: words.box(setting, { free: free.length, open: open.length }),
      ticks: first
        ? ticksOf(
            list,
            first.card,
            free.map(({ op }) => op),
          )
        : [],
      held: held ? heldWords(list, held) : '',
    };
  };
}
