import { ownOf, shopAt } from '../machines/own-machine';
import type { OwnMachine, Shop } from '../machines/shop';
import { toolAt } from '../machines/tool-at';
import type { Board } from './board';

/** The machine of the shop's own that the grooves of a board are cut on, and the shop's figures at it. */
type StandsOn = { readonly own: OwnMachine | undefined; readonly shop: Shop };

/**
 * Which of the shop's machines the grooves of a board are cut on: one of its own where the board names one that it has
 * and that works like the machine named; else that of every shop.
 *
 * @example standsOn({ machine: 'router', by: 'own4' }, shop).shop.bit // the bit of that router
 */
export function standsOn({ machine, by }: Pick<Board, 'machine' | 'by'>, shop: Shop): StandsOn {
  const named = ownOf(shop, by);
  const own = named && named.like === toolAt(machine) ? named : undefined;
  return { own, shop: shopAt(shop, own) };
}
