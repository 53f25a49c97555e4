import { howMany, inches, isPositive, type Length } from '../../length/length';
import type { Result } from '../../length/result';
import { toWhole } from '../../length/round';
import type { Bank } from '../fronts/bank';
import { usualBank } from '../fronts/usual-bank';
import { type TailPlan, type Tails, type TailsError, tailsOf, templateTails } from './tails';

/** The tails of a box as laid out, and the plan they follow. Inches. */
export type TailChoice = { readonly plan: TailPlan; readonly tails: Result<Tails, TailsError> };

/** A tail about so wide looks right and is quick to cut. Common practice, no source. */
const about = inches(5n, 4n);

/** The front end of a side: how high, how far the joint reaches, where the groove for the bottom runs out. Inches. */
export type SideEnd = {
  readonly height: Length;
  readonly reach: Length;
  readonly groove: { readonly up: Length; readonly wide: Length };
};

/**
 * The tails of a box side: as many as said; else the odd number nearest to one every inch and a quarter whose groove
 * lies inside a tail. By template the pitch decides.
 */
export function tailsFor(bank: Bank, { height, reach: long, groove }: SideEnd): TailChoice {
  const slope = bank.slope ?? usualBank(bank).slope;
  const pin = bank.pin ?? usualBank(bank).pin;
  const base = { height, pin, slope, long, groove };
  if (bank.tailsHow === 'template')
    return laid(templateTails({ ...base, pitch: bank.pitch ?? usualBank(bank).pitch }));
  const halfPin = bank.halfPin ?? usualBank(bank).halfPin;
  const free = (tails: number) => laid({ ...base, halfPin, tails });
  return bank.tails > 0 ? free(bank.tails) : (fitting(height).map(free).find(clear) ?? free(3));
}

const laid = (plan: TailPlan): TailChoice => ({ plan, tails: tailsOf(plan) });

const clear = ({ tails }: TailChoice): boolean => tails.ok && (tails.value.groove?.inside ?? true);

/** Odd counts, the nearest to one every inch and a quarter first; an odd count puts a tail in the middle. */
function fitting(height: Length): readonly number[] {
  const wanted = isPositive(height) ? Number(toWhole(howMany(height, about), 'halfExpand')) : 1;
  return [1, 3, 5, 7, 9, 11, 13].sort((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted) || a - b);
}
