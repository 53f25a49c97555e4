import type { Ratio } from '../../length/length';

/** The unit of a blank of pounds. */
export const pounds = 'lb';

/** A number of pounds, to the nearest tenth. */
export const lb = (x: Ratio): string => `${tenths(x)} lb`;

/** A number to the nearest tenth. */
export function tenths(x: Ratio): string {
  const own = x.mul(10n).round();
  return `${own.s < 0n ? '-' : ''}${own.n / 10n}${own.n % 10n ? `.${own.n % 10n}` : ''}`;
}
