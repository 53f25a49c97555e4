import { add, inches, type Length } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Units } from '../../length/units';

/** A blade stands this far through what it parts. Common practice, no source. Inches. */
const through = inches(1n, 8n);

type Parted = { readonly thickness?: Length | undefined; readonly units?: Units | undefined };

/**
 * How far a blade stands to part a piece; in a metric shop 3 mm through it. Inches.
 *
 * @example throughOf({ thickness: inches(3n, 4n) }) // 7/8
 */
export const throughOf = ({ thickness, units }: Parted): Length | undefined =>
  thickness && add(thickness, figureIn(units, through));
