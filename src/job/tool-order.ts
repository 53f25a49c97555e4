import type { OwnId, Tool } from '../trade/machines/shop';
import type { Json } from './entry';

/** The order of the shop's tools is kept among the things of its drawers, as one: names with a blank between. */
export const toolOrderKey = 'shelf/tools';

/** By their names, every one: none is added without its name here, for what is not known is not read. */
const tools: Readonly<Record<Tool, true>> = {
  fence: true,
  sled: true,
  sliding: true,
  router: true,
  circular: true,
  press: true,
  plate: true,
  table: true,
  plunge: true,
};
export const isTool = (name: Json | undefined): name is Tool =>
  typeof name === 'string' && Object.hasOwn(tools, name);

/** The name of a machine the shop added, by which it is kept. */
export const isOwn = (name: string): name is OwnId => /^own[a-z0-9]{1,21}$/.test(name);

/** The order among all that is kept of this phone: by itself, over that of the lists as they were once kept whole. */
export function orderIn({
  lists,
  [toolOrderKey]: own,
}: Readonly<Record<string, Json>>): readonly (Tool | OwnId)[] | undefined {
  const whole = typeof lists === 'object' && lists !== null && 'order' in lists ? lists.order : undefined;
  return orderOf(own ?? whole);
}

/** The order as kept; nothing where none was said. @example orderOf('sliding sled') // ['sliding', 'sled'] */
export function orderOf(json: Json | undefined): readonly (Tool | OwnId)[] | undefined {
  if (typeof json !== 'string') return undefined;
  const order = json.split(' ').filter((name) => isTool(name) || isOwn(name));
  return order.length > 0 ? [...new Set(order)] : undefined;
}
