import { absolute, fromMillimetres, inches, isZero, type Length, subtract } from '../../length/length';
import { assertNever } from '../../length/result';
import { roundTo } from '../../length/round';
import type { TapesError, TwoTapes } from '../../trade/tolerance/two-tapes';
import { unitInHand } from '../../ui/unit-in-hand';
import { closely, exactly } from '../shared/exact-words';

export const howTo =
  'Two tapes in one job? Read a short board and a long one with both, and it is said here how far they part.';

type Reach = { readonly reach: Length; readonly ofJob: boolean };

/** How far two tapes part, how good that is, and what to do. */
export function tapesText(tapes: TwoTapes, at: Reach): string {
  const { doubt, limit, verdict } = tapes;
  const good = `the readings are good to ${closely(upward(doubt))}`;
  switch (verdict) {
    case 'apart':
      return `${parting(tapes, at)}: more than ${exactly(limit)}. One tape for all.`;
    case 'unsure':
      return `${parting(tapes, at)}, but ${good}: it may be more than ${exactly(limit)}. Read longer boards to finer marks, or use one tape for all.`;
    case 'alike':
      return `${parting(tapes, at)}; ${good}. No more than ${exactly(limit)}: either tape will do.`;
    default:
      return assertNever(verdict);
  }
}

function parting({ apart, offset }: TwoTapes, { reach, ofJob }: Reach): string {
  const where = `at ${closely(reach)}${ofJob ? ', the longest piece of this job' : ''}`;
  const far = isZero(apart) ? 'The tapes read alike' : `The tapes part by ${closely(absolute(apart))}`;
  return `${far} ${where}, and by ${closely(absolute(offset))} at the hook`;
}

type Boards = { readonly short: Length; readonly long: Length; readonly reach: Length };

/** Why the four readings say nothing of the tapes. */
export function tapesWrong(error: TapesError, { short, long, reach }: Boards): string {
  switch (error.code) {
    case 'boards-alike':
      return isZero(subtract(short, long))
        ? `Both boards are ${closely(short)} by your tape. Take a long one of about ${closely(reach)}.`
        : `The long board is ${closely(subtract(short, long))} shorter than the short one. Take one of about ${closely(reach)}.`;
    case 'misread':
      return `From the short board to the long one the tapes part by ${closely(error.by)} more: that is no tape, but a slip. Read all four again.`;
    default:
      return assertNever(error);
  }
}

/** A doubt is never said smaller than it is. */
const upward = (x: Length): Length =>
  roundTo(x, unitInHand() === 'mm' ? fromMillimetres(1n, 100n) : inches(1n, 1000n), 'ceil').value;
