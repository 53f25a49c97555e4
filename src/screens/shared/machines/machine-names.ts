import type { MachineId } from '../../../trade/machines/machines';

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
  slidingcut: 'Sliding saw, single blade',
  rabbet: 'Table saw, sacrificial fence',
  notch: 'Notches, on edge',
  lap: 'Laps, face down',
  dovetail: 'Dovetails',
  finger: 'Sled with a pin',
  routertable: 'Router table',
  stick: 'Sticks',
  jig: 'Drilling jig',
  press: 'Drill press and fence',
  template: 'Drill and template',
  hand: 'By hand',
  bench: 'At the bench',
};
