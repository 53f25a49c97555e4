import type { Job } from '../../job/job';
import { handBoard } from '../../plan/hand-board';
import type { Board } from '../../trade/grooves/board';
import type { Bench } from '../bench';

/** A job in hand; its plan is worked out once it is asked for. */
type InHand = Pick<Bench, 'job' | 'plan'>;

/** A board by its id: laid out by hand, or a part of a case. The whole plan is worked out only for the latter. */
export function boardOf({ job: inHand, plan }: InHand, id: string): Board | undefined {
  const job = inHand.value;
  const own = job?.boards.find((b) => b.id === id);
  if (job && own) return handBoard(job, own);
  return plan.value?.parts.find((part) => part.id === id)?.board;
}

/** Boards to be laid out: the parts of the cases that have grooves, then those laid out by hand. */
export function allBoards({ job: inHand, plan }: InHand): readonly Board[] {
  const job = inHand.value;
  if (!job) return [];
  const parts = job.cases.length > 0 ? (plan.value?.parts ?? []) : [];
  const derived = parts.flatMap((p) => (p.of !== '' && p.board && grooved(p.board) ? [p.board] : []));
  return [...derived, ...job.boards.map((b) => handBoard(job, b))];
}

const grooved = (board: Board): boolean => board.runs.length + board.wides.length > 0;

/** Whether a board's layout is its own, to be changed on Marks; else it comes from its case. */
export const isByHand = (job: Job | undefined, id: string): boolean =>
  job?.boards.some((b) => b.id === id) ?? false;
