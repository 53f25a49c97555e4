import { editReading, editStock } from '../job/edits';
import type { Change } from '../job/entry';
import type { Job, Stock } from '../job/job';
import type { Folded } from '../job/log';
import type { Length } from '../length/length';
import type { Part } from '../trade/carcass/part';
import { greatestOf } from './greatest';
import { isBegun } from './progress';

/** The part an operation is ticked for. */
const partOf = (op: string): string | undefined => /^cut\/([^/]+)\//.exec(op)?.[1];

/** Whether anything of a stock is cut: one of its sheets, or a part that is made of it. */
export function isCutOf(
  stock: string,
  { job, parts }: { readonly job: Job; readonly parts: readonly Part[] },
  folded: Folded,
): boolean {
  if (job.sheets.some((sheet) => sheet.stock === stock && isBegun(sheet, folded))) return true;
  const own = new Set(parts.filter((part) => part.stuff === stock).map((part) => part.id));
  return [...folded.ticks.keys()].some((op) => own.has(partOf(op) ?? ''));
}

/**
 * A reading taken, put right, or taken away. While nothing of the stock is cut its greatest reading is in use as
 * readings come; from then on what is in use stays, and a reading waits to be taken up.
 */
export function readingTaken(
  stock: Stock,
  { id, size }: { readonly id: string; readonly size: Length | undefined },
  cut: boolean,
): readonly Change[] {
  const reading = editReading(stock.id, id, size ? { size } : { gone: true });
  if (!cut) return stock.asRead || !size ? reading : [...reading, ...editStock(stock.id, { asRead: true })];
  const stands = greatestOf(stock);
  const follows = stock.asRead || (!stock.used && !stock.planned);
  return follows && stands
    ? [...reading, ...editStock(stock.id, { used: stands, asRead: undefined })]
    : reading;
}

/**
 * The readings of a sheet in another job, taken here as if they were read anew; and its size, as far as none is said
 * here.
 */
export function readingsFrom(
  stock: Stock,
  other: Stock,
  { cut, newId }: { readonly cut: boolean; readonly newId: () => string },
): readonly Change[] {
  const [first, ...more] = other.readings;
  if (!first) return [];
  const sizes = (['long', 'wide', 'trim'] as const).flatMap((way) =>
    stock[way] || !other[way] ? [] : [[way, other[way]] as const],
  );
  return [
    ...readingTaken(stock, { id: newId(), size: first }, cut),
    ...more.flatMap((size) => editReading(stock.id, newId(), { size })),
    ...editStock(stock.id, Object.fromEntries(sizes)),
  ];
}
