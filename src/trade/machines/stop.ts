import { add, subtract } from '../../length/length';
import type { GrooveMachine } from './machine';

/** Crosscut saw or sled with a stack: a stop block is moved for each cut. */
export const stop: GrooveMachine = {
  cuts: 'stack',
  holds: 'stop',
  eitherEnd: true,
  forHandWork: true,
  set: ({ teeth, cutter, length, job }) =>
    job.board.against === 'reference'
      ? { measures: 'stop-to-near-teeth', figure: teeth }
      : { measures: 'other-stop-to-teeth', figure: subtract(length, add(teeth, cutter)) },
};
