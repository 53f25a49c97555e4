import { equals } from '../../length/length';
import { blocks, type Checklist, isDone } from '../../plan/checklist';
import { runOf } from '../../plan/run';
import type { Card } from '../../trade/setups/checklist';
import { isStep, type Operation } from '../../trade/setups/operation';
import * as words from './words';

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

/** Names of the stocks a stack is built for: a dado fits its own sheet, whatever it is cut in. */
export const stocksFitted = (list: Checklist, card: Card): readonly string[] => {
  const names = card.operations.flatMap(
    (op) => list.plan.job.stock.find((s) => s.id === op.fits)?.name ?? [],
  );
  return names[0] ? [...new Set(names)] : [];
};

/** What a piece that is cut was cut to, where that is not the figure it wants now. */
export function cutOtherwise(list: Checklist, op: Operation): string {
  const was = list.cutTo(op.id)?.figure;
  if (!was || equals(was, op.figure) || op.what === 'test' || isStep(op)) return '';
  return words.cutAt(was, op.figure, list.plan.job.tape);
}
