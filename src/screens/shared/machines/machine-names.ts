import type { MachineId } from '../../../trade/machines/machines';
import type { Setup } from '../../../trade/setups/setup';

/** What each machine is called at the head of a card. */
export const machineNames: Readonly<Record<MachineId, string>> = {
  rip: 'Table saw, single blade',
  crosscut: 'Crosscut, single blade',
  mitre: 'Crosscut, blade at 45°',
  stop: 'Sled and stop',
  fence: 'Table saw, fence',
  router: 'Router and guide',
  saw: 'Circular saw and guide',
  spacers: 'Stop and spacers',
  index: 'Fence pencil marks',
  sliding: 'Sliding saw and stop',
  tablerouter: 'Router table, fence',
  slidingcut: 'Sliding saw, single blade',
  rabbet: 'Table saw, sacrificial fence',
  notch: 'Notches, on edge',
  lap: 'Laps, face down',
  slidingnotch: 'Sliding saw, notches on edge',
  slidinglap: 'Sliding saw, laps face up',
  dovetail: 'Dovetails',
  finger: 'Sled with a pin',
  routertable: 'Router table',
  stick: 'Sticks',
  jig: 'Drilling jig',
  press: 'Drill press and fence',
  template: 'Drill and template',
  slant: 'Drill in a guide at 15°',
  plate: 'Plate joiner',
  hand: 'By hand',
  bench: 'At the bench',
};

/** What a machine of the shop's own stands ready with, where its name does not say it. */
const readyWith: Partial<Record<MachineId, string>> = {
  rip: 'single blade',
  crosscut: 'single blade',
  slidingcut: 'single blade',
  stop: 'stack',
  fence: 'stack',
  sliding: 'stack',
  spacers: 'stop and spacers',
  index: 'fence pencil marks',
  rabbet: 'sacrificial fence',
  notch: 'notches, on edge',
  lap: 'laps, face down',
  slidingnotch: 'notches, on edge',
  slidinglap: 'laps, face up',
};

/** A machine of the shop's own as the user calls it. */
export const ownName = ({ name }: { readonly name: string }): string =>
  name.trim() || 'Machine without a name';

/** The machine of a setup at the head of its card: one of the shop's own by its name. */
export const machineName = ({ machine, own }: Pick<Setup, 'machine' | 'own'>): string =>
  own ? [ownName(own), readyWith[machine]].filter(Boolean).join(', ') : machineNames[machine];
