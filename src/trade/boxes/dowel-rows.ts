import { absolute, add, half, inches, isPositive, type Length, less, subtract } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Result } from '../../length/result';
import { unitsOf } from '../../length/tape';
import { type DowelError, type Dowels, dowelsFor, mostDowelSpacing } from '../fasteners/dowels';
import type { BoxPlan, DoweledAt } from './box-plan';

/** A row of holes for the dowels of one corner, bored in a piece. Inches. */
export type DowelRow = {
  readonly at: DoweledAt;
  /** In its end; or in its face, beside an end. */
  readonly in: 'face' | 'end';
  /** At both ends of the piece. */
  readonly both: boolean;
  readonly thick: Length;
  readonly deep: Length;
  /** From the outside face, or from the end, to the middle of the row. */
  readonly from: Length;
  /** Middles from the top edge. */
  readonly marks: readonly Length[];
};

/** From an edge to the first dowel: as near as is printed, since drawers are low. Source: README of fasteners. */
const end = inches(1n);

/** How high the back stands: over the bottom where that is slid in under it. */
const backHigh = ({ height, bottomHow, groove, bottom }: BoxPlan): Length =>
  bottomHow === 'captured' ? height : subtract(height, add(groove.up, bottom));

/** Whether the front stands over the ends of the sides, not between them. */
export const isOver = ({ lap }: Pick<BoxPlan, 'lap'>): boolean => isPositive(lap);

/**
 * The dowels of a corner: the end of the thing that butts is bored, and the face it meets.
 *
 * @param plan inches; its `dowels` are those at hand
 */
export function doweledAt(plan: BoxPlan, at: DoweledAt): Result<Dowels, DowelError> {
  const units = unitsOf(plan.tape);
  const both = at === 'front' && isOver(plan);
  const [part, mate] = both ? [plan.side, plan.front] : [at === 'front' ? plan.front : plan.back, plan.side];
  return dowelsFor({
    part,
    mate,
    run: at === 'front' ? plan.height : backHigh(plan),
    end: figureIn(units, end),
    most: figureIn(units, mostDowelSpacing),
    sizes: plan.dowels ?? [],
    units,
  });
}

/**
 * How far the nearest dowel of a corner reaches into the groove for the bottom; nothing where all are clear of it.
 *
 * @returns inches, > 0
 */
export function intoGroove(plan: BoxPlan, { row, size }: Dowels): Length | undefined {
  const { up, fit } = plan.groove;
  const wide = add(plan.bottom, fit);
  const middle = subtract(plan.height, add(up, half(wide)));
  const reach = half(add(wide, size.thick));
  const into = row.marks.map((mark) => subtract(reach, absolute(subtract(mark, middle))));
  return into.filter(isPositive).sort((a, b) => (less(a, b) ? 1 : -1))[0];
}
