import { inches, type Length } from '../../length/length';
import { roundTo } from '../../length/round';

/** Number of a wood screw. */
type Gauge = 6 | 8 | 10;

/** Least and greatest hole for the thread. Common practice, no source. */
const pilots: Record<Gauge, readonly [soft: Length, hard: Length]> = {
  6: [inches(3n, 32n), inches(3n, 32n)],
  8: [inches(7n, 64n), inches(1n, 8n)],
  10: [inches(9n, 64n), inches(9n, 64n)],
};

const sixtyFourth = inches(1n, 64n);

/**
 * How thick the shank of a wood screw is: .060 + .013 × its number. Inches. Source: the ASME standard of wood screws,
 * from memory.
 */
const shankOf = (gauge: Gauge): Length => inches(60n + 13n * BigInt(gauge), 1000n);

type ScrewHoles = {
  /** Shank. */
  readonly shank: Length;
  /** In the piece that takes the thread. */
  readonly pilot: Length;
  /** In the piece the screw goes through: the thread must not catch there, so that it draws up. */
  readonly clearance: Length;
};

/**
 * What is drilled for a wood screw: a pilot, nearer the larger in hardwood, and a clearance hole, the least 64th that
 * is not under the shank.
 *
 * @returns inches
 * @example screwHoles(8, 'hard') // pilot 1/8, clearance 11/64: Example 7 of install
 */
export function screwHoles(gauge: Gauge, wood: 'soft' | 'hard'): ScrewHoles {
  const shank = shankOf(gauge);
  const [soft, hard] = pilots[gauge];
  return {
    shank,
    pilot: wood === 'hard' ? hard : soft,
    clearance: roundTo(shank, sixtyFourth, 'ceil').value,
  };
}
