import { editJob, tickOf } from '../../job/edits';
import type { Change } from '../../job/entry';
import { equals } from '../../length/length';
import { blocks, type Checklist, isDone } from '../../plan/checklist';
import { jointOf } from '../../trade/setups/changes';
import type { Card } from '../../trade/setups/checklist';
import { isStep, type Operation } from '../../trade/setups/operation';
import { whatWords } from '../shared/cut-words';
import * as words from './words';

/** The card to go to after one: the next in order with work left, else the first of any with work left. */
export const nextCard = (list: Checklist, card: Card): Card | undefined =>
  list.cards.slice(list.cards.indexOf(card) + 1).find((c) => !isDone(list, c)) ??
  list.cards.find((c) => c !== card && !isDone(list, c));

/** The first operation of a card that can be done now. */
export const readyOn = (list: Checklist, card: Card): Operation | undefined =>
  card.operations.find((op) => !list.doing.done(op.id) && blocks(list, op).length === 0);

/** Names of the stocks a stack is built for: a dado fits its own sheet, whatever it is cut in. */
export const stocksFitted = (list: Checklist, card: Card): readonly string[] => {
  const names = card.operations.flatMap(
    (op) => list.plan.job.stock.find((s) => s.id === op.fits)?.name ?? [],
  );
  return names[0] ? [...new Set(names)] : [];
};

/** A tick says as well what stands on the machine, where that was not known. */
export function tickChanges(list: Checklist, card: Card, op: Operation): readonly Change[] {
  if (list.doing.done(op.id)) return [{ kind: 'untick', op: op.id }];
  const stands = list.plan.job.standing === card.id ? [] : editJob({ standing: card.id });
  return [...tickOf(op.id, op.figure, jointOf(op)), ...stands];
}

/** What an operation waits for, in words. */
export function blockWords(list: Checklist, op: Operation): string {
  const each = blocks(list, op).map((b) => {
    switch (b.by) {
      case 'stock':
        return words.notMeasured(list.plan.job.stock.find((s) => s.id === b.stock)?.name);
      case 'layout':
        return words.noLayout;
      case 'opening':
        return words.openingNotMeasured(b.bank.endsWith('~back'));
      default:
        return words.otherFirst(b.op, list.plan.job.tape);
    }
  });
  return words.blockers(each);
}

/** What is said beside the pieces: what a cut one was cut to, what blocks the first, or how many are cut. */
export function pieceNote(list: Checklist, ops: readonly Operation[]): string {
  const off = ops.find((op) => {
    const was = list.cutTo(op.id)?.figure;
    return was && !equals(was, op.figure) && op.what !== 'test' && !isStep(op);
  });
  const was = off && list.cutTo(off.id)?.figure;
  if (was) return words.cutAt(was, off.figure, list.plan.job.tape);
  const blocked = ops.find((op) => blocks(list, op).length > 0);
  if (blocked) return words.blockedBy(blockWords(list, blocked));
  const ahead = ops.map((op) => list.plan.job.let[op.id]).find(Boolean);
  if (ahead) return ahead;
  const [first] = ops;
  const done = ops.filter((op) => list.doing.done(op.id)).length;
  if (done > 0 && done < ops.length) return words.someDone(done, ops.length);
  return first ? whatWords(first, list.plan.job.tape) : '';
}
