import { editOwnName } from '../../job/edits';
import type { Board } from '../../trade/grooves/board';
import { namedFor, standsOn } from '../../trade/grooves/stands-on';
import type { OwnMachine } from '../../trade/machines/shop';
import { grooveAt } from '../../trade/machines/through';
import type { Ask } from '../shared/ask';
import { editHow } from '../shared/edit-how';
import { grooveWords } from '../shared/machines/groove-words';
import { ownName } from '../shared/machines/machine-names';

type Choice = Extract<Ask, { readonly as: 'choice' }>;

/** What the grooves of a board are cut on: a machine of every shop, or one of this shop's own. */
export function boardMachine(board: Board, own: readonly OwnMachine[] = []): Choice {
  const on = standsOn(board, { own }).own;
  return {
    as: 'choice',
    title: 'What they are cut on',
    now: on?.id ?? board.machine,
    choices: [
      ...Object.entries(grooveWords).flatMap(([value, { label, hint }]) =>
        value === 'tablerouter' ? [] : [{ value, label, hint }],
      ),
      ...own.flatMap((one) => {
        const at = grooveAt[one.like];
        return at
          ? [{ value: one.id, label: ownName(one), hint: `works like: ${grooveWords[at].label}` }]
          : [];
      }),
    ],
    save: (machine) => {
      const to = own.find(({ id }) => id === machine);
      if (to && namedFor(to))
        return [...editHow(board, { machine: namedFor(to), by: to.id }), ...editOwnName(to.id, to.name)];
      return editHow(board, { machine: machine as Board['machine'], ...(board.by ? { by: undefined } : {}) });
    },
  };
}
