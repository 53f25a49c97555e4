import { editJob, tickOf } from '../job/edits';
import type { Change } from '../job/entry';
import { machineAt } from '../trade/machines/machines';
import { jointOf } from '../trade/setups/changes';
import type { Card } from '../trade/setups/checklist';
import { idsOf, type Operation } from '../trade/setups/operation';
import type { Checklist } from './checklist';

/** A tick says as well what stands on the machine, where that was not known. One that is ticked is taken back. */
export function tickChanges(list: Checklist, card: Card, op: Operation): readonly Change[] {
  if (list.doing.done(op.id)) return idsOf(op).map((id) => ({ kind: 'untick', op: id }));
  return ticksOf(list, card, [op]);
}

/** Ticks of what is cut at one card at one go: of what is cut for several, the tick of each. */
export const ticksOf = (list: Checklist, card: Card, ops: readonly Operation[]): readonly Change[] => [
  ...ops.flatMap((op) => idsOf(op).flatMap((id) => tickOf(id, op.figure, jointOf(op)))),
  ...standChanges(list, card),
];

/**
 * That a card's cutter, height and figure stand on the machine. Work at the bench or by hand takes nothing off it, and
 * a circular saw keeps its own blade.
 */
export const standChanges = ({ plan }: Checklist, card: Card): readonly Change[] =>
  plan.job.standing === card.id || !stands(card) ? [] : editJob({ standing: card.id });

const stands = ({ operations: [op] }: Card): boolean =>
  op !== undefined &&
  op.setup.machine !== 'saw' &&
  op.setup.machine !== 'stick' &&
  !['none', 'tool'].includes(machineAt(op.setup.machine).cuts);
