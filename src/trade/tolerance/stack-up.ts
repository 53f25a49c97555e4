import { rootTo } from '../../length/diagonal';
import { absolute, inches, type Length, type Ratio, ratio, sum } from '../../length/length';

type StackUp = {
  /** Every error at its worst and the same way: the sum. */
  readonly worst: Length;
  /**
   * Root of the sum of squares, to the nearest 1/10,000: what independent, centred errors come to. Cuts off one stop
   * share its error, so in the shop this is hopeful.
   */
  readonly likely: Length;
};

/**
 * What the tolerances of parts laid end to end add up to.
 *
 * @param tolerances plus or minus, inches, any number
 * @example stackUp(five, three, two and five thousandths) // worst 0.015, likely 0.0079: Example 1 of tolerance
 */
export function stackUp(tolerances: readonly Length[]): StackUp {
  const squares = tolerances.reduce((total, t) => total.add(t.mul(t)) as Ratio, ratio(0n));
  return {
    worst: sum(tolerances.map(absolute)),
    likely: rootTo(squares, inches(1n, 10000n)),
  };
}
