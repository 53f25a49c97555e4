import { Bar } from '../../ui/bar';
import { Button } from '../../ui/button';
import type { Bench } from '../bench';
import { BoardList } from '../shared/board-list';
import { allBoards } from '../shared/board-of';
import { layOutBoard } from '../shared/new-board';
import { UndoButton } from '../shared/undo-button';
import * as words from './words';

/** The boards of the job in hand. */
export function BoardsScreen({ bench }: { readonly bench: Bench }) {
  const job = bench.job.value;
  return (
    <>
      <Bar title={words.marks} sub={job?.name ?? ''}>
        <UndoButton bench={bench} />
      </Bar>
      <main class="page">
        {allBoards(bench).length === 0 ? (
          <p class="pad-x empty-line">{words.noBoardYet}</p>
        ) : (
          <BoardList bench={bench} />
        )}
        <div class="pad-x adds">
          <Button
            label={words.layOutBoard}
            look="main full"
            icon="plus"
            onTap={() => void layOutBoard(bench)}
          />
        </div>
      </main>
    </>
  );
}
