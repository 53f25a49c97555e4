import { equals, type Length } from '../../length/length';
import type { Operation } from './operation';

/** A figure that is not what it was: where it is cut, or how wide. Inches. */
export type Change = {
  readonly op: Operation;
  readonly was: Length;
  readonly now: Length;
  readonly width?: boolean;
};

/** What a tick keeps: the figure it was cut to, and how wide where something stands in it. Inches. */
export type CutTo = (
  op: string,
) => { readonly figure: Length; readonly width?: Length | undefined } | undefined;

/**
 * Pieces already cut whose figure, or whose groove's width, has since changed: what the tick kept beside what it would
 * be now. They are named, never rewritten.
 *
 * @param cutTo what a tick kept; nothing when not ticked
 */
export const noLongerFit = (operations: readonly Operation[], cutTo: CutTo): readonly Change[] =>
  operations.flatMap((op) => {
    const was = cutTo(op.id);
    if (!was || !sized(op)) return [];
    if (!equals(was.figure, op.figure)) return [{ op, was: was.figure, now: op.figure }];
    return was.width && op.width && !equals(was.width, op.width)
      ? [{ op, was: was.width, now: op.width, width: true }]
      : [];
  });

/** What is not cut yet and would change: the figure or the stack it stands at, and the one it would have. */
export function wouldChange(
  before: readonly Operation[],
  after: readonly Operation[],
  done: (op: string) => boolean,
): readonly Change[] {
  const was = new Map(before.map((op) => [op.id, op]));
  return after.flatMap((op) => {
    const old = was.get(op.id);
    if (!old || done(op.id) || !sized(op)) return [];
    const moved = equals(old.figure, op.figure) ? [] : [{ op, was: old.figure, now: op.figure }];
    const wider =
      old.width && op.width && !equals(old.width, op.width)
        ? [{ op, was: old.width, now: op.width, width: true }]
        : [];
    return [...moved, ...wider];
  });
}

/** Test cuts and steps at the bench have no figure to compare. */
const sized = (op: Operation): boolean => op.what !== 'test' && op.setup.machine !== 'bench';
