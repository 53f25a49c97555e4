import { add, type Length, subtract, zero } from '../../length/length';
import { markAt } from '../../length/tape';
import type { CutContext, GrooveMachine } from './machine';

/** Crosscut saw or sled with a stack: a stop block is moved for each cut. */
export const stop: GrooveMachine = {
  cuts: 'stack',
  holds: 'stop',
  eitherEnd: true,
  forHandWork: true,
  set: ({ teeth, cutter, job }) =>
    job.board.against === 'reference'
      ? { measures: 'stop-to-near-teeth', figure: teeth }
      : { measures: 'other-stop-to-teeth', figure: subtract(roundedLength(job), add(teeth, cutter)) },
};

const roundedLength = ({ board, tape }: CutContext): Length => markAt(board.length ?? zero, tape).value;
