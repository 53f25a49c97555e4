import { equals, isNegative, isZero, type Length, negate } from '../../length/length';
import { fineOf, markAt, type Tape } from '../../length/tape';
import { remainder, writeLength } from '../../length/write';
import { gapWarning } from '../../trade/fronts/fitted';
import type { Pile } from '../../trade/stacks/pile';
import { unitInHand } from '../../ui/unit-in-hand';
import { exactly as w } from '../shared/exact-words';

/** A gap in words: at the sixty-fourth with what is left, tight or wide, or by how much it binds. */
export function gapText(each: Length, tape: Tape): string {
  if (isNegative(each)) return `binds by ${w(negate(each))}`;
  const mark = markAt(each, fineOf(tape));
  const left = isZero(mark.rest) ? undefined : remainder(mark.rest, tape);
  const warning = gapWarning(each, unitInHand());
  const judged = warning?.code === 'tight' ? ', tight' : warning?.code === 'wide' ? ', wide' : '';
  return `${writeLength(mark.value, tape)}${left?.by ? ` ${left.word} by ${left.by}` : ''}${judged}`;
}

/** A gap at both sides, apart where they differ. */
export const sidesText = (left: Length, right: Length, tape: Tape): string =>
  equals(left, right) ? gapText(left, tape) : `left ${gapText(left, tape)}; right ${gapText(right, tape)}`;

/** A pile in words, larger first: `1/16 and 1/64`. */
export function pileOf(pile: Pile): string {
  const pieces = pile.chosen.map(({ size, count }) => (count > 1 ? `${count} × ${w(size)}` : w(size)));
  const short = isZero(pile.short) ? '' : `, ${w(pile.short)} short`;
  return pieces.length === 0 ? `none thin enough${short}` : `${pieces.join(' and ')}${short}`;
}

export type Piles = { readonly left: Pile; readonly right?: Pile };

/** Piles of one gap, left and right apart where they differ. */
export const pileText = ({ left, right }: Piles): string =>
  right && pileOf(right) !== pileOf(left) ? `left ${pileOf(left)}; right ${pileOf(right)}` : pileOf(left);
