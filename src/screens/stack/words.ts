import { isNegative, isZero, type Length } from '../../length/length';
import { assertNever } from '../../length/result';
import { isTapeFraction, writeDecimal, writeLength } from '../../length/write';
import type { Piece } from '../../trade/stacks/pieces';
import type { StackError } from '../../trade/stacks/stack';
import type { Correction } from '../../trade/stacks/test-cut';

/** A piece as it is marked: a chipper in its fraction, a shim in thousandths. */
export const sizeWords = (size: Length): string =>
  isTapeFraction(size) ? writeLength(size) : writeDecimal(size);

export const pieceWords = ({ size, count, kind }: Piece): string =>
  `${count} × ${sizeWords(size)} ${kind}${count === 1 ? '' : 's'}`;

export const errorWords = (error: Length): string => {
  if (isZero(error)) return 'exact';
  const by = writeDecimal(error).replace('-', '');
  return `${by === '0.000' ? 'under 0.001' : by} ${isNegative(error) ? 'narrow' : 'wide'}`;
};

/** Why there is no stack, and what would make one. */
export function stackErrorText(error: StackError): string {
  switch (error.code) {
    case 'no-pieces':
      return 'No chippers or shims are on the list. Say what lies in the box.';
    case 'piece-not-positive':
    case 'not-a-count':
      return 'A piece on the list has no size, or a count that is not whole.';
    case 'too-many-ways':
      return 'There are too many pieces on the list to try them all. Take off what this cut cannot want.';
    case 'not-positive':
      return 'A stack has a width, and its outers cut something.';
    case 'margin-negative':
      return 'The margin is less than nothing.';
    case 'single-blade':
      return `The two outers alone cut ${writeDecimal(error.least)}. Take a single blade, or the router.`;
    case 'over-arbor':
      return `Past what the arbor carries, by ${writeDecimal(error.over)}. Cut it in two passes.`;
    case 'none-fits':
      return `No set makes it: the nearest is ${errorWords(error.by)}. One piece of ${writeDecimal(error.fix.piece)} more would.`;
    default:
      return assertNever(error);
  }
}

const directions: Record<Correction['direction'], string> = {
  'leave-it': 'Leave it: it is right.',
  'add-to-stack': 'Add to the stack',
  'take-from-stack': 'Take from the stack',
  'away-from-blade': 'Move the fence away from the blade',
  'toward-blade': 'Move the fence toward the blade',
  'take-more': 'Take more off each side',
  'take-less': 'Take less off each side',
  deeper: 'Go deeper',
  shallower: 'Go shallower',
};

/** What to do after a test cut, and by how much. */
export function correctionText({ by, direction, suspicion }: Correction): string {
  const how =
    direction === 'leave-it' ? directions[direction] : `${directions[direction]}: ${writeDecimal(by)}.`;
  return suspicion
    ? `${how} So far off that a chipper is missing, or the sheet is another lot: check the stack.`
    : how;
}
