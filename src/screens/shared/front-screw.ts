import { inches, zero } from '../../length/length';
import { type BankPlan, thickIn } from '../../plan/bank-plan';
import type { Plan } from '../../plan/plan';

/** Least bite in the face of a front, and what must stay in front of the tip. Common practice, no source. */
const bite = inches(3n, 8n);
const margin = inches(1n, 8n);

/** What a screw from inside a box into its front goes through, and into; the head flush. */
export function frontScrew({ bank }: BankPlan, plan: Plan | undefined) {
  const thick = thickIn(bank, plan?.stuff ?? []);
  const [through, into] = [thick('boxFront'), thick('front')];
  if (!through || !into) return undefined;
  return { through, into, sunk: zero, leastBite: bite, margin };
}
