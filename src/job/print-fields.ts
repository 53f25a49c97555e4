import { length, oneOf } from './kinds';

/**
 * What is printed on, kept once for a job (`all`), for its lists (`lists`) and its labels (`labels`), and
 * what a print of a stick measured, kept by stick.
 */
export const printFields = {
  paper: oneOf('a4', 'letter', 'roll'),
  /** Of the roll, across; of a label, with how high it is, and what stands between two: side by side, and below. */
  wide: length,
  high: length,
  gap: length,
  down: length,
  /** White all round, and how far sheets lap. */
  margin: length,
  overlap: length,
  /** As read off the paper: the bar along the stick, the one across, and the whole stick. */
  bar: length,
  across: length,
  whole: length,
};
