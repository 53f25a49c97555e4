import { fromMillimetres, type Length } from '../../length/length';
import { roundTo } from '../../length/round';
import { writeDecimal, writeLength, writeMillimetres } from '../../length/write';

/** A length in a sentence: exact where a tape or a rule could show it, else thousandths. */
export const exactly = (x: Length): string => (x.d > 128n ? writeDecimal(x) : writeLength(x));

const hundredth = fromMillimetres(1n, 100n);

/** The same, and millimetres for what comes from them. */
export const exactlyOrMetric = (x: Length): string =>
  x.d % 127n === 0n ? writeMillimetres(roundTo(x, hundredth, 'halfExpand').value) : exactly(x);
