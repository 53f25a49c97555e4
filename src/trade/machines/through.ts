import type { Tool } from './shop';
import type { GrooveMachineId } from './stored-ids';

/** Machines that part a piece along its length, and across it, as they are stored; the first is the usual one. */
export const ripMachines = ['rip', 'saw'] as const;
export const lengthMachines = ['crosscut', 'slidingcut', 'saw'] as const;

export type RipMachine = (typeof ripMachines)[number];
export type LengthMachine = (typeof lengthMachines)[number];

/** The machine a tool is where it rips, and where it cuts to length. */
export const ripAt: Partial<Record<Tool, RipMachine>> = { fence: 'rip', circular: 'saw', plunge: 'saw' };
export const lengthAt: Partial<Record<Tool, LengthMachine>> = {
  sled: 'crosscut',
  sliding: 'slidingcut',
  circular: 'saw',
  plunge: 'saw',
};

/** The machine a tool is where it cuts grooves, as it is moved there. */
export const grooveAt: Readonly<Partial<Record<Tool, GrooveMachineId>>> = {
  fence: 'fence',
  sled: 'stop',
  sliding: 'sliding',
  router: 'router',
  circular: 'saw',
  plunge: 'saw',
  table: 'tablerouter',
};

/** What was chosen for a part; nothing where the first that can takes it. */
export type Chosen = {
  readonly ripOn?: RipMachine | undefined;
  readonly lengthOn?: LengthMachine | undefined;
  /** The machine of the shop's own that does it, where it works like the one named. */
  readonly ripBy?: string | undefined;
  readonly lengthBy?: string | undefined;
  /** The same of what is cut along an edge, from shoulder to shoulder, and bored; `usual`: that of every shop. */
  readonly edgeBy?: string | undefined;
  /** The router table that grooves along an edge were put on, where they run through; before what `edgeBy` says. */
  readonly alongBy?: string | undefined;
  readonly shoulderBy?: string | undefined;
  readonly boreBy?: string | undefined;
  /** The plate joiner of the shop's own that cuts its slots. */
  readonly slotBy?: string | undefined;
};
