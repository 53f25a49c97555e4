import { equals, type Length } from '../../length/length';
import type { Operation } from './operation';

/** A figure that is not what it was. Inches. */
export type Change = { readonly op: Operation; readonly was: Length; readonly now: Length };

/**
 * Pieces already cut whose figure has since changed: what the tick kept beside what it would be now. They are named,
 * never rewritten.
 *
 * @param cutTo the figure a tick kept, inches; nothing when not ticked
 */
export const noLongerFit = (
  operations: readonly Operation[],
  cutTo: (op: string) => Length | undefined,
): readonly Change[] =>
  operations.flatMap((op) => {
    const was = cutTo(op.id);
    return was && sized(op) && !equals(was, op.figure) ? [{ op, was, now: op.figure }] : [];
  });

/** What is not cut yet and would change: the figure it stands at, and the one it would have. */
export function wouldChange(
  before: readonly Operation[],
  after: readonly Operation[],
  done: (op: string) => boolean,
): readonly Change[] {
  const was = new Map(before.map((op) => [op.id, op]));
  return after.flatMap((op) => {
    const old = was.get(op.id);
    return old && !done(op.id) && sized(op) && !equals(old.figure, op.figure)
      ? [{ op, was: old.figure, now: op.figure }]
      : [];
  });
}

/** Test cuts and steps at the bench have no figure to compare. */
const sized = (op: Operation): boolean => op.what !== 'test' && op.setup.machine !== 'bench';
