import { absolute, atMost, inches, type Length, subtract } from '../../length/length';

/** A mark kept farther than this from the drawing is of another case: the case was changed since. Our own. */
export const farthestKept = inches(1n, 8n);

/** How far a kept mark is off the drawing, where it is not of another case. Inches, any sign. */
export function keptOff(exact: Length, kept: Length | undefined): Length | undefined {
  const by = kept && subtract(kept, exact);
  return by && atMost(absolute(by), farthestKept) ? by : undefined;
}
