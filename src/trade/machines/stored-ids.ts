/**
 * Ids of machines as they stand in jobs: no spelling is ever changed. Apart from the machines, so that a job is read
 * without them. Those that cut the grooves of a board, as they are offered:
 */
export const grooveMachineIds = [
  'stop',
  'fence',
  'router',
  'saw',
  'spacers',
  'index',
  'sliding',
  'tablerouter',
] as const;

export type GrooveMachineId = (typeof grooveMachineIds)[number];

/** Machines offered for work that is added by hand: those whose descriptor says so. */
export const handMachineIds = [
  'rip',
  'crosscut',
  'stop',
  'fence',
  'router',
  'saw',
  'sliding',
  'hand',
  'bench',
] as const;
