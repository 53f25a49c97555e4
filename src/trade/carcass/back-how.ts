import { type Length, less, zero } from '../../length/length';
import { minus, plus, type Sum, sumOf } from '../sums/sum';
import type { BackHow, Case, StockRole } from './case';
import type { Joints } from './usual';

/** How the back of a case is held; nothing where it has none. @example backHow(c) // 'rabbet' while nothing is said */
export const backHow = (c: Case): BackHow | undefined => (c.hasBack ? (c.backHow ?? 'rabbet') : undefined);

/** What is left in front of the back: to its rabbet, to the front wall of its groove, or all of the case. Inches. */
export function beforeBack(c: Case, joints: Joints, depth: Sum): Sum {
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

/** Where the nailers of a case lie: behind a back in a groove whose land takes them, else inside. Inches. */
export const nailersIn = (c: Case, joints: Joints, thick: Length): 'behind' | 'inside' =>
  backHow(c) === 'groove' && !less(joints.backLand, thick) ? 'behind' : 'inside';

/** What nailers leave of it for what stands inside. Inches. */
export const innerOf = (c: Case, joints: Joints, { before, thick }: Before): Sum =>
  c.hasNailers && c.nailers !== 0 && nailersIn(c, joints, thick) === 'inside'
    ? sumOf(...before.terms, minus('nailer', thick))
    : before;

type Before = { readonly before: Sum; readonly thick: Length };

type Deep = {
  readonly case: Case;
  readonly depth: Sum;
  readonly thick: (stock: StockRole) => Length;
};

/** From the front edge of the sides to the hindmost face of the case: a back laid on stands behind them. Inches. */
export const throughBack = ({ case: c, depth, thick }: Deep): Sum =>
  sumOf(plus('case-depth', depth.value), plus('back', backHow(c) === 'applied' ? thick('back') : zero));
