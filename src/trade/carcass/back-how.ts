import { type Length, zero } from '../../length/length';
import { minus, plus, type Sum, sumOf } from '../sums/sum';
import type { BackHow, Case, StockRole } from './case';
import type { Joints } from './usual';

/** How the back of a case is held; nothing where it has none. @example backHow(c) // 'rabbet' while nothing is said */
export const backHow = (c: Case): BackHow | undefined => (c.hasBack ? (c.backHow ?? 'rabbet') : undefined);

/** What is left in front of the back: to its rabbet, to the front wall of its groove, or all of the case. Inches. */
export function innerOf(c: Case, joints: Joints, depth: Sum): Sum {
  switch (backHow(c)) {
    case 'rabbet':
      return sumOf(...depth.terms, minus('back-rabbet', joints.backWide));
    case 'groove':
      return sumOf(
        ...depth.terms,
        minus('behind-groove', joints.backLand),
        minus('back-groove', joints.backGrooveWide),
      );
    default:
      return depth;
  }
}

type Deep = {
  readonly case: Case;
  readonly depth: Sum;
  readonly thick: (stock: StockRole) => Length;
};

/** From the front edge of the sides to the hindmost face of the case: a back laid on stands behind them. Inches. */
export const throughBack = ({ case: c, depth, thick }: Deep): Sum =>
  sumOf(plus('case-depth', depth.value), plus('back', backHow(c) === 'applied' ? thick('back') : zero));
