import type { MachineId } from './machines';
import type { Tool } from './shop';

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
  slidingnotch: 'sliding',
  slidinglap: 'sliding',
  router: 'router',
  tablerouter: 'table',
  routertable: 'table',
  saw: 'circular',
  press: 'press',
  plate: 'plate',
};

/** The tool a machine is, as it stands ready. @example toolAt('index') // 'sled' */
export const toolAt = (machine: MachineId): Tool | undefined => toolOfMachine[machine];
