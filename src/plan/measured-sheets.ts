import type { Job, Stock } from '../job/job';
import { type Length, longest, shortest, subtract } from '../length/length';
import type { Tape } from '../length/tape';
import { writeDecimals } from '../length/write';

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
export const sheetsOf = (job: Job | undefined): readonly Sheet[] =>
  (job?.stock ?? []).flatMap((stock) => sheetOf(stock, job?.tape));

/** @param tape of the job: readings are said in its unit */
export function sheetOf(stock: Stock, tape: Tape = '1/32'): readonly Sheet[] {
  const read = (x: Length): string => writeDecimals(x, tape);
  const [first, ...rest] = stock.readings;
  if (!first) return [];
  const thickest = longest(first, ...rest);
  const thinnest = shortest(first, ...rest);
  const n = stock.readings.length;
  const range = n === 1 ? read(first) : `${read(thinnest)} to ${read(thickest)}`;
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
