import { newBoard, newRun } from '../../../src/job/board-of';
import type { Board, Run } from '../../../src/trade/grooves/board';
import { l } from '../../length/write-figures';

/** A side of the cabinet with two grooves, 34 1/2 long. */
export const board = (over: Partial<Board> = {}, run: Partial<Run> = {}): Board => ({
  ...newBoard('side'),
  name: 'Side',
  length: l('34 1/2'),
  runs: [{ ...newRun('r'), width: l('3/4'), count: 2, pitch: l('6'), first: l('3'), ...run }],
  ...over,
});
