import { isPositive, type Length, less, subtract } from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import type { Units } from '../../length/units';
import { anchorStrip } from './anchor-strip';

/** How a case is to be fixed to a wall, as far as it is said. Inches. */
type AnchorPlan = {
  readonly high: Length;
  /** The unit system of its job: inches when not said. */
  readonly units?: Units | undefined;
  /** Solid sheathing takes a screw anywhere; other walls only in their framing. */
  readonly wall: 'sheathing' | 'framing';
  /** Whole, >= 0. */
  readonly fixings?: number | undefined;
  /** What they go through at the back. */
  readonly cleat?: { readonly thick: Length; readonly wide: Length } | 'back-alone' | undefined;
  /** A washer under each head. */
  readonly washers?: boolean | undefined;
  /** What the case has of its own between its highest strip and its lowest. */
  readonly between?: Strip | undefined;
};

/** What of a case is fixed to a wall. */
type Strip = 'cleat' | 'nailer';

/** What stands on the card of every case, whatever else is known of it. */
type AnchorFact =
  | { readonly code: 'before-loading' }
  | { readonly code: 'fixings'; readonly least: number; readonly where: 'framing' | 'anywhere' }
  | { readonly code: 'cleat'; readonly thick: Length; readonly wide: Length }
  | {
      readonly code: 'strip-between';
      readonly past: Length;
      readonly over: Length;
      readonly has?: Strip | undefined;
    }
  | { readonly code: 'again-in-a-week' };

/** What the plan lacks, and by how much. */
type AnchorLack =
  | { readonly code: 'too-few'; readonly by: number }
  | { readonly code: 'back-alone' }
  | { readonly code: 'cleat-thin' | 'cleat-narrow'; readonly by: Length }
  | { readonly code: 'no-washers' };

/** What nobody said yet: it is asked for, and nothing is said to be lacking of it. */
type AnchorAsk = 'fixings' | 'cleat' | 'washers';

type AnchorError = { readonly code: 'high-not-positive' } | { readonly code: 'fixings-not-whole' };

/** Common practice, no source. */
const leastFixings = 2;

type AnchorCard = {
  readonly facts: readonly AnchorFact[];
  readonly lacks: readonly AnchorLack[];
  readonly asks: readonly AnchorAsk[];
};

/**
 * What an anchor card says: always the same facts, and what the plan lacks of them. What a fixing holds in a wall is
 * not reckoned: that is for its maker and for whoever answers for the building.
 *
 * @param plan inches, > 0
 * @example anchorCard(plan) // a case over 60 high has a strip between as well: Example 8 of install
 */
export function anchorCard(plan: AnchorPlan): Result<AnchorCard, AnchorError> {
  if (!isPositive(plan.high)) return err({ code: 'high-not-positive' });
  const { fixings = 0 } = plan;
  if (!Number.isInteger(fixings) || fixings < 0) return err({ code: 'fixings-not-whole' });
  const { high: over, ...cleat } = anchorStrip(plan.units);
  const past = subtract(plan.high, over);
  const facts: readonly AnchorFact[] = [
    { code: 'before-loading' },
    { code: 'fixings', least: leastFixings, where: plan.wall === 'sheathing' ? 'anywhere' : 'framing' },
    { code: 'cleat', ...cleat },
    ...(isPositive(past) ? [{ code: 'strip-between', past, over, has: plan.between } as const] : []),
    { code: 'again-in-a-week' },
  ];
  return ok({ facts, lacks: lacksOf(plan), asks: asksOf(plan) });
}

/** Whether heads bear on thin stuff. */
const isThin = ({ cleat: own, units }: AnchorPlan): boolean =>
  own !== undefined && (own === 'back-alone' || less(own.thick, anchorStrip(units).thick));

function asksOf(plan: AnchorPlan): readonly AnchorAsk[] {
  return [
    ...(plan.fixings === undefined ? (['fixings'] as const) : []),
    ...(plan.cleat === undefined ? (['cleat'] as const) : []),
    ...(plan.washers === undefined && isThin(plan) ? (['washers'] as const) : []),
  ];
}

function lacksOf(plan: AnchorPlan): readonly AnchorLack[] {
  const { fixings = leastFixings, cleat: own, washers = true } = plan;
  const least = anchorStrip(plan.units);
  const few = leastFixings - fixings;
  const short = (code: 'cleat-thin' | 'cleat-narrow', size: Length, wants: Length) =>
    less(size, wants) ? [{ code, by: subtract(wants, size) }] : [];
  const bears = (): readonly AnchorLack[] => {
    if (!own) return [];
    if (own === 'back-alone') return [{ code: 'back-alone' }];
    return [...short('cleat-thin', own.thick, least.thick), ...short('cleat-narrow', own.wide, least.wide)];
  };
  return [
    ...(few > 0 ? [{ code: 'too-few', by: few } as const] : []),
    ...bears(),
    ...(isThin(plan) && !washers ? [{ code: 'no-washers' } as const] : []),
  ];
}
