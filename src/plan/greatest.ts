import type { Stock } from '../job/job';
import { type Length, longest } from '../length/length';

/** The greatest reading of a stock. @example greatestOf(stock) // .714 of .708 .714 .711 .709 */
export function greatestOf({ readings: [first, ...rest] }: Pick<Stock, 'readings'>): Length | undefined {
  return first && longest(first, ...rest);
}
