import type { Board } from '../../trade/grooves/board';
import { machineFor } from '../../trade/machines/groove-machines';
import type { Ask } from '../shared/ask';
import { cutterNamed, type GrooveWords } from '../shared/machines/groove-words';
import * as asks from './asks';

/** What of a board its machine may ask for in its sentence. */
const askHeld = {
  against: asks.boardAgainst,
  stopSide: asks.boardStopSide,
  grows: asks.boardGrows,
  guide: asks.boardGuide,
  cutter: (board: Board) =>
    asks.boardLength(
      board,
      'cutter',
      `Width of the ${cutterNamed(machineFor(board.machine).cuts)}, the groove’s own when blank`,
    ),
  across: (board: Board) => asks.boardLength(board, 'across', 'How wide the board is along the fence'),
};

const isHeld = (part: string): part is keyof typeof askHeld => Object.hasOwn(askHeld, part);

/** The sentence of a machine, its blanks in their places. */
export const machineSentence = (
  { sentence }: Pick<GrooveWords, 'sentence'>,
  board: Board,
): readonly (string | Ask)[] =>
  sentence.split(/[{}]/).map((part) => (isHeld(part) ? askHeld[part](board) : part));
