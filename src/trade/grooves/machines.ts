import { add, half, type Length, longest, subtract, sum, zero } from '../../length/length';
import { markAt } from '../../length/tape';
import type { Board, Machine } from './board';
import { type CutContext, cutterFor } from './cutter';
import type { Mark } from './marks';
import type { Pass } from './passes';

/** What the figure of a setting is measured between. */
export type Measures =
  | 'stop-to-near-teeth'
  | 'other-stop-to-teeth'
  | 'fence-scale'
  | 'guide-edge'
  | 'spacer'
  | 'fence-mark';

type Context = {
  /** Near teeth of the pass, from the reference end, standing on the rounded mark. */
  readonly near: Length;
  readonly pass: Pass;
  readonly cutter: Length;
  readonly mark: Mark;
  readonly marks: readonly Mark[];
  readonly job: CutContext;
};

type Set = {
  readonly measures: Measures;
  readonly figure: Length;
  readonly strip?: Length;
  readonly otherGuide?: Length;
};

type Rule = {
  readonly order: (passes: readonly Pass[], board: Board) => readonly Pass[];
  readonly set: (context: Context) => Set;
};

const asGiven = (passes: readonly Pass[]) => passes;

/** A guide sets the two walls; what stands between them is cleared by eye, against no setting. */
const wallsAlone = (passes: readonly Pass[]) => passes.filter((p) => p.wall !== 'between');

/** How each machine turns the near teeth of a pass into the number to set. */
export const machines: Record<Machine, Rule> = {
  stop: {
    order: asGiven,
    set: ({ near, cutter, job }) =>
      job.board.against === 'reference'
        ? { measures: 'stop-to-near-teeth', figure: near }
        : { measures: 'other-stop-to-teeth', figure: subtract(roundedLength(job), add(near, cutter)) },
  },
  fence: { order: asGiven, set: fenceScale },
  router: { order: routerOrder, set: routerGuide },
  saw: { order: wallsAlone, set: sawGuide },
  spacers: {
    order: asGiven,
    set: ({ near, marks, job }) => ({
      measures: 'spacer',
      figure: subtract(farthest(marks, job), near),
    }),
  },
  index: { order: asGiven, set: ({ near }) => ({ measures: 'fence-mark', figure: near }) },
};

const roundedLength = ({ board, tape }: CutContext): Length => markAt(board.length ?? zero, tape).value;

/**
 * Scale reading: teeth to fence, plus what rides along: the stand-off block, and what the stack grew toward the fence
 * over the single blade the scale was zeroed to.
 */
function fenceScale({ near, cutter, job }: Context): Set {
  return { measures: 'fence-scale', figure: add(near, ridesAtFence(cutter, job)) };
}

/** What a fence scale reads over the distance from teeth to work, whichever end is on the fence. Inches. */
export function ridesAtFence(cutter: Length, { board, shop }: CutContext): Length {
  const { block = zero, single = zero } = shop;
  return board.grows === 'toward' ? add(block, subtract(cutter, single)) : block;
}

/**
 * The wall farther from the guide comes first with the strip in, then the nearer with it out: fed so the bit draws
 * into the guide, the other order is a climb cut.
 */
function routerOrder(passes: readonly Pass[], board: Board): readonly Pass[] {
  const first = board.guide === 'reference' ? 'far' : 'near';
  const second = first === 'far' ? 'near' : 'far';
  const of = (wall: Pass['wall']) => passes.filter((p) => p.wall === wall);
  return [...of('only'), ...of(first), ...of(second), ...of('between')];
}

/** Guide edge: base edge to centre B less half the bit, off the wall next to the guide; the strip makes the rest. */
function routerGuide({ near, pass, cutter, mark, job }: Context): Set {
  const off = subtract(job.shop.routerBase ?? zero, half(cutter));
  const wall = subtract(near, pass.offset);
  const here = subtract(wall, off);
  const beyond = sum([wall, mark.groove.width, off]);
  if (job.board.guide === 'reference') {
    return { measures: 'guide-edge', figure: here, otherGuide: beyond, strip: pass.offset };
  }
  const rest = subtract(subtract(mark.groove.width, cutter), pass.offset);
  return { measures: 'guide-edge', figure: beyond, otherGuide: here, strip: rest };
}

/**
 * Guide lying on the reference side: teeth less the shoe. On the far side: teeth plus kerf plus the shoe's other
 * edge.
 */
function sawGuide({ near, job }: Context): Set {
  const { kerf = zero, shoeKeep, shoeWaste } = job.shop;
  const here = shoeKeep && subtract(near, shoeKeep);
  const beyond = shoeWaste && sum([near, kerf, shoeWaste]);
  const [figure = near, otherGuide] = job.board.guide === 'reference' ? [here, beyond] : [beyond, here];
  return { measures: 'guide-edge', figure, ...(otherGuide ? { otherGuide } : {}) };
}

/** The stop stands for the farthest cut; a board with the spacer between is that much nearer. */
function farthest(marks: readonly Mark[], job: CutContext): Length {
  return marks.reduce((most, { near, groove }) => {
    const last = add(near.value, longest(zero, subtract(groove.width, cutterFor(groove, job))));
    return longest(most, last);
  }, zero);
}
