import { ownOf, shopAt, type Taker, toolOf } from './own-machine';
import type { OwnId, Shop, ShopField, Tool } from './shop';

/** Any of these being known says that the shop has the tool. */
const known: Readonly<Record<Tool, readonly ShopField[]>> = {
  fence: ['capacity'],
  sled: ['sledCross', 'stopReach'],
  sliding: ['slidingCross', 'slidingStop'],
  router: ['routerReach', 'routerGuide', 'routerBase'],
  circular: ['circularDepth', 'circularGuide'],
  table: ['capacity', 'bit'],
  plunge: ['circularDepth', 'circularGuide', 'kerf'],
  press: ['pressThroat', 'pressStroke', 'pressBit'],
  plate: ['plateDeep', 'plateFence', 'plateBase'],
};

/** As tools are tried until the shop says otherwise: what stands ready, before what is laid on the work. */
const usualOrder: readonly Tool[] = ['sled', 'fence', 'sliding', 'router', 'circular', 'press', 'plate'];
/** What a shop has only as a machine of its own. */
const ownAlone: readonly (Tool | OwnId)[] = ['table', 'plunge'] satisfies Tool[];
export const isOwnAlone = (tool: Tool | OwnId): boolean => ownAlone.includes(tool);

/**
 * Every tool there is, and the machines the shop added, by name, in the order in which it tries them: those not said
 * come after, as usual, its own last.
 *
 * @example toolOrder({})[0] // 'sled'
 */
export function toolOrder({ order = [], own = [] }: Pick<Shop, 'order' | 'own'>): readonly (Tool | OwnId)[] {
  const known = order.filter((id) => !isOwnAlone(id) && takerBy({ own }, id));
  return [...new Set([...known, ...usualOrder, ...own.map(({ id }) => id)])];
}

/** A tool, or the machine of the shop's own, by its name; nothing where this shop has none such. */
export const takerBy = (shop: Pick<Shop, 'own'>, id: Tool | OwnId): Taker | undefined =>
  isTool(id) ? id : ownOf(shop, id);

const isTool = (id: string): id is Tool => Object.hasOwn(known, id);

/** Whether anything of a tool is measured: then the shop has it. */
export function hasTool(shop: Shop, taker: Taker): boolean {
  const figures = typeof taker === 'string' ? shop : shopAt(shop, taker);
  return known[toolOf(taker)].some((field) => figures[field] !== undefined);
}
