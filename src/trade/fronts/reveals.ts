import { equals, type Length, negate, times } from '../../length/length';
import { minus, plus, type Sum, sumOf } from '../sums/sum';
import type { Bank } from './bank';
import { usualBank } from './usual-bank';

/** Gaps round the fronts of a column; where a front covers the case a reveal is negative. Inches. */
export type Reveals = {
  readonly top: Length;
  readonly between: Length;
  readonly bottom: Length;
  /** Inset: at either side. Overlay: how far it covers there, positive. */
  readonly side: Length;
  /** Between two fronts over one partition. */
  readonly gap: Length;
  /** The end reveals stand as they are; what is left over is shared between the fronts alone. */
  readonly endsHeld: boolean;
};

/**
 * The reveals of a bank, the usual ones where none is said: inset all alike; overlay covering half an inch.
 *
 * @example revealsOf(newBank('b')).top // 3/32
 */
export function revealsOf(bank: Bank): Reveals {
  const over = bank.fit === 'overlay';
  const between = bank.between ?? (over ? usualBank(bank).overlayGap : usualBank(bank).reveal);
  const end = (said: Length | undefined) =>
    over ? negate(said ?? usualBank(bank).overlay) : (said ?? between);
  const [top, bottom] = [end(bank.top), end(bank.bottom)];
  return {
    top,
    between,
    bottom,
    side: bank.side ?? (over ? usualBank(bank).overlay : between),
    gap: bank.gap ?? between,
    endsHeld: over || !equals(top, between) || !equals(bottom, between),
  };
}

/**
 * What the fronts of a column come to together: S = O - r_t - r_b - (n-1) r_m.
 *
 * @param opening clear height, inches; @param count fronts, >= 1
 * @returns inches with its sum; not positive when the reveals fill the opening
 * @example frontsTotal(given('opening', inches(469n, 16n)), 5, reveals).value // 28 27/32
 */
export function frontsTotal(opening: Sum, count: number, reveals: Reveals): Sum {
  const { top, between, bottom } = reveals;
  const line = (at: 'top' | 'bottom', x: Length) =>
    x.s < 0n ? plus({ code: 'cover', at }, negate(x)) : minus({ code: 'reveal', at }, x);
  return sumOf(
    plus('opening', opening.value, opening),
    line('top', top),
    line('bottom', bottom),
    minus({ code: 'gaps', count: count - 1 }, times(between, BigInt(count - 1))),
  );
}
