import { ownOf, shopAt, worksAs } from '../machines/own-machine';
import type { OwnMachine, Shop } from '../machines/shop';
import type { GrooveMachineId } from '../machines/stored-ids';
import { grooveAt } from '../machines/through';
import { toolAt } from '../machines/tool-at';
import type { Board } from './board';

/** A board at the machine its grooves are cut on, which of the shop's own that is, and the shop's figures at it. */
type StandsOn = { readonly board: Board; readonly own: OwnMachine | undefined; readonly shop: Shop };

/**
 * Which of the shop's machines the grooves of a board are cut on: one of its own where the board names one that it has
 * and that works like the machine named; else that of every shop. A router table is a shop's own: the board names the
 * router, which takes the grooves where there is no such table.
 *
 * @example standsOn({ ...board, machine: 'router', by: 'own4' }, shop).shop.bit // the bit of that router
 */
export function standsOn(board: Board, shop: Shop): StandsOn {
  const named = ownOf(shop, board.by);
  const machine = board.machine === 'tablerouter' ? 'router' : board.machine;
  const own = named && worksAs(named, toolAt(machine)) ? named : undefined;
  if (named?.like === 'table' && machine === 'router')
    return { board: { ...board, machine: 'tablerouter' }, own: named, shop: shopAt(shop, named) };
  return { board: machine === board.machine ? board : { ...board, machine }, own, shop: shopAt(shop, own) };
}

/**
 * The machine a board names for one of the shop's own: that of every shop that takes the grooves where it is not;
 * nothing where it cuts none.
 */
export const namedFor = ({ like }: Pick<OwnMachine, 'like'>): GrooveMachineId | undefined =>
  like === 'table' ? 'router' : grooveAt[like];
