import { subtract, sum, zero } from '../../length/length';
import type { Cut, GrooveMachine, SetTo } from './machine';

/** Circular saw along a guide. */
export const saw: GrooveMachine = {
  cuts: 'blade',
  holds: 'guide',
  forHandWork: true,
  needs: ({ guide }) => ['kerf', guide === 'reference' ? 'shoeKeep' : 'shoeWaste'],
  // a guide sets the two walls; what stands between them is cleared by eye, against no setting
  order: (passes) => passes.filter((p) => p.wall !== 'between'),
  set,
};

/**
 * Guide lying on the reference side: teeth less the shoe. On the far side: teeth plus kerf plus the shoe's other
 * edge.
 */
function set({ teeth, job }: Cut): SetTo {
  const { kerf = zero, shoeKeep, shoeWaste } = job.shop;
  const here = shoeKeep && subtract(teeth, shoeKeep);
  const beyond = shoeWaste && sum([teeth, kerf, shoeWaste]);
  const [figure = teeth, otherGuide] = job.board.guide === 'reference' ? [here, beyond] : [beyond, here];
  return { measures: 'guide-edge', figure, ...(otherGuide ? { otherGuide } : {}) };
}
