import { inches, type Length, type Ratio, ratio } from '../../../src/length/length';
import { roundTo } from '../../../src/length/round';

/** A number as it is written: `.00369`, `62`. */
export function n(text: string): Ratio {
  const [whole = '', places = ''] = text.split('.');
  return ratio(BigInt(`${whole}${places}`), 10n ** BigInt(places.length));
}

/** A year of the wood by its percents. */
export const year = (low: string, now: string, high: string) => ({ low: n(low), now: n(now), high: n(high) });

/** To thousandths, for a figure worked out by hand. */
export const thou = (x: Length | undefined): number | undefined =>
  x && Number(roundTo(x, inches(1n, 1000n), 'halfExpand').value.mul(1000n).n) * (x.s < 0n ? -1 : 1);
