import { half, subtract, sum, zero } from '../../length/length';
import type { Pass } from '../grooves/wall-passes';
import type { Cut, GrooveMachine, Held, SetTo } from './machine';

/** Router along a straight guide clamped across the board. */
export const router: GrooveMachine = {
  cuts: 'bit',
  holds: 'guide',
  forHandWork: true,
  needs: ({ cutter }) => (cutter ? ['routerBase'] : ['routerBase', 'bit']),
  order,
  set,
};

/**
 * The wall farther from the guide comes first with the strip in, then the nearer with it out: fed so the bit draws
 * into the guide, the other order is a climb cut.
 */
function order(passes: readonly Pass[], board: Held): readonly Pass[] {
  const first = board.guide === 'reference' ? 'far' : 'near';
  const second = first === 'far' ? 'near' : 'far';
  const of = (wall: Pass['wall']) => passes.filter((p) => p.wall === wall);
  return [...of('only'), ...of(first), ...of(second), ...of('between')];
}

/** Guide edge: base edge to centre B less half the bit, off the wall next to the guide; the strip makes the rest. */
function set({ teeth, pass, cutter, width, job }: Cut): SetTo {
  const off = subtract(job.shop.routerBase ?? zero, half(cutter));
  const wall = subtract(teeth, pass.offset);
  const here = subtract(wall, off);
  const beyond = sum([wall, width, off]);
  if (job.board.guide === 'reference')
    return { measures: 'guide-edge', figure: here, otherGuide: beyond, strip: pass.offset };
  const strip = subtract(subtract(width, cutter), pass.offset);
  return { measures: 'guide-edge', figure: beyond, otherGuide: here, strip };
}
