import { type Length, subtract, zero } from '../../length/length';
import type { WorkedColumn } from '../../trade/fronts/worked';
import * as words from './shim-words';

/** A gap of a column. Inches; negative where the fronts bind. */
export type NamedGap = { readonly name: string; readonly left: Length; readonly right: Length };

/** The gap over every front, and the one under the last, at both sides. */
export function gapsOf({
  left,
  right,
  opening,
}: Pick<WorkedColumn, 'left' | 'right' | 'opening'>): readonly NamedGap[] {
  const over = left.map((stands, k) => ({
    name: k === 0 ? words.over : words.between(k),
    left: subtract(stands.top, left[k - 1]?.bottom ?? zero),
    right: subtract(right[k]?.top ?? stands.top, right[k - 1]?.bottom ?? zero),
  }));
  const [l, r] = [left[left.length - 1], right[right.length - 1]];
  if (!l || !r) return over;
  const under = {
    name: words.under(left.length),
    left: subtract(opening.left, l.bottom),
    right: subtract(opening.right, r.bottom),
  };
  return [...over, under];
}
