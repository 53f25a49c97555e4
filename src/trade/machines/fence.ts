import { add, type Length, subtract, zero } from '../../length/length';
import type { CutContext, GrooveMachine } from './machine';

/** Table saw with a stack: the end against the fence, read on its scale. */
export const fence: GrooveMachine = {
  cuts: 'stack',
  holds: 'fence',
  forHandWork: true,
  needs: ({ grows }) => (grows === 'toward' ? ['single'] : []),
  rides,
  set: ({ teeth, cutter, job }) => ({ measures: 'fence-scale', figure: add(teeth, rides(cutter, job)) }),
};

/**
 * Between teeth and fence ride the stand-off block, and what the stack grew toward the fence over the single blade the
 * scale was zeroed to.
 */
function rides(cutter: Length, { board, shop }: CutContext): Length {
  const { block = zero, single = zero } = shop;
  return board.grows === 'toward' ? add(block, subtract(cutter, single)) : block;
}
