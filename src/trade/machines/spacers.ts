import { add, type Length, longest, subtract, zero } from '../../length/length';
import type { GrooveMachine, Place } from './machine';

/** Crosscut saw with a stack: one stop stands for the farthest cut, spacers for the rest. */
export const spacers: GrooveMachine = {
  cuts: 'stack',
  holds: 'stop',
  still: 'spacers',
  set: ({ teeth, all }) => ({ measures: 'spacer', figure: subtract(all.reduce(farther, zero), teeth) }),
};

/** Near teeth of the last pass of a groove, where that is farther than those before. */
const farther = (most: Length, { near, width, cutter }: Place): Length =>
  longest(most, add(near, longest(zero, subtract(width, cutter))));
