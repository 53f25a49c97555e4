import { isPositive, isZero, type Length, less, negate, subtract, zero } from '../../length/length';
import { minus, plus, type Sum, sumOf } from '../sums/sum';
import type { Case } from './case';
import type { RoundProblem } from './round-problems';
import type { Sizes } from './sizes';
import { usualOf } from './usual';

/** Whether the stiles of the face frame run down to the floor, past the lower end of the case. */
export const stilesDown = (c: Case): boolean => c.hasFrame && c.frameHow === 'floor';

/** How far the stiles stay clear of the floor. Inches. */
const stilesClear = (c: Case): Length => c.frameClear ?? usualOf(c).frameClear;

/** How far up from the floor the bottom rail ends: at the case over a toe board, else as far down as the stiles. */
export const toeOpening = (c: Case): Length => c.frameToe ?? (c.hasToe ? (c.feet ?? zero) : stilesClear(c));

/** Whether the case stands on its stiles: they touch the floor. */
export const onStiles = (c: Case): boolean => stilesDown(c) && isZero(stilesClear(c));

/** What a frame has up and down. Inches, each with its sum. */
export type UpAndDown = {
  /** Stiles run the full height of the frame; middle stiles from rail to rail. */
  readonly height: Sum;
  readonly middles: Sum;
  readonly bottomRail: Sum;
  /** Lower end of the stiles, and lower edge of the bottom rail, from where the case is measured up. */
  readonly lowEnd: Length;
  readonly railLow: Length;
};

/**
 * What is another in a frame with stiles to the floor: its bottom rail runs from the sill down to the toe opening.
 *
 * @returns inches, from the floor
 * @example framedToFloor(sizes).bottomRail.value // 1 31/32: Example 23 of carcass
 */
export function framedToFloor({ case: c, height, thick }: Sizes): UpAndDown {
  const [clear, low] = [stilesClear(c), toeOpening(c)];
  const high = plus('outside-height', height.value, height);
  const sill = c.frameSill ?? zero;
  return {
    lowEnd: clear,
    railLow: low,
    height: sumOf(high, minus('clear-of-floor', clear)),
    middles: sumOf(
      high,
      minus('top-rail', c.topRail ?? usualOf(c).rail),
      minus('floor-to-case', c.feet ?? zero),
      minus('case-bottom', thick('bottom')),
      minus('sill', sill),
    ),
    bottomRail: sumOf(
      plus('floor-to-case', c.feet ?? zero),
      plus('case-bottom', thick('bottom')),
      plus('sill', sill),
      minus('toe-opening', low),
    ),
  };
}

/** How high over the case bottom the bottom rail ends, as said. */
export const saidSill = (c: Case): Sum => sumOf(plus('sill', c.frameSill ?? zero));

/** Stiles beside a plinth, no bottom rail left over the toe opening, or one that hangs lower than they do. */
export function stilesProblems({ case: c, plinth }: Sizes, bottomRail: Sum): readonly RoundProblem[] {
  if (!stilesDown(c)) return [];
  if (isPositive(plinth)) return [{ round: 'front', code: 'stiles-and-plinth' }];
  const [rail, low, clear] = [bottomRail.value, toeOpening(c), stilesClear(c)];
  return [
    ...(isPositive(rail)
      ? []
      : [
          {
            round: 'front',
            code: 'no-lower-rail',
            by: negate(rail),
            under: subtract(low, negate(rail)),
          } as const,
        ]),
    ...(less(low, clear)
      ? [{ round: 'front', code: 'rail-under-stiles', by: subtract(clear, low), least: clear } as const]
      : []),
  ];
}
