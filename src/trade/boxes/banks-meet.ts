import { add, isPositive, type Length, less, subtract } from '../../length/length';
import type { Bank } from '../fronts/bank';
import { boxesIn, into, type Standing } from './boxes-standing';
import type { WorkedDrawers } from './drawers';

/**
 * A drawer that stands in one of another bank in its bay, with what it hangs on: over it, or under it. Inches.
 */
export type BanksMeet = {
  readonly drawer: number;
  readonly over: boolean;
  /** The other bank, and its drawer. */
  readonly other: Bank;
  readonly no: number;
  readonly by: Length;
  /** Over it: so far over the lower edges of their fronts its boxes stand at least. Under it: so high its box is. */
  readonly fits: Length;
};

/**
 * Where boxes that hang in wood meet those of another bank over or under a rail: behind it there is one room. The worst
 * of each other bank.
 *
 * @example banksMeet(upper, [lower])[0]?.by // by how much its lowest runner stands in the kicker below
 */
export const banksMeet = (own: WorkedDrawers, others: readonly WorkedDrawers[]): readonly BanksMeet[] =>
  others.flatMap((other) => {
    if (!isBeside(own, other)) return [];
    const met = baysOf(own).flatMap((bay) =>
      boxesIn(own, bay).flatMap((a) => boxesIn(other, bay).flatMap((b) => meeting(own, a, { other, b }))),
    );
    const [first, ...rest] = met;
    return first ? [rest.reduce((worst, each) => (less(worst.by, each.by) ? each : worst), first)] : [];
  });

/** Another bank of the same case of the job, one of the two hung in wood: where banks of no case stand is not known. */
const isBeside = (own: WorkedDrawers, other: WorkedDrawers): boolean => {
  const [a, b] = [own.fronts.bank, other.fronts.bank];
  return (
    a.of !== undefined && a.id !== b.id && a.of === b.of && Boolean(own.slides.hung ?? other.slides.hung)
  );
};

const baysOf = ({ fronts: { bank, columns } }: WorkedDrawers): readonly number[] =>
  columns.map(({ no }) => bank.bay + no - 1);

type Other = { readonly other: WorkedDrawers; readonly b: Standing };

function meeting(own: WorkedDrawers, a: Standing, { other, b }: Other): readonly BanksMeet[] {
  const by = into(a, b);
  if (!isPositive(by)) return [];
  const over = less(b.low, a.low);
  const fits = over ? add(own.slides.boxUp, by) : subtract(a.drawer.high, by);
  return [{ drawer: a.drawer.no, over, other: other.fronts.bank, no: b.drawer.no, by, fits }];
}
