import type { GrooveMachine } from './machine';

/** Router in a table, the end of the board along its fence: the near side of the bit stands as far from it. */
export const tableRouter: GrooveMachine = {
  cuts: 'bit',
  holds: 'fence',
  farFence: true,
  needs: ({ cutter }) => (cutter ? [] : ['bit']),
  set: ({ teeth }) => ({ measures: 'fence-scale', figure: teeth }),
};
