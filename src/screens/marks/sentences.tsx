import type { ComponentChildren } from 'preact';
import { editWide } from '../../job/edits';
import type { Change } from '../../job/entry';
import type { Stock } from '../../job/job';
import type { Board, Wide } from '../../trade/grooves/board';
import type { OwnMachine } from '../../trade/machines/shop';
import { Chip } from '../../ui/button';
import { type Ask, AskBlank } from '../shared/ask';
import { filled } from '../shared/filled';
import { wordsAt } from '../shared/machines/groove-words';
import { Acts, Sentence } from '../shared/sentence';
import * as asks from './asks';
import * as words from './change-words';

/** What a sentence of the slip stands on: its board, the blank that is open, and what can be done. */
export type Slip = {
  readonly board: Board;
  /** Machines of the shop's own. */
  readonly own?: readonly OwnMachine[] | undefined;
  readonly open: Ask | undefined;
  readonly onOpen: (ask: Ask) => void;
  readonly act: (label: string, changes: readonly Change[]) => void;
};

/** Puts the blanks of a sentence by their names. */
export const blanks =
  ({ open, onOpen }: Slip, of: asks.Asks) =>
  (name: string): ComponentChildren => {
    const ask = of[name];
    return ask && <AskBlank ask={ask} open={open} onOpen={onOpen} />;
  };

export const BoardSentence = ({ stock, ...slip }: Slip & { readonly stock: readonly Stock[] }) => (
  <div class="fillin">
    {filled(words.boardSlip(slip.board), blanks(slip, asks.boardAsks(slip.board, stock)))}
  </div>
);

export function WideSentence({ wide, ...slip }: Slip & { readonly wide: Wide }) {
  const { board, act } = slip;
  return (
    <Sentence label={words.wideNo(board.wides.indexOf(wide))}>
      {filled(words.wideSlip(board), blanks(slip, asks.wideAsks(board, wide)))}
      <Acts>
        <Chip
          label={words.remove}
          onTap={() => act(words.wideRemoved, editWide(board.id, wide.id, { gone: true }))}
        />
      </Acts>
    </Sentence>
  );
}

export const DatumSentence = (slip: Slip) => (
  <Sentence label={words.datum}>
    {filled(words.datumSlip(slip.board), blanks(slip, asks.boardAsks(slip.board, [])))}
  </Sentence>
);

export const MachineSentence = (slip: Slip) => (
  <Sentence label={words.machine}>
    {filled(
      words.machineSlip(wordsAt(slip.board).sentence),
      blanks(slip, asks.machineAsks(slip.board, slip.own)),
    )}
  </Sentence>
);
