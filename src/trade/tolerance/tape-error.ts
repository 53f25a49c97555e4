import {
  add,
  fromMillimetres,
  isNegative,
  type Length,
  type Ratio,
  ratio,
  times,
  toMillimetres,
} from '../../length/length';
import { toWhole } from '../../length/round';

type TapeClass = 'I' | 'II' | 'III';

/**
 * Greatest error a tape of a class may have over a reach: a + b L millimetres, L rounded up to the next whole metre,
 * and c more when one end is the hook or the end of the tape.
 * Source: The Measuring Instruments Regulations 2016 (UK SI 2016/1153), schedule 1I, material measures of length:
 * I 0.1 + 0.1 L, II 0.3 + 0.2 L, III 0.6 + 0.4 L; end surface 0.1, 0.2, 0.3.
 */
const classes: Record<TapeClass, readonly [a: bigint, b: bigint, c: bigint]> = {
  I: [1n, 1n, 1n],
  II: [3n, 2n, 2n],
  III: [6n, 4n, 3n],
};

/**
 * What a tape of its class may add, or take, over a reach.
 *
 * @param reach inches, >= 0
 * @param hook whether the measure starts at the tape's hook
 * @returns inches
 * @throws RangeError if the reach is negative: a mistake in the program
 * @example tapeError('II', fromMillimetres(2440n), true) // 1.1 mm: Example 3 of tolerance
 */
export function tapeError(tape: TapeClass, reach: Length, hook: boolean): Length {
  if (isNegative(reach)) throw new RangeError('tapeError: reach must be >= 0');
  const [a, b, c] = classes[tape];
  const metres = toWhole(toMillimetres(reach).div(1000n) as Ratio, 'ceil');
  const allowed = times(fromMillimetres(1n), ratio(a + b * metres, 10n));
  return hook ? add(allowed, times(fromMillimetres(1n), ratio(c, 10n))) : allowed;
}
