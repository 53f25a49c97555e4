import { isPositive, zero } from '../../length/length';
import type { Tape } from '../../length/tape';
import type { Sum } from '../sums/sum';
import { partOf } from './panels';
import { type Part, sizeAt } from './part';
import type { Worked } from './parts';

/** A strip that closes a side of a case to the wall, as wide as the room asks and as long as it closes. Inches. */
type Strip = {
  readonly side: 'left' | 'right';
  readonly width: Sum;
  readonly length: Sum;
  /** Out of solid stuff, not of a sheet. */
  readonly solid: boolean;
};

/**
 * A filler strip as a part of its case: ripped up to the next mark, so that it covers its widest gap, and cut to length
 * in the shop; it is scribed to the wall when the case stands. It waits for nothing, and keeps no mark: it follows the
 * room.
 *
 * @param worked the case it stands beside
 * @returns inches; nothing while it is not known what the strip is of
 * @example fillerOf(worked, strip, '1/32')?.width.mark.value // 11/16 of 21/32, at a sixteenth
 */
export function fillerOf(
  { sizes }: Pick<Worked, 'sizes'>,
  { side, width, length, solid }: Strip,
  tape: Tape,
): Part | undefined {
  const making = { sizes, tape, cutting: () => ({}) };
  const of = { stock: 'filler', end: 'bottom', stage: 'any-time' } as const;
  const part = partOf(making, { role: `filler${side}` as const, length, width, ...of });
  if (!isPositive(part.thickness ?? zero)) return undefined;
  return { ...part, strip: solid, width: sizeAt(width, tape, 'ceil') };
}

/** Id of the strip at a side of a case. @example fillerId('case', 'left') // 'case~fillerleft' */
export const fillerId = (of: string, side: 'left' | 'right'): string => `${of}~filler${side}`;

/** Whether a part closes a case to a wall. */
export const isFiller = ({ stock }: Pick<Part, 'stock'>): boolean => stock === 'filler';
