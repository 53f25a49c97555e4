import type { VNode } from 'preact';
import { editWide } from '../../job/edits';
import type { Change } from '../../job/entry';
import type { Stock } from '../../job/job';
import type { Board, Wide } from '../../trade/grooves/board';
import { type Ask, AskBlank } from '../shared/ask';
import { wordsAt } from '../shared/machines/groove-words';
import * as asks from './asks';
import * as words from './change-words';
import { boardMachine } from './machine-ask';
import { machineSentence } from './machine-sentence';

/** What a sentence of the slip stands on: its board, the blank that is open, and what can be done. */
export type Slip = {
  readonly board: Board;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
  readonly act: (label: string, changes: readonly Change[]) => void;
};

/** Puts a blank of the slip. */
export const blankOf =
  ({ open, onOpen }: Slip) =>
  (ask: Ask): VNode => <AskBlank ask={ask} open={open} onOpen={onOpen} />;

export function BoardSentence({ stock, ...slip }: Slip & { readonly stock: readonly Stock[] }) {
  const { board } = slip;
  const blank = blankOf(slip);
  const length = (field: 'length' | 'across' | 'thickness') =>
    blank(asks.boardLength(board, field, words.boardTitles[field]));
  return (
    <div class="fillin">
      <words.BoardSlip
        name={blank(asks.boardName(board))}
        made={blank(asks.boardMade(board))}
        copies={board.made === 'alike' && blank(asks.boardCopies(board))}
        long={length('length')}
        wide={length('across')}
        thick={length('thickness')}
        stock={blank(asks.boardStock(board, stock))}
        end={blank(asks.boardEnd(board))}
      />
    </div>
  );
}

export function WideSentence({ wide, ...slip }: Slip & { readonly wide: Wide }) {
  const { board, act } = slip;
  const blank = blankOf(slip);
  return (
    <section class="fillin run" aria-label={words.wideNo(board.wides.indexOf(wide))}>
      <words.WideSlip
        wide={blank(asks.wideLength(board, wide, 'width'))}
        deep={blank(asks.wideLength(board, wide, 'depth'))}
        near={blank(asks.wideLength(board, wide, 'near'))}
        face={board.made === 'partition' && blank(asks.wideFace(board, wide))}
      />
      <span class="runacts">
        <button
          type="button"
          class="chip"
          onClick={() => act(words.wideRemoved, editWide(board.id, wide.id, { gone: true }))}
        >
          {words.remove}
        </button>
      </span>
    </section>
  );
}

export function DatumSentence(slip: Slip) {
  const { board } = slip;
  const blank = blankOf(slip);
  return (
    <section class="fillin run" aria-label={words.datum}>
      <words.DatumSlip
        datum={blank(asks.boardLength(board, 'datum', words.boardTitles.datum))}
        end={board.end}
        mateName={blank(asks.boardMateName(board))}
        mate={blank(asks.boardLength(board, 'mate', words.boardTitles.mate))}
      />
    </section>
  );
}

export function MachineSentence(slip: Slip) {
  const { board } = slip;
  const blank = blankOf(slip);
  return (
    <section class="fillin run" aria-label={words.machine}>
      <words.CutOn machine={blank(boardMachine(board))} />
      {machineSentence(wordsAt(board), board).map((part) => (typeof part === 'string' ? part : blank(part)))}
    </section>
  );
}
