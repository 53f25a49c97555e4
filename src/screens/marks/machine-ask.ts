import { editBoard, editPart } from '../../job/edits';
import type { Board } from '../../trade/grooves/board';
import type { Ask } from '../shared/ask';
import { grooveWords } from '../shared/machines/groove-words';

/** How a board is cut is its own even where its layout comes from a case: kept with the part. */
export const editHow = (board: Board, patch: Parameters<typeof editPart>[1]) =>
  board.id.includes('~') ? editPart(board.id, patch) : editBoard(board.id, patch);

type Choice = Extract<Ask, { readonly as: 'choice' }>;

/** What the grooves of a board are cut on. */
export const boardMachine = (board: Board): Choice => ({
  as: 'choice',
  title: 'What they are cut on',
  now: board.machine,
  choices: Object.entries(grooveWords).map(([value, { label, hint }]) => ({ value, label, hint })),
  save: (machine) => editHow(board, { machine: machine as Board['machine'] }),
});
