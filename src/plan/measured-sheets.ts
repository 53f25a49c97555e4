import type { Job, Stock } from '../job/job';
import { type Length, longest, shortest, subtract } from '../length/length';
import { writeDecimal } from '../length/write';

export type Sheet = {
  readonly id: string;
  readonly name: string;
  readonly thickest: Length;
  readonly thinnest: Length;
  readonly spread: Length;
  /** In a line: `0.709 to 0.712, 4 readings`. */
  readonly says: string;
};

/**
 * The job's sheets that have been measured. A thickness is a set of readings: the greatest for the stack, the least
 * for the glue line.
 */
export const sheetsOf = (job: Job | undefined): readonly Sheet[] => (job?.stock ?? []).flatMap(sheetOf);

export function sheetOf(stock: Stock): readonly Sheet[] {
  const [first, ...rest] = stock.readings;
  if (!first) return [];
  const thickest = longest(first, ...rest);
  const thinnest = shortest(first, ...rest);
  const n = stock.readings.length;
  const range = n === 1 ? writeDecimal(first) : `${writeDecimal(thinnest)} to ${writeDecimal(thickest)}`;
  const says = `${range}, ${n === 1 ? 'one reading' : `${n} readings`}`;
  return [
    {
      id: stock.id,
      name: stock.name || 'Sheet',
      thickest,
      thinnest,
      spread: subtract(thickest, thinnest),
      says,
    },
  ];
}
