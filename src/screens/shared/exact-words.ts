import type { Length } from '../../length/length';
import { isTapeFraction, writeDecimals, writeLength } from '../../length/write';
import { tapeInHand } from '../../ui/unit-in-hand';

/** A length in a sentence, in the unit of the job: exact where a tape has it, else a decimal. */
export const exactly = (x: Length): string => writeLength(x, tapeInHand.value);

/** A length in a sentence as calipers read it: thousandths of an inch, hundredths of a millimetre. */
export const closely = (x: Length): string => writeDecimals(x, tapeInHand.value);

/** One that was worked out of others, never given: as a tape has it, else as calipers read it, in no other unit. */
export const reckoned = (x: Length): string => (isTapeFraction(x) ? exactly(x) : closely(x));
