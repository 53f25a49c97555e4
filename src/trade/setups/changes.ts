import { equals, type Length } from '../../length/length';
import { isStep, type Operation } from './operation';

/** A figure that is not what it was: where it is cut, or how wide. Inches. */
export type Change = {
  readonly op: Operation;
  readonly was: Length;
  readonly now: Length;
  readonly width?: boolean;
  readonly depth?: boolean;
  readonly row?: 'first' | 'last';
};

/** How a joint is cut: how wide, where something stands in it, and how deep. Inches. */
type Joint = {
  readonly width?: Length | undefined;
  readonly depth?: Length | undefined;
  /** Of a row of holes its first and its last. */
  readonly first?: Length | undefined;
  readonly last?: Length | undefined;
};

/**
 * What a tick keeps: the figure it was cut to, and of a joint how it was cut; the size the piece came to, where that
 * was found to be another, and then the figure its machine stood at. Inches.
 */
export type CutTo = (
  op: string,
) => (Joint & { readonly figure: Length; readonly stood?: Length | undefined }) | undefined;

/** Joints alone have a depth to compare: what parts a piece stands as high as it likes. */
export const jointOf = (op: Operation): Joint => ({
  width: op.width,
  depth: op.what === 'rip' || op.what === 'length' ? undefined : op.setup.height,
  ...op.row,
});

/** A row that begins or ends elsewhere: its first hole where that has moved, else its last. */
function otherRow(op: Operation, was: Joint): readonly Change[] {
  const ends = (['first', 'last'] as const).flatMap((end): readonly Change[] => {
    const [old, now] = [was[end], op.row?.[end]];
    return old && now && !equals(old, now) ? [{ op, was: old, now, row: end }] : [];
  });
  return ends.slice(0, 1);
}

/** How a joint differs from what it was. */
function otherJoint(op: Operation, was: Joint): readonly Change[] {
  const now = jointOf(op);
  const wider =
    was.width && now.width && !equals(was.width, now.width)
      ? [{ op, was: was.width, now: now.width, width: true }]
      : [];
  const deeper =
    was.depth && now.depth && !equals(was.depth, now.depth)
      ? [{ op, was: was.depth, now: now.depth, depth: true }]
      : [];
  return [...wider, ...deeper, ...otherRow(op, was)];
}

/**
 * Pieces already cut whose figure, or whose joint's width or depth, has since changed: what the tick kept beside what
 * it would be now. They are named, never rewritten.
 *
 * @param cutTo what a tick kept; nothing when not ticked
 */
export const noLongerFit = (operations: readonly Operation[], cutTo: CutTo): readonly Change[] =>
  operations.flatMap((op) => {
    const was = cutTo(op.id);
    if (!was || !sized(op)) return [];
    if (!equals(was.figure, op.figure)) return [{ op, was: was.figure, now: op.figure }];
    return otherJoint(op, was).slice(0, 1);
  });

/**
 * What is not cut yet and would change: the figure, the stack or the height it stands at, and the one it would have.
 */
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
    return [...moved, ...otherJoint(op, jointOf(old))];
  });
}

/** Test cuts and steps at the bench have no figure to compare. */
const sized = (op: Operation): boolean => op.what !== 'test' && !isStep(op);
