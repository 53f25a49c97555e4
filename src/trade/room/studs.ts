import {
  add,
  half,
  howMany,
  isPositive,
  type Length,
  less,
  subtract,
  times,
  zero,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { type Rounded, roundTo, toWhole } from '../../length/round';

/** A stretch of the wall where nothing may be fastened. Inches from the same end as everything else. */
type Zone = { readonly from: Length; readonly to: Length };

/** One edge of one stud found, the spacing known, and a cleat to be fastened. Inches, along the wall from one end. */
export type StudPlan = {
  readonly found: Length;
  /** Which edge of the stud was found. */
  readonly edge: 'left' | 'right';
  /** How thick a stud is. */
  readonly stud: Length;
  /** Centre to centre. */
  readonly spacing: Length;
  readonly cleat: { readonly from: Length; readonly to: Length };
  /** No fastener nearer than this to an end of the cleat. */
  readonly end: Length;
  readonly zones: readonly Zone[];
  /** No fastener nearer than this to a zone. */
  readonly keep: Length;
};

/** Why no fastener goes into a stud behind the cleat; `by` more would do. Inches. */
export type Refused =
  | { readonly why: 'in-zone'; readonly at: Rounded; readonly zone: Zone }
  | { readonly why: 'near-zone'; readonly at: Rounded; readonly zone: Zone; readonly by: Length }
  | { readonly why: 'near-end'; readonly at: Rounded; readonly by: Length };

export type Studs = {
  /** Centres to fasten at, each with what its mark left. A guess until each is proved. */
  readonly fix: readonly Rounded[];
  readonly refused: readonly Refused[];
  /** Fewer than two: another height, or solid backing. */
  readonly tooFew: boolean;
};

export type StudError =
  | { readonly code: 'not-positive'; readonly what: 'stud' | 'grain' }
  | { readonly code: 'negative'; readonly what: 'end' | 'keep'; readonly by: Length }
  /** Studs so close would touch: the spacing must be more than the stud, and is `by` too little. */
  | { readonly code: 'spacing'; readonly by: Length }
  /** The two ends are one or turned round, or the two ends' margins leave nothing of the cleat. */
  | { readonly code: 'cleat'; readonly by: Length }
  | { readonly code: 'zone'; readonly zone: Zone; readonly by: Length };

function refusedPlan({ stud, spacing, cleat, end, keep, zones }: StudPlan): StudError | undefined {
  if (!isPositive(stud)) return { code: 'not-positive', what: 'stud' };
  if (less(end, zero)) return { code: 'negative', what: 'end', by: subtract(zero, end) };
  if (less(keep, zero)) return { code: 'negative', what: 'keep', by: subtract(zero, keep) };
  if (!less(stud, spacing)) return { code: 'spacing', by: subtract(stud, spacing) };
  if (!less(cleat.from, cleat.to)) return { code: 'cleat', by: subtract(cleat.from, cleat.to) };
  const within = subtract(subtract(cleat.to, cleat.from), times(end, 2n));
  if (less(within, zero)) return { code: 'cleat', by: subtract(zero, within) };
  const turned = zones.find(({ from, to }) => less(to, from));
  return turned && { code: 'zone', zone: turned, by: subtract(turned.from, turned.to) };
}

/** How far a place lies outside a zone: below 0 or 0 within it. */
const outside = (at: Length, { from, to }: Zone): Length =>
  less(at, from) ? subtract(from, at) : subtract(at, to);

function refusal(at: Length, mark: Rounded, plan: StudPlan): Refused | undefined {
  const inZone = plan.zones.find((zone) => !isPositive(outside(at, zone)));
  if (inZone) return { why: 'in-zone', at: mark, zone: inZone };
  const near = plan.zones.find((zone) => less(outside(at, zone), plan.keep));
  if (near) return { why: 'near-zone', at: mark, zone: near, by: subtract(plan.keep, outside(at, near)) };
  const { from, to } = plan.cleat;
  const toEnd = less(subtract(at, from), subtract(to, at)) ? subtract(at, from) : subtract(to, at);
  if (less(toEnd, plan.end)) return { why: 'near-end', at: mark, by: subtract(plan.end, toEnd) };
  return undefined;
}

/**
 * Where studs stand behind a cleat, reckoned from one found edge both ways: the exact spacing, each mark rounded for
 * itself. A centre just at the end's margin, or just so far from a zone as wanted, is taken.
 *
 * @param plan inches; spacing > stud > 0, margins >= 0, places of any sign
 * @param grain of the tape, inches, > 0
 * @returns inches; studs beside the cleat are not listed
 * @example studsBehind(plan, inches(1n, 16n)).value.fix // Example 7 of room: 12, 28
 */
export function studsBehind(plan: StudPlan, grain: Length): Result<Studs, StudError> {
  const bad = isPositive(grain) ? refusedPlan(plan) : ({ code: 'not-positive', what: 'grain' } as const);
  if (bad) return err(bad);
  const { found, edge, stud, spacing, cleat } = plan;
  const centre = edge === 'left' ? add(found, half(stud)) : subtract(found, half(stud));
  const first = toWhole(howMany(subtract(cleat.from, centre), spacing), 'ceil');
  const last = toWhole(howMany(subtract(cleat.to, centre), spacing), 'floor');
  const fix: Rounded[] = [];
  const refused: Refused[] = [];
  for (let k = first; k <= last; k++) {
    const at = add(centre, times(spacing, k));
    const mark = roundTo(at, grain, 'halfExpand');
    const why = refusal(at, mark, plan);
    if (why) refused.push(why);
    else fix.push(mark);
  }
  return ok({ fix, refused, tooFew: fix.length < 2 });
}
