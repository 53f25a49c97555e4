import { inches, isNegative, subtract, zero } from '../../length/length';
import type { Bank } from '../../trade/fronts/bank';
import { shimSchedule } from '../../trade/fronts/shims';
import { fitOrder } from '../../trade/fronts/stands';
import type { WorkedColumn } from '../../trade/fronts/worked';
import type { Shim } from '../../trade/stacks/pile';
import type { Piles } from './gap-words';

/** So much short of a gap a pile may be. Common practice, no source. */
export const tol = inches(1n, 64n);

/** The gap a front closes as it is fitted, at both sides: between it and the one before, or the end of the opening. */
export function gapBefore(bank: Bank, column: WorkedColumn, no: number) {
  const order = fitOrder(bank);
  const before = order[order.indexOf(no) - 1];
  const at = (side: 'left' | 'right') => {
    const own = column[side][no - 1] ?? { top: zero, bottom: zero };
    const other = before === undefined ? undefined : column[side][before - 1];
    if (bank.order === 'down') return subtract(own.top, other?.bottom ?? zero);
    return subtract(other?.top ?? column.opening[side], own.bottom);
  };
  return { left: at('left'), right: at('right') };
}

/**
 * The piles of shims for a gap.
 *
 * @param gap inches, any sign
 * @param shims all in the drawer
 * @returns `right` only where it differs; undefined where the fronts bind, or no shims are written down
 */
export function pilesFor(gap: ReturnType<typeof gapBefore>, shims: readonly Shim[]): Piles | undefined {
  if (isNegative(gap.left) || isNegative(gap.right)) return undefined;
  const [piles] = shimSchedule([gap], { shims, tol });
  if (!piles?.left.ok) return undefined;
  const right = piles.right?.ok ? piles.right.value : undefined;
  return { left: piles.left.value, ...(right ? { right } : {}) };
}
