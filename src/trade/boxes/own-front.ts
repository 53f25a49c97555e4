import {
  absolute,
  add,
  equals,
  half,
  isNegative,
  isPositive,
  isZero,
  type Length,
  negate,
  shortest,
  subtract,
  sum,
  times,
  zero,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { markAt, type Tape } from '../../length/tape';
import type { Part } from '../carcass/part';
import type { Bank } from '../fronts/bank';
import { isOwnFront } from '../fronts/corner';
import { usualBank } from '../fronts/usual-bank';
import type { WorkedColumn } from '../fronts/worked';
import type { Box } from './box';
import type { BoxError, BoxPlan } from './box-plan';
import type { DrawerJoint } from './joints/joint';

/** The front of a box that is that of its drawer, as its wood is cut, without bands. Inches. */
export type OwnFront = {
  readonly wide: Length;
  /** How far it stands past the box at either end; how far its lower edge is under that of the box, its top over. */
  readonly left: Length;
  readonly right: Length;
  readonly under: Length;
  readonly over: Length;
};

/** What a band takes off each edge and end of a front. Inches. */
export const bandOf = (bank: Bank): Length => (bank.fromBlank ? (bank.band ?? usualBank(bank).band) : zero);

/** The highest a box may be: where its front is that of the drawer, no higher than the wood of that. Inches. */
export const underFront = (
  bank: Bank,
  most: Length,
  front: { readonly high: Length; readonly up: Length },
) => (isOwnFront(bank) ? shortest(most, sum([front.high, negate(front.up), negate(bandOf(bank))])) : most);

type OwnAt = {
  readonly bank: Bank;
  readonly column: WorkedColumn;
  readonly joint: DrawerJoint;
  readonly plan: BoxPlan;
  readonly box: Box;
  /** How high the front is, and how far the box stands over its lower edge. */
  readonly high: Length;
  readonly up: Length;
  readonly tape: Tape;
};

/**
 * How the front of a box stands about it where it is that of the drawer: the box in the middle of its opening, what
 * rounding left shared by both ends.
 *
 * @returns or why this joint does not make one, by how much
 */
export function ownFrontOf(at: OwnAt): Result<OwnFront, BoxError> {
  const { bank, column, joint, plan, box, high, up } = at;
  const may = joint.ownFront?.(plan);
  if (!may) return err({ code: 'own-shows' });
  const band = bandOf(bank);
  const exact = subtract(column.width.sum.value, times(band, 2n));
  const wide = markAt(exact, at.tape, bank.fit === 'inset' ? 'floor' : 'halfExpand').value;
  const more = subtract(wide, box.width.mark.value);
  const clearance = subtract(plan.clearance, half(more));
  if (may === 'flush' && !isZero(more))
    return err({
      code: 'own-not-flush',
      by: absolute(more),
      wider: isPositive(more),
      ...(isNegative(clearance) ? {} : { clearance }),
    });
  const apart = half(subtract(column.covers.left, column.covers.right));
  const own = {
    wide,
    left: add(half(more), apart),
    right: subtract(half(more), apart),
    under: subtract(up, band),
    over: subtract(high, sum([up, plan.height, band])),
  };
  return wrongIn(own, at) ?? ok(own);
}

function wrongIn(own: OwnFront, { plan }: OwnAt): Result<never, BoxError> | undefined {
  const { left, right, over } = own;
  const least = shortest(left, right);
  if (isNegative(least))
    return err({ code: 'own-narrow', by: negate(least), clearance: subtract(plan.clearance, least) });
  // dowels are bored alike from both ends
  if (plan.dowels && !equals(left, right))
    return err({ code: 'own-lopsided', by: absolute(subtract(left, right)) });
  if (isNegative(over)) return err({ code: 'own-low', by: negate(over), most: add(plan.height, over) });
  return undefined;
}

/** What joins a front to its box, moved to where that stands on it: rabbets so much wider, dowels further in. */
export function onOwnFront<T extends Pick<Part, 'rabbets' | 'dowels'>>(
  cut: T,
  { left, right, over }: OwnFront,
): T {
  const past = (end: string) => (end === 'left' ? left : right);
  return {
    ...cut,
    rabbets: cut.rabbets.map((r) => ({ ...r, width: add(r.width, past(r.along.named)) })),
    ...(cut.dowels
      ? {
          dowels: cut.dowels.map((row) => ({
            ...row,
            from: row.in === 'face' ? add(row.from, left) : row.from,
            marks: row.marks.map((mark) => add(mark, over)),
          })),
        }
      : {}),
  };
}
