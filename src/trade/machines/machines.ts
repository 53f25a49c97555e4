import { grooveMachines } from './groove-machines';
import type { Machine } from './machine';

/**
 * Every machine as it stands ready for a setup. The ids are stored and stand in keys and addresses: none is ever
 * spelled otherwise. `rip`, `fence` and `rabbet` are the table saw: with a single blade, a stack, a stack in a
 * sacrificial fence, and in `finger` a sled with a pin that each slot is stepped over; `slidingcut`, `sliding`,
 * `slidingnotch` and `slidinglap` the sliding saw. `press` is a drill press, `template` a drill by hand in a template,
 * `slant` one in a guide that slants it; `plate` a plate joiner.
 */
const machines = {
  rip: { cuts: 'blade', forHandWork: true },
  crosscut: { cuts: 'blade', forHandWork: true },
  mitre: { cuts: 'blade' },
  ...grooveMachines,
  slidingcut: { cuts: 'blade', caution: 'crosscut' },
  rabbet: { cuts: 'stack' },
  notch: { cuts: 'shoulders' },
  lap: { cuts: 'shoulders' },
  slidingnotch: { cuts: 'shoulders', caution: 'sliding' },
  slidinglap: { cuts: 'shoulders', caution: 'sliding' },
  dovetail: { cuts: 'tool' },
  finger: { cuts: 'stack' },
  routertable: { cuts: 'bit' },
  stick: { cuts: 'blade', noRecipe: true },
  jig: { cuts: 'tool' },
  press: { cuts: 'bit' },
  template: { cuts: 'bit', caution: 'press' },
  slant: { cuts: 'bit', caution: 'press' },
  plate: { cuts: 'tool' },
  hand: { cuts: 'tool', forHandWork: true },
  bench: { cuts: 'none', forHandWork: true, caution: 'hand' },
} as const satisfies Readonly<Record<string, Machine>>;

export type MachineId = keyof typeof machines;

/** Machines that have a caution of their own: it is spelled as the machine. */
export type OwnCaution = {
  [K in MachineId]: (typeof machines)[K] extends { readonly caution: string } ? never : K;
}[MachineId];

export const machineIds = Object.keys(machines) as readonly MachineId[];

/** @example machineAt('lap').cuts // 'shoulders' */
export function machineAt(id: MachineId): Machine {
  return machines[id];
}

/** Machines that cut with a stack: a test cut comes before the first real one. */
export const isTested = ({ cuts }: Machine): boolean => cuts === 'stack' || cuts === 'shoulders';

/**
 * The caution said at a machine: its own, spelled as its id, or that of another machine.
 *
 * @example cautionCode('bench', machineAt('bench')) // 'hand'
 */
export const cautionCode = (id: string, { caution = id }: Machine): string => caution;
