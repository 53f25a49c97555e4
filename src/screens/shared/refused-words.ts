import { isPositive, type Length, less, type Ratio, ratio, subtract, zero } from '../../length/length';
import { exactly as w } from './exact-words';
import { inUnit, tenths, weight } from './pounds';

// Why a figure of a blank cannot be, by how much, and what would fit; nothing where it can. Limits that are of no
// equation are common practice, no source.

/** A length that must be. */
export const lengthRefused = (x: Length): string | undefined =>
  isPositive(x) ? undefined : '0 cannot be: any length over 0 fits.';

/** A place on something so long. @param what it lies on, as the sentence has it */
export const placeRefused =
  (long: Length, what: string) =>
  (x: Length): string | undefined =>
    less(long, x)
      ? `That is ${w(subtract(x, long))} past ${what}: ${w(zero)} to ${w(long)} fits.`
      : undefined;

/** The heaviest single thing a hand would key. Pounds. */
const heaviest = ratio(2000n);

export function weightRefused(x: Ratio): string | undefined {
  if (x.n === 0n) return '0 cannot be: any weight over 0 fits. What is not weighed stays empty.';
  return overWeight(x);
}

/** What may weigh nothing. */
export const overWeight = (x: Ratio): string | undefined =>
  heaviest.lt(x)
    ? `That is ${weight(x.sub(heaviest) as Ratio)} over the ${weight(heaviest)} it can be. Is it in another unit?`
    : undefined;

/** The thinnest veneer is over the least, three inches of the heaviest wood under the most. Pounds a square foot. */
const foot = { least: ratio(1n, 10n), most: ratio(30n) };

export const footRefused = (x: Ratio): string | undefined => outside(x, foot, (y) => inUnit('foot', y));

/** From the softest pressed board to the stiffest wood there is. Millions of pounds a square inch. */
const stiff = { least: ratio(1n, 10n), most: ratio(4n) };

export const stiffRefused = (x: Ratio): string | undefined => outside(x, stiff, (y) => inUnit('stiff', y));

type Limits = { readonly least: Ratio; readonly most: Ratio };

function outside(x: Ratio, { least, most }: Limits, said: (x: Ratio) => string): string | undefined {
  const fits = `${said(least)} to ${said(most)} fits.`;
  if (x.lt(least)) return `That is ${said(least.sub(x) as Ratio)} too little: ${fits}`;
  return most.lt(x) ? `That is ${said(x.sub(most) as Ratio)} too much: ${fits}` : undefined;
}

/** A whole number, from 1 up where nothing else is said. @param of what is counted, as the sentence has it */
export const countRefused =
  (most: number, of: string, least: 0 | 1 = 1) =>
  (n: number): string | undefined => {
    const fits = `${least} to ${most} ${of} fits.`;
    if (n < least) return `0 cannot be: ${fits}`;
    return n > most ? `${n} is ${n - most} more than there can be: ${fits}` : undefined;
  };

const halfTurn = ratio(180n);

export const turnRefused = (x: Ratio): string | undefined =>
  halfTurn.lt(x)
    ? `That is ${tenths(x.sub(halfTurn) as Ratio)}° past half a turn: 0 to 180 fits.`
    : undefined;
