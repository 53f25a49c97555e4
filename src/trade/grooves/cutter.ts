import type { Length } from '../../length/length';
import type { Tape } from '../../length/tape';
import type { Board, Shop } from './board';
import type { Groove } from './layout';

/** What a setting is worked out for: the board, the shop's own figures, the marks of the job. */
export type CutContext = { readonly board: Board; readonly shop: Shop; readonly tape: Tape };

/**
 * Width of what cuts: stack or bit as chosen for the board, else what the machine has, else the groove's own width.
 *
 * @returns inches
 * @example cutterFor(groove, { board, shop, tape: '1/32' })
 */
export function cutterFor(groove: Groove, { board, shop }: CutContext): Length {
  if (board.machine === 'saw') return shop.kerf ?? groove.width;
  if (board.cutter) return board.cutter;
  return board.machine === 'router' ? (shop.bit ?? groove.width) : groove.width;
}
