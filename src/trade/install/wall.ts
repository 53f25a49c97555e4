import { half, inches, isPositive, type Length, subtract } from '../../length/length';

/** Least wood beside a screw driven into an edge or an end. Common practice, no source. */
export const leastWall = inches(1n, 4n);

/** Wood left at each side of a screw in the middle of an edge, and by how much that is too little. Inches. */
export type ScrewWall = { readonly left: Length; readonly short?: Length };

/**
 * What a screw leaves beside it in the edge or end it is driven into.
 *
 * @param part how thick it is; @param shank of the screw; @param least that is asked for; inches
 * @example screwWall(inches(5n, 8n), shank, leastWall).short // .0195 with number 8
 */
export function screwWall(part: Length, shank: Length, least: Length): ScrewWall {
  const left = half(subtract(part, shank));
  const short = subtract(least, left);
  return isPositive(short) ? { left, short } : { left };
}
