import { blocks, type Checklist, isDone } from '../../plan/checklist';
import { runOf } from '../../plan/run';
import type { Card } from '../../trade/setups/checklist';
import type { Operation } from '../../trade/setups/operation';

/** The card to go to after one: the next of its run with work left, else the next in order, else the first with any. */
export const nextCard = (list: Checklist, card: Card): Card | undefined => {
  const open = (c: Card) => c !== card && !isDone(list, c);
  return (
    runOf(list, card).find(open) ??
    list.cards.slice(list.cards.indexOf(card) + 1).find(open) ??
    list.cards.find(open)
  );
};

/** The first operation of a card that can be done now. */
export const readyOn = (list: Checklist, card: Card): Operation | undefined =>
  card.operations.find((op) => !list.doing.done(op.id) && blocks(list, op).length === 0);

/** The piece whose further figures are shown: the one to be cut; while a test cut comes first, the first grooved. */
export function figuresOf(list: Checklist, card: Card): Operation | undefined {
  const ready = readyOn(list, card);
  return ready?.groove ? ready : card.operations.find((op) => op.groove);
}
