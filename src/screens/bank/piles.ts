import type { Settings } from '../../job/settings';
import { inches, isNegative, subtract, zero } from '../../length/length';
import type { Bank } from '../../trade/fronts/bank';
import { shimSchedule } from '../../trade/fronts/shims';
import { fitOrder } from '../../trade/fronts/stands';
import type { WorkedColumn } from '../../trade/fronts/worked';
import type { Bench } from '../bench';
import { listsOf } from '../shared/shop-lists';
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

/** Whether no shims are written down yet, so that no pile can be named. */
export const noShims = (settings: Settings): boolean => listsOf(settings).shims.length === 0;

/** The piles of shims for that gap, from the shims really in the drawer. */
export function pileBefore(bench: Bench, bank: Bank, column: WorkedColumn, no: number): Piles | undefined {
  const gap = gapBefore(bank, column, no);
  if (isNegative(gap.left) || isNegative(gap.right)) return undefined;
  const [piles] = shimSchedule([gap], { shims: listsOf(bench.settings.value).shims, tol });
  if (!piles?.left.ok) return undefined;
  const right = piles.right?.ok ? piles.right.value : undefined;
  return { left: piles.left.value, ...(right ? { right } : {}) };
}
