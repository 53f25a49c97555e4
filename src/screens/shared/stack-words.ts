import { isNegative, isZero, type Length } from '../../length/length';
import { assertNever } from '../../length/result';
import { isTapeFraction } from '../../length/write';
import type { Piece } from '../../trade/stacks/pieces';
import type { PileError } from '../../trade/stacks/pile';
import type { StackError } from '../../trade/stacks/stack';
import type { Correction } from '../../trade/stacks/test-cut';
import { wordFor } from './counted';
import { closely, exactly } from './exact-words';

/** Asked once, before a stack is built. */
export const askSet = {
  title: 'What lies in the box?',
  how: 'You are asked once. Tap in the outers and chippers; enter shims as thick as they measure.',
  lacks: 'A stack needs at least the outers and one chipper or shim.',
  done: 'That is all of it',
  noArbor:
    'The saw’s manual says what its arbor carries. Until you enter it here, no stack counts as too wide.',
} as const;

export const askShims = {
  title: 'Shims in the drawer',
  how: 'No shims entered yet. Enter the ones in the drawer: how thick each measures, and how many.',
  beside: '; no shims entered yet, see Shop figures',
  link: 'Enter the shims in the drawer',
} as const;

/** A piece as it is marked: a chipper in its fraction, a shim in thousandths. */
export const sizeWords = (size: Length): string => (isTapeFraction(size) ? exactly(size) : closely(size));

export const pieceWords = ({ size, count, kind }: Piece): string =>
  `${count}\u00a0×\u00a0${sizeWords(size)} ${kind === 'chipper' ? wordFor(count, 'chipper', 'chippers') : wordFor(count, 'shim', 'shims')}`;

export const errorWords = (error: Length): string => {
  if (isZero(error)) return 'exact';
  const by = closely(error).replace('-', '');
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
      return 'There are too many pieces on the list to try them all. Take off what this cut cannot use.';
    case 'not-positive':
      return 'A stack has a width, and its outers cut something.';
    case 'margin-negative':
      return 'The margin is below 0.';
    case 'single-blade':
      return `The two outers alone cut ${closely(error.least)}. Take a single blade, or the router.`;
    case 'over-arbor':
      return `Past what the arbor carries, by ${closely(error.over)}. Cut it in two passes.`;
    case 'none-fits':
      return `No set makes it: the nearest is ${errorWords(error.by)}. One piece of ${closely(error.fix.piece)} more would.`;
    default:
      return assertNever(error);
  }
}

/** Why there is no pile of shims for a gap. */
export function pileErrorText(error: PileError): string {
  switch (error.code) {
    case 'no-pieces':
      return 'No pile yet: no shims entered.';
    case 'piece-not-positive':
    case 'not-a-count':
      return 'A shim on the list has no thickness, or a count that is not whole.';
    case 'too-many-ways':
      return 'There are too many shims on the list to try them all. Take off what this gap cannot use.';
    case 'gap-negative':
      return 'A gap is 0 or more.';
    case 'tolerance-negative':
      return 'A tolerance is 0 or more.';
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
  const how = direction === 'leave-it' ? directions[direction] : `${directions[direction]}: ${closely(by)}.`;
  return suspicion
    ? `${how} So far off that a chipper is missing, or the sheet is another lot: check the stack.`
    : how;
}
