import { equals, type Length, subtract } from '../../length/length';
import { type Bank, columnNo, fittedNo } from '../../trade/fronts/bank';
import type { WorkedColumn } from '../../trade/fronts/worked';
import { plannedReach } from './column-of';

/** Whether what was read of a front is not in use yet. */
export function isFresh(bank: Bank, column: number, no: number): boolean {
  const { left, right, usedLeft, usedRight } = fittedNo(columnNo(bank, column), no);
  const differs = (now: Length | undefined, then: Length | undefined) =>
    now !== undefined && !(then && equals(now, then));
  return differs(left, usedLeft) || differs(right, usedRight);
}

/** What is left between the last front and the end of the opening, held or not. Inches. */
export function lastGap(bank: Bank, column: WorkedColumn, side: 'left' | 'right'): Length {
  const no = bank.order === 'down' ? bank.count : 1;
  return subtract(column.opening[side], plannedReach(bank, column, { no, side }));
}
