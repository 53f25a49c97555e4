import type { Board } from '../../trade/grooves/board';
import type { Ask } from '../shared/ask';
import { editHow } from '../shared/edit-how';
import { grooveWords } from '../shared/machines/groove-words';

type Choice = Extract<Ask, { readonly as: 'choice' }>;

/** What the grooves of a board are cut on. */
export const boardMachine = (board: Board): Choice => ({
  as: 'choice',
  title: 'What they are cut on',
  now: board.machine,
  choices: Object.entries(grooveWords).map(([value, { label, hint }]) => ({ value, label, hint })),
  save: (machine) => editHow(board, { machine: machine as Board['machine'] }),
});
