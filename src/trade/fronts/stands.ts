import { add, type Length, negate, over, subtract, sum, zero } from '../../length/length';
import { type Bank, columnNo, fittedNo } from './bank';
import { isOwnFront } from './corner';
import { edgesAhead } from './fitted';
import type { Opening } from './opening';
import type { Reveals } from './reveals';
import type { Skew } from './skew';

/** Where a front stands: its edges from the top of the opening. Inches. */
export type Stands = { readonly top: Length; readonly bottom: Length };

/** Numbers of the fronts of a bank, from the top. @example frontNumbers(bank) // 1, 2, 3 */
export const frontNumbers = (bank: Bank): readonly number[] =>
  Array.from({ length: bank.count }, (_, k) => k + 1);

/** Fronts in the order they are fitted. @example fitOrder(bank) // 5, 4, 3, 2, 1 for one fitted from the bottom up */
export const fitOrder = (bank: Bank): readonly number[] =>
  bank.order === 'down' ? frontNumbers(bank) : [...frontNumbers(bank)].reverse();

/** Fronts of a column that are on, in order: up to the last one measured; those before it are on as well. */
export function fittedIn(bank: Bank, column: number): readonly number[] {
  const own = columnNo(bank, column);
  const order = fitOrder(bank);
  const read = order.map((no) => {
    const { usedLeft, usedRight } = fittedNo(own, no);
    return (usedLeft ?? usedRight) !== undefined;
  });
  return order.slice(0, read.lastIndexOf(true) + 1);
}

/** One side of a column. */
type Side = {
  readonly bank: Bank;
  readonly no: number;
  readonly heights: readonly Length[];
  readonly fitted: readonly number[];
  readonly reveals: Reveals;
  readonly opening: Opening;
  readonly side: 'left' | 'right';
};

const heightOf = ({ heights }: Side, no: number): Length => heights[no - 1] ?? zero;

/** Far edge of a fitted front from where the fitting began, at a side; the other side's where only one was measured. */
function reachOf({ bank, no, side }: Side, front: number): Length {
  const { usedLeft, usedRight } = fittedNo(columnNo(bank, no), front);
  return (side === 'left' ? (usedLeft ?? usedRight) : (usedRight ?? usedLeft)) ?? zero;
}

const isRead = ({ bank, no }: Side, front: number): boolean => {
  const { usedLeft, usedRight } = fittedNo(columnNo(bank, no), front);
  return (usedLeft ?? usedRight) !== undefined;
};

/** What is still to go at a side, from the last front fitted. */
export function aheadOf(at: Side) {
  const { bank, fitted, reveals, opening, side } = at;
  const last = fitted[fitted.length - 1];
  const end = bank.order === 'down' ? reveals.bottom : reveals.top;
  return {
    opening: opening[side],
    reach: last === undefined ? zero : reachOf(at, last),
    heights: fitOrder(bank)
      .slice(fitted.length)
      .map((no) => heightOf(at, no)),
    ...(reveals.endsHeld ? { hold: end } : {}),
  };
}

/** Edges of every front at a side, from the top of the opening. */
export function standing(at: Side): readonly Stands[] {
  const { bank, fitted, opening, side } = at;
  const order = fitOrder(bank);
  const before = planned(at);
  const done = fitted.map((no, k) => {
    // one that was not measured stands where it was planned
    const far = isRead(at, no) ? reachOf(at, no) : (before[k]?.far ?? zero);
    return { near: subtract(far, heightOf(at, no)), far };
  });
  const edges = fitted.length > 0 ? [...done, ...ahead(at)] : before;
  return frontNumbers(bank).map((no) => {
    const { near, far } = edges[order.indexOf(no)] ?? { near: zero, far: zero };
    if (bank.order === 'down') return { top: near, bottom: far };
    return { top: subtract(opening[side], far), bottom: subtract(opening[side], near) };
  });
}

const ahead = (at: Side) =>
  edgesAhead(aheadOf(at), {
    goes: at.bank.goes === 'last' ? 'last' : 'gaps',
    wanted: at.reveals.between,
  });

/**
 * Before any is fitted: gaps as wanted, what is left over at the end; all gaps alike when the opening is out of
 * square, or when all fronts are cut alike.
 */
function planned(at: Side): readonly { readonly near: Length; readonly far: Length }[] {
  const { bank, heights, opening, reveals } = at;
  const start = bank.order === 'down' ? reveals.top : reveals.bottom;
  const skewed = !opening.left.equals(opening.right);
  const even = (skewed && bank.goes !== 'last') || (bank.alike && bank.share === 'equal');
  const gap = even ? evenGap(at) : undefined;
  const inOrder = fitOrder(bank).map((no) => heights[no - 1] ?? zero);
  const from = gap && !reveals.endsHeld ? gap : start;
  const step = gap ?? reveals.between;
  return inOrder.map((high, k) => {
    const before = sum(inOrder.slice(0, k).map((h) => add(h, step)));
    const near = add(from, before);
    return { near, far: add(near, high) };
  });
}

/** One gap shared by all, or by those between where the ends are held. */
function evenGap({ bank, heights, opening, reveals, side }: Side): Length | undefined {
  // hung on sticks, a front stands alike at both sides
  const left = subtract(isOwnFront(bank) ? opening.high.value : opening[side], sum(heights));
  if (!reveals.endsHeld) return over(left, BigInt(bank.count + 1));
  if (bank.count < 2) return undefined;
  return over(sum([left, negate(reveals.top), negate(reveals.bottom)]), BigInt(bank.count - 1));
}

/** A column in an opening out of square, in the order its fronts go on: the last front is the last one fitted. */
export function skewIn(
  { bank, reveals }: { readonly bank: Bank; readonly reveals: Reveals },
  column: { readonly opening: Opening; readonly heights: readonly Length[] },
): Skew {
  const { left, right } = column.opening;
  const down = bank.order === 'down';
  const heights = down ? column.heights : [...column.heights].reverse();
  const [top, bottom] = down ? [reveals.top, reveals.bottom] : [reveals.bottom, reveals.top];
  return { left, right, heights, ...(reveals.endsHeld ? { ends: { top, bottom } } : {}) };
}
