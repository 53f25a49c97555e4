import type { MachineId } from './machines';
import type { Shop, ShopField } from './shop';

/** What of a shop takes a piece: a table saw by its fence or its sled, a sliding saw, a router, a circular saw. */
export type Tool = 'fence' | 'sled' | 'sliding' | 'router' | 'circular';

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

/** Tools of a shop by its figures, as they are tried. */
export const toolsOf = (shop: Shop): readonly Tool[] =>
  (Object.keys(known) as readonly Tool[]).filter((tool) => known[tool].some((field) => shop[field]));
