import {
  add,
  half,
  inches,
  isNegative,
  isPositive,
  type Length,
  less,
  longest,
  negate,
  subtract,
  sum,
  zero,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Bank } from '../fronts/bank';
import { usualBank } from '../fronts/usual-bank';
import type { BoxPlan } from './box-plan';
import type { Hung, HungDrawer } from './hung';

/** Why boxes cannot hang so, by how much and what would fit. Inches. */
export type HungError =
  | { readonly code: 'hung-not-positive'; readonly field: 'runHigh' | 'stripUp' }
  | { readonly code: 'hung-negative'; readonly field: 'sidePlay' | 'backRoom' | 'kickRoom' | 'stripPlay' }
  /** A box between its runners would fall: they stand in no farther than its play. */
  | { readonly code: 'runner-thin'; readonly by: Length; readonly least: Length }
  /** The groove for a strip, as deep as that is thick, goes through the side, or into the dado for the back. */
  | { readonly code: 'strip-through' | 'strip-in-dado'; readonly by: Length; readonly most: Length }
  /** It meets the groove for the bottom behind it: up so much farther, at least so far up. */
  | { readonly code: 'strip-meets-bottom'; readonly by: Length; readonly least: Length }
  /** It comes out at the top edge; at most so far up. */
  | { readonly code: 'strip-off'; readonly by: Length; readonly most: Length }
  /** A stop block does not reach past the side, or leaves the box no way to come out. */
  | { readonly code: 'stop-short' | 'stop-shut'; readonly by: Length };

/** A stop block reaches so far past a side at least; so much stays between two cuts. Common practice, no source. */
const leastCatch = inches(1n, 4n);
const leastWeb = inches(1n, 8n);

/** What is said of what boxes hang on that cannot be: the first fault found. */
export function hungFault(hung: Hung, bank: Bank): HungError | undefined {
  if (!isPositive(hung.high)) return { code: 'hung-not-positive', field: 'runHigh' };
  if (bank.stripUp && !isPositive(bank.stripUp)) return { code: 'hung-not-positive', field: 'stripUp' };
  const negative = (['sidePlay', 'backRoom', 'kickRoom', 'stripPlay'] as const).find(
    (field) => bank[field] && isNegative(bank[field]),
  );
  return negative && { code: 'hung-negative', field: negative };
}

/** Why a box cannot hang so. */
export function boxHungFault(hung: Hung, plan: BoxPlan): HungError | undefined {
  const { thick, sidePlay, groove } = hung;
  if (groove) return grooveFault(hung, groove, plan);
  const least = add(sidePlay, half(plan.side));
  return less(sidePlay, thick) ? undefined : { code: 'runner-thin', by: subtract(least, thick), least };
}

type Groove = NonNullable<Hung['groove']>;

function grooveFault({ thick }: Hung, { up, wide }: Groove, plan: BoxPlan): HungError | undefined {
  const deep = thick;
  const web = (other: Length) => subtract(subtract(plan.side, other), deep);
  if (!isPositive(web(zero))) return { code: 'strip-through', by: negate(web(zero)), most: half(plan.side) };
  if (!isPositive(web(plan.backDado)))
    return {
      code: 'strip-in-dado',
      by: negate(web(plan.backDado)),
      most: subtract(plan.side, plan.backDado),
    };
  const clear = landOver(plan, { up, wide });
  if (isNegative(clear) && !isPositive(web(plan.groove.deep)))
    return { code: 'strip-meets-bottom', by: subtract(bottomTo(plan), up), least: bottomTo(plan) };
  const off = subtract(add(up, wide), plan.height);
  return isNegative(off) ? undefined : { code: 'strip-off', by: off, most: subtract(plan.height, wide) };
}

/** Upper wall of the groove for the bottom. */
const bottomTo = ({ groove, bottom }: BoxPlan): Length => sum([groove.up, bottom, groove.fit]);

/** Wood between the groove for a strip and that for the bottom, up the side; below 0 where they lie abreast. */
const landOver = (plan: BoxPlan, { up, wide }: Groove): Length =>
  longest(subtract(up, bottomTo(plan)), subtract(plan.groove.up, add(up, wide)));

/** Why stop blocks do not hold a drawer. */
export function stopFault({ stop }: HungDrawer, { units }: Bank): HungError | undefined {
  const least = figureIn(units, leastCatch);
  if (less(stop.catches, least)) return { code: 'stop-short', by: subtract(least, stop.catches) };
  return isPositive(stop.out) ? undefined : { code: 'stop-shut', by: negate(stop.out) };
}

/** What is worth a look in boxes that hang in wood. Limits are common practice, no source. Inches. */
export type HungWarning =
  /** A side rests on less of its runner than half of it. */
  | { readonly code: 'rests-little'; readonly on: Length; readonly half: Length }
  | { readonly code: 'strip-deep'; readonly deep: Length; readonly half: Length }
  /** Between the groove for a strip and what is cut in the other face so little is left. */
  | { readonly code: 'strip-web'; readonly left: Length; readonly least: Length }
  /** A kicker was asked for, and the runner that is it lies so far over the box. */
  | { readonly code: 'kicker-loose'; readonly drawer: number; readonly gap: Length };

export function hungWarnings(hung: Hung, plan: BoxPlan, bank: Bank): readonly HungWarning[] {
  const { thick, sidePlay, groove } = hung;
  const middle = half(plan.side);
  if (!groove) {
    const on = subtract(thick, sidePlay);
    return less(on, middle) ? [{ code: 'rests-little', on, half: middle }] : [];
  }
  const least = figureIn(bank.units, leastWeb);
  const abreast = less(landOver(plan, groove), zero) ? plan.groove.deep : zero;
  const left = subtract(plan.side, add(thick, longest(plan.backDado, abreast)));
  return [
    ...(less(middle, thick) ? [{ code: 'strip-deep', deep: thick, half: middle } as const] : []),
    ...(less(left, least) ? [{ code: 'strip-web', left, least } as const] : []),
  ];
}

/** The air under a runner that is a kicker, where that is more than the usual air over a box. */
export function kickerWarning(
  hung: Hung,
  { no, gap }: { readonly no: number; readonly gap: Length | undefined },
  bank: Bank,
): readonly HungWarning[] {
  const loose =
    hung.kickers && gap && less(usualBank(bank).play, gap) && less(gap, add(hung.room, hung.high));
  return loose ? [{ code: 'kicker-loose', drawer: no, gap }] : [];
}
