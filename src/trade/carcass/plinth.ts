import {
  inches,
  isPositive,
  type Length,
  less,
  negate,
  over,
  subtract,
  times,
  zero,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { minus, plus, type Sum, sumOf } from '../sums/sum';
import { type Making, partOf } from './panels';
import { type Part, sizeAt } from './part';
import type { RoundProblem, RoundWarning } from './round-problems';
import type { Sizes } from './sizes';
import { beforeSides } from './toe-notch';
import { usualOf } from './usual';

/** Cross members of a plinth where nothing is said: its ends and one between. Common practice, no source. */
export const usualCrosses = 3;

/** Left over the greatest fall of the floor, to scribe it off. Common practice, no source. */
const toScribe = inches(1n, 4n);

/** A plinth that a case stands on. Inches. */
type Plinth = {
  /** Rails run its whole length, cross members stand between them. */
  readonly long: Sum;
  readonly deep: Sum;
  readonly cross: Sum;
  readonly count: number;
  /** From cross member to cross member, and the near edge of each from the left end. */
  readonly clear: Length;
  readonly nears: readonly Length[];
};

/**
 * The plinth under a case: its recess counts from the foremost face, and the sides stand on it.
 *
 * @returns nothing where the case has none
 * @example plinthOf(sizes)?.deep.value // 15 1/2: Example 19 of carcass
 */
export function plinthOf(sizes: Sizes): Plinth | undefined {
  const { case: c, width, depth, thick } = sizes;
  if (!isPositive(sizes.plinth)) return undefined;
  const long = sumOf(
    plus('outside-width', width.value, width),
    minus('left-end', c.plinthLeft ?? zero),
    minus('right-end', c.plinthRight ?? zero),
  );
  const deep = sumOf(
    plus('case-depth', depth.value),
    plus('before-the-sides', beforeSides(sizes)),
    minus('recess', c.plinthFront ?? usualOf(c).toeBack),
    minus('behind-the-plinth', c.plinthBack ?? zero),
  );
  const count = c.plinthCrosses ?? usualCrosses;
  const all = times(thick('cross'), BigInt(count));
  const clear = over(subtract(long.value, all), BigInt(Math.max(1, count - 1)));
  const pitch = clear.add(thick('cross')) as Length;
  return {
    long,
    deep,
    cross: sumOf(plus('plinth-deep', deep.value, deep), minus('two-rails', times(thick('base'), 2n))),
    count,
    clear,
    nears: Array.from({ length: count }, (_, k) => times(pitch, BigInt(k))),
  };
}

/** How high its strips are ripped: as it stands, or with what is scribed off where the floor is higher. */
function stripHigh({ sizes, tape, fall = zero }: Making) {
  const { case: c, plinth } = sizes;
  const own = plus('plinth', plinth);
  if (c.plinthHow !== 'scribed') return sizeAt(sumOf(own), tape);
  const spare = plus('left-to-scribe', figureIn(c.units, toScribe));
  return sizeAt(sumOf(own, plus('fall-of-floor', fall), spare), tape, 'ceil');
}

/** The rails and cross members of a plinth. */
export function plinthParts(making: Making): readonly Part[] {
  const plinth = plinthOf(making.sizes);
  if (!plinth) return [];
  const width = stripHigh(making);
  const of = { width: width.sum, stage: 'any-time' } as const;
  const rail = partOf(making, {
    ...of,
    role: 'plinthrail',
    stock: 'base',
    copies: 2,
    length: plinth.long,
    end: 'left',
  });
  const cross = partOf(making, {
    ...of,
    role: 'plinthcross',
    stock: 'cross',
    copies: plinth.count,
    length: plinth.cross,
    end: 'front',
  });
  const lines = plinth.nears.map((near, k) => ({
    id: `cross${k + 1}`,
    takes: { part: 'cross', no: k + 1 } as const,
    near,
  }));
  return [
    { ...rail, width, lines, mates: [cross.id] },
    { ...cross, width, mates: [rail.id] },
  ];
}

/** A case said to stand on two bases: one is chosen, but earlier both could be. */
export const baseWarnings = ({ case: c }: Sizes): readonly RoundWarning[] =>
  c.hasPlinth && c.hasBase ? [{ round: 'base', code: 'two-bases' }] : [];

/** A plinth that has no length or depth left, or more cross members than it has room for. */
export function plinthProblems(sizes: Sizes): readonly RoundProblem[] {
  const plinth = plinthOf(sizes);
  if (!plinth) return [];
  const { long, cross, clear, count } = plinth;
  const found = (code: 'plinth-no-length' | 'plinth-rails-meet', left: Length): readonly RoundProblem[] =>
    isPositive(left) ? [] : [{ round: 'base', code, by: negate(left) }];
  if (count < 2) return [{ round: 'base', code: 'plinth-crosses', least: 2 }];
  return [
    ...found('plinth-no-length', long.value),
    ...found('plinth-rails-meet', cross.value),
    ...(less(clear, zero) && isPositive(long.value)
      ? [{ round: 'base', code: 'plinth-full', by: negate(times(clear, BigInt(count - 1))) } as const]
      : []),
  ];
}
