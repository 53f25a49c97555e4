import type { Length } from '../../length/length';
import type { Tape } from '../../length/tape';
import { writeLength } from '../../length/write';
import type { Group } from '../../plan/checklist';
import { isStep, type Operation } from '../../trade/setups/operation';
import { buildWords, whatWords, whichWords } from './cut-words';
import { doneWord } from './done-words';
import { workWord } from './part-words';

/** A piece by its name, and which of its cuts this is. */
export const pieceName = (op: Operation, tape: Tape): string =>
  op.what === 'test'
    ? 'Test piece'
    : isStep(op) && op.what === 'marks'
      ? `${workWord(op.name)}, ${whichWords(op, tape)}`
      : workWord(op.name);

/**
 * What stands over the boxes of a group. A mark on the story stick has its figure in its name, and a part with one
 * mitred end that end.
 */
export function groupName({ name, pieces }: Group, tape: Tape): string {
  const op = pieces[0]?.op;
  if (op?.what === 'marks') return `${workWord(name)}, ${whichWords(op, tape)}`;
  const [end, other] = op?.which?.is === 'long-points' ? (op.which.ends ?? []) : [];
  return end && !other ? `${workWord(name)}, ${end} end` : workWord(name);
}
export const pieceTick = (op: Operation, tape: Tape): string =>
  `${workWord(op.name)}, ${whatWords(op, tape)}`;
export const cutAt = (was: Length, now: Length, tape: Tape): string =>
  `cut at ${writeLength(was, tape)}, but should now be ${writeLength(now, tape)}`;
/** What undo names. */
export const tickAct = (op: Operation, wasDone: boolean): string =>
  `${wasDone ? `Not ${lower(doneWord(op))}` : doneWord(op)}: ${workWord(op.name)}`;

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

export const setAct = (op: Operation, tape: Tape): string => `Set: ${buildWords(op.setup, tape)}`;
