import { add, inches, type Length, longest, shortest, zero } from '../length/length';
import { figureIn } from '../length/metric-figures';
import type { Units } from '../length/units';
import type { ScrewSchedule } from '../trade/buying/screws';
import type { HungRole } from '../trade/carcass/part-name';
import { type Schedule, screwSchedule } from '../trade/install/schedule';
import { type Screw, screwFor, usualBites, usualTipMargin } from '../trade/install/screw';
import type { BankPlan } from './bank-plan';
import { packingOf } from './packing';
import type { Plan } from './plan';

/** From either end of a runner to its first screw, and the most from one to the next. Common practice, no source. */
const end = inches(3n, 2n);
const most = inches(6n);

const onWall: readonly HungRole[] = ['runner', 'hangstrip', 'kicker'];

/** Screws along a runner, strip or kicker so long, from its front end. Inches. */
export function runnerRow(run: Length, units: Units | undefined): Schedule | undefined {
  const row = screwSchedule({ run, end: figureIn(units, end), most: figureIn(units, most), rows: 1 });
  return row.ok ? row.value : undefined;
}

/**
 * The screw through a runner, with what packs it out behind a frame, into the thinnest wall of its bays. Nothing where
 * nobody knows the walls: in no case of the job.
 */
export function runnerScrew(
  { worked }: Pick<Plan, 'worked'>,
  { bank, drawers }: BankPlan,
  lengths: readonly Length[],
): Screw | undefined {
  const found = worked.get(bank.of ?? '');
  const hung = drawers?.ok ? drawers.value.slides.hung : undefined;
  if (!found?.ok || !hung) return undefined;
  const { thick, bays } = found.value.sizes;
  const inner = bank.bay > 1 || bank.bay + bank.across - 1 < bays.length;
  const into = inner ? shortest(thick('side'), thick('partition')) : thick('side');
  const packed = packingOf(worked, bank).flatMap(({ left, right }) => [left, right]);
  const through = add(hung.thick, longest(zero, ...packed));
  const bite = { leastBite: usualBites.face, margin: usualTipMargin };
  return screwFor({ through, into, sunk: zero, ...bite, lengths });
}

/** Screws of what the boxes of a bank hang on, for the list to buy. */
export function runnerScrewsToBuy(
  plan: Pick<Plan, 'worked'>,
  bank: BankPlan,
  name: string,
  lengths: readonly Length[],
): readonly ScrewSchedule[] {
  const long = runnerScrew(plan, bank, lengths)?.pick;
  const each = bank.parts
    .filter((part) => onWall.some((role) => role === part.name.role))
    .reduce(
      (n, { length, copies }) => n + copies * (runnerRow(length.mark.value, bank.bank.units)?.count ?? 0),
      0,
    );
  return long && each > 0 ? [{ bank: `${name}, runners`, long, pieces: 1, each, along: true }] : [];
}
