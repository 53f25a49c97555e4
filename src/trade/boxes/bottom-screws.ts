import { add, half, inches, type Length } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { unitsOf } from '../../length/tape';
import { type Schedule, screwSchedule } from '../install/schedule';
import type { Drawer } from './drawers';

/** From either side of a bottom to its first screw, and the most from one to the next. Common practice, no source. */
const end = inches(3n, 2n);
const most = inches(6n);

/** Screws up through a bottom into the lower edge of the back it was slid in under. Inches. */
type BottomScrews = Schedule & {
  /** From the back edge of the bottom to the middle of the back. */
  readonly in: Length;
  /** What they go through, and how high what they go into is. */
  readonly through: Length;
  readonly into: Length;
};

/**
 * What holds a bottom that was slid in: screws in one row along its back edge, which ends flush with the sides. Nothing
 * where it is captured.
 *
 * @returns inches; marks from its left end
 */
export function bottomScrews({ plan, box }: Pick<Drawer, 'plan' | 'box'>): BottomScrews | undefined {
  if (plan.bottomHow === 'captured') return undefined;
  const units = unitsOf(plan.tape);
  const run = box.bottomWide.value;
  const row = screwSchedule({ run, end: figureIn(units, end), most: figureIn(units, most), rows: 1 });
  if (!row.ok) return undefined;
  return {
    ...row.value,
    in: add(plan.behind, half(plan.back)),
    through: plan.bottom,
    into: box.backHeight.value,
  };
}
