import type { Job } from '../job/job';
import { subtract } from '../length/length';
import { keptOff } from '../trade/carcass/kept-off';
import type { Board } from '../trade/grooves/board';
import { recutsOf } from './recuts';

/** A board laid out by hand as it is cut: its pieces cut again, and the mark its length keeps, inches. */
export function handBoard(job: Job, board: Board): Board {
  const mark = job.parts[board.id]?.mark;
  const kept = mark && board.length && keptOff(board.length, mark) && subtract(board.length, mark);
  return {
    ...board,
    recuts: recutsOf(job, board.id),
    ...(mark && kept ? { lengthMark: { value: mark, rest: kept } } : {}),
  };
}
