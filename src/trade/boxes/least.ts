import { isPositive, type Length, longest, zero } from '../../length/length';
import type { Bank, BankStock } from '../fronts/bank';
import { revealsOf } from '../fronts/reveals';
import { frontNumbers } from '../fronts/stands';
import { usualBank } from '../fronts/usual-bank';
import { frontFor, type Thing } from './contents';
import { boxUpOf } from './drawers';

type Put = Thing & { readonly front?: number };

/**
 * The least height of each front for what goes into its drawer: contents first. Nothing where no tall thing is put.
 *
 * @param things what goes into the drawers of this bank; `front` from the top
 * @returns inches by front, from the top
 */
export function leastFronts(
  bank: Bank,
  things: readonly Put[],
  thick: (stock: BankStock) => Length | undefined,
): readonly (Length | undefined)[] {
  const reveals = revealsOf(bank);
  return frontNumbers(bank).map((no) => {
    const tall = things.flatMap((t) => (t.front === no && t.tall && isPositive(t.tall) ? [t.tall] : []));
    const [first, ...rest] = tall;
    return (
      first &&
      frontFor(longest(first, ...rest), {
        over: no === 1 ? reveals.top : reveals.between,
        underRail: no === 1,
        boxUp: boxUpOf(bank),
        grooveUp: bank.grooveUp ?? usualBank(bank).grooveUp,
        bottom: thick('boxBottom') ?? zero,
        play: bank.play ?? usualBank(bank).play,
      })
    );
  });
}
