import type { Length } from '../../length/length';
import type { CutContext, Machine } from './machine';

/**
 * Width of what cuts: a single blade's is the shop's kerf; else stack or bit as chosen for the board, else the shop's
 * bit, else the groove's own width.
 *
 * @param machine by what it cuts; @param width of the groove, inches
 * @returns inches
 * @example cutterOn({ cuts: 'stack' }, inches(3n, 4n), { board: {}, shop: {} }) // 3/4
 */
export function cutterOn(
  { cuts }: Pick<Machine, 'cuts'>,
  width: Length,
  { board, shop }: { readonly board: Pick<CutContext['board'], 'cutter'>; readonly shop: CutContext['shop'] },
): Length {
  if (cuts === 'blade') return shop.kerf ?? width;
  return board.cutter ?? (cuts === 'bit' ? shop.bit : undefined) ?? width;
}
