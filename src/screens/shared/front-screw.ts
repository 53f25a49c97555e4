import { zero } from '../../length/length';
import { type BankPlan, thickIn } from '../../plan/bank-plan';
import type { Plan } from '../../plan/plan';
import { isOwnFront } from '../../trade/fronts/corner';
import { biteIn } from '../../trade/install/screw';

/** What a screw from inside a box into its front goes through, and into; the head flush. */
export function frontScrew({ bank }: BankPlan, plan: Plan | undefined) {
  if (isOwnFront(bank)) return undefined;
  const thick = thickIn(bank, plan?.stuff ?? []);
  const [through, into] = [thick('boxFront'), thick('front')];
  if (!through || !into) return undefined;
  return { through, into, sunk: zero, ...biteIn(bank.units, 'face') };
}
