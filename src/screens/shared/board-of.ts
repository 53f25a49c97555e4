import { recutsOf } from '../../plan/recuts';
import type { Board } from '../../trade/grooves/board';
import type { Bench } from '../bench';

/** A board by its id: laid out by hand, or a part of a case. The whole plan is worked out only for the latter. */
export function boardOf(bench: Bench, id: string): Board | undefined {
  const job = bench.job.value;
  const own = job?.boards.find((b) => b.id === id);
  if (job && own) return { ...own, recuts: recutsOf(job, id) };
  return bench.plan.value?.parts.find((part) => part.id === id)?.board;
}

/** Boards to be laid out: the parts of the cases that have grooves, then those laid out by hand. */
export function allBoards(bench: Bench): readonly Board[] {
  const job = bench.job.value;
  if (!job) return [];
  const parts = job.cases.length > 0 ? (bench.plan.value?.parts ?? []) : [];
  const derived = parts.flatMap((p) => (p.of !== '' && p.board && grooved(p.board) ? [p.board] : []));
  return [...derived, ...job.boards.map((b) => ({ ...b, recuts: recutsOf(job, b.id) }))];
}

const grooved = (board: Board): boolean => board.runs.length + board.wides.length > 0;

/** Whether a board's layout is its own, to be changed on Marks; else it comes from its case. */
export const isByHand = (bench: Bench, id: string): boolean =>
  bench.job.value?.boards.some((b) => b.id === id) ?? false;
