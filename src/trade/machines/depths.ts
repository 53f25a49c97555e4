import {
  fromMillimetres,
  howMany,
  inches,
  isPositive,
  type Length,
  over,
  shortest,
} from '../../length/length';
import { toWhole } from '../../length/round';
import type { Units } from '../../length/units';

/** Overlap of passes when the shop has not said: common practice 1/16 or 1.5 mm, no source. */
export const usualOverlap = { in: inches(1n, 16n), mm: fromMillimetres(3n, 2n) };

/** Most a router takes at a pass, usual where not said. Source: two router manuals, 1/8 a pass; 3 mm, none. */
export const usualPass: Readonly<Record<Units, Length>> = { in: inches(1n, 8n), mm: fromMillimetres(3n) };
/** Never more at a pass, whatever is said. Common practice, no source. */
const mostPass: Readonly<Record<Units, Length>> = { in: inches(1n, 4n), mm: fromMillimetres(6n) };

/**
 * A groove deeper than a router takes at once: so many equal passes.
 *
 * @param depth inches, > 0; @param pass most at a pass, inches, > 0; usual where not said; @param units of the job
 * @example depthPasses(inches(11n, 32n), inches(1n, 8n)) // 3, each 11/96: Example 6 of machines
 */
export function depthPasses(
  depth: Length,
  pass?: Length,
  units: Units = 'in',
): { readonly count: number; readonly each: Length } {
  const most = pass && isPositive(pass) ? shortest(pass, mostPass[units]) : usualPass[units];
  const count = toWhole(howMany(depth, most), 'ceil');
  const n = count > 1n ? count : 1n;
  return { count: Number(n), each: over(depth, n) };
}
