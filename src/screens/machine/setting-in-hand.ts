import { blocks, type Checklist, isDone } from '../../plan/checklist';
import { runOf } from '../../plan/run';
import type { Blocked, Card } from '../../trade/setups/checklist';
import type { Operation } from '../../trade/setups/operation';

/**
 * The card to go to after one: the next of its run with something that can be done, else the next in order, else the
 * first; where nothing can be done anywhere, the same with work left.
 */
export function nextCard(list: Checklist, card: Card): Card | undefined {
  const after = [...runOf(list, card), ...list.cards.slice(list.cards.indexOf(card) + 1), ...list.cards];
  const open = after.filter((c) => c !== card && !isDone(list, c));
  return open.find((c) => canCut(list, c)) ?? open[0];
}

/** Whether a piece of a card waits for nothing but its test cut: no stack is built before that. */
const canCut = (list: Checklist, { operations }: Card): boolean =>
  operations.some(
    (op) =>
      op.what !== 'test' &&
      !list.doing.done(op.id) &&
      blocks(list, op).every((block) => block.by === 'operation' && block.op.what === 'test'),
  );

/** What a card waits for that is done away from the machine; nothing while anything can be done at one. */
export function waitsFor(list: Checklist, card: Card): Waits | undefined {
  if (list.cards.some((c) => canCut(list, c))) return undefined;
  const held = card.operations.find((op) => !list.doing.done(op.id));
  const by = held && blocks(list, held).find(isAway);
  return held && by && { op: held, by };
}

/** The operation that waits, and for what. */
type Waits = { readonly op: Operation; readonly by: Away };
type Away = Extract<Blocked, { readonly by: 'opening' | 'stock' | 'feet' }>;

const isAway = (block: Blocked): block is Away =>
  block.by === 'opening' || block.by === 'stock' || block.by === 'feet';

/** The first operation of a card that can be done now. */
export const readyOn = (list: Checklist, card: Card): Operation | undefined =>
  card.operations.find((op) => !list.doing.done(op.id) && blocks(list, op).length === 0);

/** The piece whose further figures are shown: the one to be cut; while a test cut comes first, the first grooved. */
export function figuresOf(list: Checklist, card: Card): Operation | undefined {
  const ready = readyOn(list, card);
  return ready?.groove ? ready : card.operations.find((op) => op.groove);
}
