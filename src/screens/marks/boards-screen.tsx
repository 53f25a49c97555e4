import { editBoard, editRun } from '../../job/edits';
import { inches } from '../../length/length';
import { rowsOf, viewOf } from '../../plan/board-layout';
import { Bar } from '../../ui/bar';
import { Icon } from '../../ui/icon';
import { StoryStick } from '../../ui/story-stick';
import type { Bench } from '../bench';
import { counted } from '../counted';
import { UndoButton } from '../undo-button';
import { allBoards } from './board-of';

/** The boards of the job in hand. */
export function BoardsScreen({ bench }: { readonly bench: Bench }) {
  const job = bench.job.value;
  return (
    <>
      <Bar title="Marks" sub={job?.name ?? ''}>
        <UndoButton bench={bench} />
      </Bar>
      <main class="page">
        {allBoards(bench).length === 0 ? (
          <p class="pad-x empty-line">
            No board laid out yet. Measure one end to end, then say where its grooves go.
          </p>
        ) : (
          <BoardList bench={bench} />
        )}
        <div class="pad-x">
          <button type="button" class="btn main full" onClick={() => void layOutBoard(bench)}>
            <Icon name="plus" />
            Lay out a board
          </button>
        </div>
      </main>
    </>
  );
}

/** Boards with their story sticks. */
export function BoardList({ bench, byHand }: { readonly bench: Bench; readonly byHand?: boolean }) {
  const job = bench.job.value;
  if (!job) return null;
  return (
    <ul>
      {(byHand ? job.boards : allBoards(bench)).map((board) => {
        const view = viewOf(board, bench.shop.value, job.tape);
        const rows = rowsOf(view, bench.folded.value.ticks);
        const done = rows.filter((r) => r.done).length;
        const says =
          view.layout.problems.length > 0
            ? 'not laid out yet'
            : done === 0
              ? 'not started'
              : `${done} of ${counted(rows.length, 'setting', 'settings')} cut`;
        return (
          <li key={board.id}>
            <button
              type="button"
              class="sect"
              onClick={() =>
                bench.go({ at: view.layout.problems.length > 0 ? 'change' : 'marks', board: board.id })
              }
            >
              <b>{board.name || 'Board'}</b>
              <span>{says}</span>
              {done > 0 && (
                <StoryStick
                  done={rows.map((r) => r.done)}
                  now={rows.findIndex((r) => !r.done)}
                  label={says}
                />
              )}
            </button>
          </li>
        );
      })}
    </ul>
  );
}

/** A new board with one empty run, in the job in hand or in a new one. */
export async function layOutBoard(bench: Bench): Promise<void> {
  if (!bench.job.value) await bench.newJob('Bench work');
  const id = bench.newId();
  const n = (bench.job.value?.boards.length ?? 0) + 1;
  const made = await bench.act('A new board', [
    ...editBoard(id, { name: `Board ${n}`, made: 'alike' }),
    ...editRun(id, bench.newId(), { spacing: 'pitch', depth: inches(1n, 4n) }),
  ]);
  if (made) bench.go({ at: 'change', board: id });
}
