import { isClear, lacksOf, type Need, type Reach, type Way } from './limits';
import { type Taker, toolOf } from './own-machine';
import type { Tool } from './shop';
import { hasTool, takerBy, toolOrder } from './tools';

const makes: Readonly<Record<Need['cut'], readonly Tool[]>> = {
  rip: ['fence', 'circular', 'plunge'],
  crosscut: ['sled', 'sliding', 'circular', 'plunge'],
  groove: ['fence', 'sled', 'sliding', 'router', 'table'],
  edge: ['fence'],
  along: ['fence'],
  stopped: ['table'],
  shoulder: ['sled'],
  bore: ['press'],
  slot: ['plate'],
};

/** What makes a cut as well, on a machine that is another setup: where it is said of the part, by no order. */
const saidOnly: Readonly<Partial<Record<Need['cut'], readonly Tool[]>>> = {
  along: ['table'],
  shoulder: ['sliding'],
};

/** Every tool a cut may be put on; the first is the usual one. */
export const mayMake = (cut: Need['cut']): readonly Tool[] => [...makes[cut], ...(saidOnly[cut] ?? [])];

/** What of a shop makes a cut, as it is tried; `planned` with it, whether or not it is measured. */
const toolsFor = (by: readonly Tool[], planned: Taker | undefined, shop: Reach): readonly Taker[] =>
  toolOrder(shop)
    .flatMap((id) => takerBy(shop, id) ?? [])
    .filter((taker) => taker === planned || (by.includes(toolOf(taker)) && hasTool(shop, taker)));

/**
 * Every way a shop has to make a cut: first on the machine it is planned for, then on the others that are in the shop,
 * in its own order.
 *
 * @example waysFor(need, 'sled', shop).find(isClear)?.tool // the first that lacks nothing
 */
export function waysFor(need: Need, planned: Taker | undefined, shop: Reach): readonly Way[] {
  const others = toolsFor(mayMake(need.cut), planned, shop).filter((tool) => tool !== planned);
  return [...(planned ? [planned] : []), ...others].map((tool) => lacksOf(need, tool, shop));
}

/**
 * The tool that takes a cut: the first in the order the shop has said that lacks nothing. The usual one takes it as
 * well while nothing is known against it, where none can, and while no order was said: then a tap moves a cut.
 *
 * @example takerOf({ cut: 'rip', width: inches(34n) }, 'fence', shop) // 'circular': the fence ends at 30
 */
export function takerOf(need: Need, usual: Tool, shop: Reach): Taker {
  if (!shop.order) return usual;
  const takes = (taker: Taker): boolean => {
    const way = lacksOf(need, taker, shop);
    return taker === usual ? way.lacks.length === 0 : isClear(way);
  };
  return toolsFor(makes[need.cut], usual, shop).find(takes) ?? usual;
}

/** Tools the shop tries before one, that lack something for the cut. */
export const passedOver = (need: Need, taken: Taker, shop: Reach): readonly Way[] => {
  const tools = toolsFor(makes[need.cut], taken, shop);
  // a router table of no shop's own stands in no order: once one is said, all others were tried before it
  const before = tools.includes(taken) ? tools.indexOf(taken) : shop.order ? tools.length : 0;
  return tools
    .slice(0, before)
    .map((tool) => lacksOf(need, tool, shop))
    .filter(({ lacks }) => lacks.length > 0);
};
