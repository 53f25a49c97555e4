import { rowsOf, viewOf } from '../../plan/board-layout';
import { StoryStick } from '../../ui/story-stick';
import type { Bench } from '../bench';
import { allBoards } from './board-of';
import { counted } from './counted';
import { boardWord } from './part-words';

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
              <b>{boardWord(board, 'Board')}</b>
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
