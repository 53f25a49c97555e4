import { absolute, inches, type Length, less } from '../../length/length';

/**
 * How the second wall of a groove is set where it has a figure of its own: best by a spacer as wide as groove less
 * cutter. The shown mark alone, without what it leaves, makes the groove `off` too wide. Inches.
 */
export type SecondMark = { readonly spacer: Length; readonly off: Length };

/** Off by no more than this, a groove still fits: common practice, no source. */
const fitOff = inches(3n, 1000n);

/** Whether the bare mark of the second wall spoils the fit. @example spoilsFit({ spacer, off: inches(-7n, 800n) }) // true */
export const spoilsFit = ({ off }: SecondMark): boolean => less(fitOff, absolute(off));
