import { editBoard, editRun } from '../../job/edits';
import { inches } from '../../length/length';
import type { Bench } from '../bench';

/** A new board with one empty run, in the job in hand or in a new one. */
export async function layOutBoard(bench: Bench): Promise<void> {
  if (!bench.job.value) await bench.shelf.newJob('Bench work');
  const id = bench.newId();
  const n = (bench.job.value?.boards.length ?? 0) + 1;
  const made = await bench.act('A new board', [
    ...editBoard(id, { name: `Board ${n}`, made: 'alike' }),
    ...editRun(id, bench.newId(), { spacing: 'pitch', depth: inches(1n, 4n) }),
  ]);
  if (made) bench.go({ at: 'change', board: id });
}
