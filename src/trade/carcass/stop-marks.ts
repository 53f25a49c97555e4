import { type Length, subtract } from '../../length/length';
import { markAt, type Tape } from '../../length/tape';
import type { Part } from './part';

/** Marks from the reference end. Inches. */
type StopMarks = { readonly from: Length; readonly to: Length; readonly end: string };

/**
 * Where a rabbet or groove begins and ends that does not run through: its far mark goes to the tape as it stands off
 * the far end of the part, so that one stopped alike at both ends has marks alike.
 *
 * @returns nothing where it runs through
 * @example stopMarks(groove, front, '1/32')?.to // as far from the right end as `from` is from the left
 */
export function stopMarks(
  { from, to }: Pick<Part['rabbets'][number], 'from' | 'to'>,
  { length, end }: Pick<Part, 'length' | 'end'>,
  tape: Tape,
): StopMarks | undefined {
  if (!from || !to) return undefined;
  const long = length.mark.value;
  return {
    from: markAt(from, tape).value,
    to: subtract(long, markAt(subtract(long, to), tape).value),
    end,
  };
}
