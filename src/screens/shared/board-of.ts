import type { Job } from '../../job/job';
import { handBoard } from '../../plan/hand-board';
import type { Part } from '../../trade/carcass/part';
import type { Board } from '../../trade/grooves/board';
import type { Bench } from '../bench';

/** A job in hand; its plan is worked out once it is asked for. */
type InHand = Pick<Bench, 'job' | 'plan'>;

/**
 * A board by its id: laid out by hand, or a part of a case.
 *
 * @param parts of the job, worked out only where it is none laid out by hand
 */
export function boardIn(job: Job, id: string, parts: () => readonly Part[]): Board | undefined {
  const own = job.boards.find((b) => b.id === id);
  return own ? handBoard(job, own) : parts().find((part) => part.id === id)?.board;
}

/** A board of the job in hand by its id. */
export const boardOf = ({ job, plan }: InHand, id: string): Board | undefined =>
  job.value && boardIn(job.value, id, () => plan.value?.parts ?? []);

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
