import { err, ok, type Result } from '../length/result';
import type { Card } from '../trade/setups/checklist';
import type { Operation } from '../trade/setups/operation';
import { blocks, type Checklist } from './checklist';
import { changeFor } from './run';

/** A cut that can be made now, and the card it is made at. */
type Offer = { readonly op: Operation; readonly card: Card };

/** Why a cut cannot be made now. */
export type Held =
  | { readonly by: 'what-comes-first'; readonly op: Operation }
  /** The stack, bit or height of this operation is not set yet. */
  | { readonly by: 'change'; readonly to: Operation }
  | { readonly by: 'ring' }
  | { readonly by: 'too-many' };

/** A cut that is not made yet, by its id: how it is offered, or what holds it back. */
type Offers = (op: string) => Result<Offer, Held>;

/**
 * What the machine's screen offers and what it holds back, for any screen that ticks the same cuts. A change of stack,
 * bit or height comes before all else there.
 *
 * @example offersOf(list)('cut/shellcase/shelves~1~only/left')
 */
export function offersOf(list: Checklist): Offers {
  const cards = new Map(list.cards.flatMap((card) => card.operations.map((op) => [op.id, card] as const)));
  return (id) => {
    const op = list.plan.byId.get(id);
    const card = cards.get(id);
    if (!op || !card) return err({ by: list.plan.over === undefined ? 'ring' : 'too-many' });
    const change = changeFor(list, card);
    if (change) return err({ by: 'change', to: change.to });
    return blocks(list, op).length > 0 ? err({ by: 'what-comes-first', op }) : ok({ op, card });
  };
}
