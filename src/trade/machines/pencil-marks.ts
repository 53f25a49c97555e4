import type { GrooveMachine } from './machine';

/** Crosscut saw with a stack: the end is brought to a pencil mark on the fence for each groove. */
export const pencilMarks: GrooveMachine = {
  cuts: 'stack',
  holds: 'stop',
  still: 'pencil',
  set: ({ teeth }) => ({ measures: 'fence-mark', figure: teeth }),
};
