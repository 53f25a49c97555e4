import type { MachineId } from './machines';
import type { Shop, ShopField, Tool } from './shop';

const toolOfMachine: Partial<Record<MachineId, Tool>> = {
  rip: 'fence',
  fence: 'fence',
  rabbet: 'fence',
  crosscut: 'sled',
  mitre: 'sled',
  stop: 'sled',
  spacers: 'sled',
  index: 'sled',
  sliding: 'sliding',
  slidingcut: 'sliding',
  lap: 'sled',
  notch: 'sled',
  router: 'router',
  saw: 'circular',
};

/** The tool a machine is, as it stands ready. @example toolAt('index') // 'sled' */
export const toolAt = (machine: MachineId): Tool | undefined => toolOfMachine[machine];

/** Any of these being known says that the shop has the tool. */
const known: Readonly<Record<Tool, readonly ShopField[]>> = {
  fence: ['capacity'],
  sled: ['sledCross', 'stopReach'],
  sliding: ['slidingCross', 'slidingStop'],
  router: ['routerReach', 'routerGuide', 'routerBase'],
  circular: ['circularDepth', 'circularGuide'],
};

/** As tools are tried until the shop says otherwise: what stands ready, before what is laid on the work. */
const usualOrder: readonly Tool[] = ['sled', 'fence', 'sliding', 'router', 'circular'];

/** Every tool there is, in the order in which the shop tries them. @example toolOrder({})[0] // 'sled' */
export const toolOrder = ({ order = [] }: Pick<Shop, 'order'>): readonly Tool[] => [
  ...new Set([...order, ...usualOrder]),
];

/** Whether anything of a tool is measured: then the shop has it. */
export const hasTool = (shop: Shop, tool: Tool): boolean =>
  known[tool].some((field) => shop[field] !== undefined);
