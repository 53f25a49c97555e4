import { type Length, shortest, zero } from '../length/length';
import type { Units } from '../length/units';
import { bottomScrews } from '../trade/boxes/bottom-screws';
import type { Drawer } from '../trade/boxes/drawers';
import type { ScrewSchedule } from '../trade/buying/screws';
import { biteIn, type Screw, screwFor } from '../trade/install/screw';
import type { BankPlan } from './bank-plan';

/**
 * The screw up through the bottoms of a bank into the edges of their backs, its head flush: one for all of them, which
 * stays in the lowest back. Nothing where bottoms are captured.
 */
export function bottomScrew(
  drawers: readonly Drawer[],
  lengths: readonly Length[],
  units?: Units,
): Screw | undefined {
  const [first, ...rest] = drawers.flatMap((drawer) => bottomScrews(drawer) ?? []);
  if (!first) return undefined;
  const into = shortest(first.into, ...rest.map((row) => row.into));
  const bite = biteIn(units, 'edge');
  // a thin bottom is held by little, and the back is high: the shortest that bites
  return screwFor({ through: first.through, into, sunk: zero, ...bite, lengths, pick: 'shortest' });
}

/** Screws of the bottoms of a bank, for the list to buy. */
export function bottomsToBuy(
  { bank: { units }, drawers }: BankPlan,
  bank: string,
  lengths: readonly Length[],
): readonly ScrewSchedule[] {
  const all = drawers?.ok ? drawers.value.drawers : [];
  const long = bottomScrew(all, lengths, units)?.pick;
  const each = all.reduce((n, drawer) => n + (bottomScrews(drawer)?.count ?? 0), 0);
  return long ? [{ bank, long, pieces: 1, each, along: true }] : [];
}
