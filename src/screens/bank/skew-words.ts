import { isNegative, type Length, negate } from '../../length/length';
import type { Tape } from '../../length/tape';
import type { Bank } from '../../trade/fronts/bank';
import { exactly as w } from '../shared/exact-words';
import { gapText } from './gap-words';

export const outOfSquare = 'Out of square';
export const heading = (by: Length): string => `Out of square by ${w(by)}`;
export const columns = ['What gives', 'Left', 'Right'] as const;
export const everyGap = 'every gap, tapering';
export const lastGap = 'the last gap alone';
export const planed = (no: number): string => `front ${no} planed to fit`;
export const ripTaller = (no: number, to: Length, planned: Length): string =>
  `To plane front ${no} to fit, rip it to ${w(to)} first, not ${w(planned)}.`;
export const high = (at: Length): string => `${w(at)} high`;

/** The last gap, or how far a covering front covers there. */
export function endText(gap: Length, fit: Bank['fit'], tape: Tape): string {
  if (fit === 'inset') return gapText(gap, tape);
  return isNegative(gap) ? `covers ${w(negate(gap))}` : `short by ${w(gap)}`;
}
