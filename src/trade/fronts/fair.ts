import {
  add,
  compare,
  howMany,
  isNegative,
  isPositive,
  type Length,
  less,
  over,
  subtract,
  sum,
  times,
  zero,
} from '../../length/length';
import { roundTo, toWhole } from '../../length/round';

type FairAt = {
  readonly total: Length;
  readonly grain: Length;
  /** Which heights are given: they stand. */
  readonly given?: readonly boolean[];
  /** What a shared height may not fall under. */
  readonly least?: readonly (Length | undefined)[];
};

/**
 * Heights rounded together to whole grains, never one by one: every shared one is rounded down, and the grains that are
 * missing go to the largest remainders, a tie to the lower front. One that falls under its least has a grain from one
 * that can spare it over its own, first from one that was given a missing grain: what goes into a drawer must go in.
 * Only then may a front be off by a grain or more, or the order of two near heights turn.
 *
 * @param exact heights from the top, inches, > 0, none under its least, their sum `total` when any is shared
 * @param at.total what they come to together, inches; @param at.grain inches, > 0
 * @returns inches from the top: the sum is exact, the order that of the exact ones, none off by a whole grain; `left`,
 *   inches, under a grain when any is shared, goes to the bottom reveal
 * @throws RangeError if the grain is not positive
 * @example fairRound(exact, { total: inches(923n, 32n), grain: inches(1n, 32n) }).heights // 4 3/8, 5 1/16, 5 25/32 …
 */
export function fairRound(
  exact: readonly Length[],
  at: FairAt,
): { readonly heights: readonly Length[]; readonly left: Length } {
  const shared = exact.flatMap((_, k) => (at.given?.[k] ? [] : [k]));
  const floors = exact.map((h, k) => (shared.includes(k) ? roundTo(h, at.grain, 'floor').value : h));
  const room = subtract(at.total, sum(floors));
  const missing = Number(toWhole(howMany(room, at.grain), 'floor'));
  const rest = (k: number): Length => subtract(exact[k] ?? zero, floors[k] ?? zero);
  const raised = new Set(
    [...shared].sort((a, b) => compare(rest(b), rest(a)) || b - a).slice(0, Math.max(0, missing)),
  );
  const fair = floors.map((h, k) => (raised.has(k) ? add(h, at.grain) : h));
  const heights = at.least ? lifted(fair, { exact, shared, ...at }) : fair;
  return { heights, left: subtract(at.total, sum(heights)) };
}

/** How far a height is under its least; not positive: it keeps it. */
const underLeast = (heights: readonly Length[], k: number, at: FairAt): Length =>
  subtract(at.least?.[k] ?? zero, heights[k] ?? zero);

type Lifting = FairAt & { readonly exact: readonly Length[]; readonly shared: readonly number[] };

/** Grain by grain from the front that has most over its exact height to the one farthest under its least. */
function lifted(heights: readonly Length[], at: Lifting): readonly Length[] {
  const under = (k: number): Length => underLeast(heights, k, at);
  const risen = (k: number): Length => subtract(heights[k] ?? zero, at.exact[k] ?? zero);
  const keeps = (k: number): boolean =>
    !isPositive(add(under(k), at.grain)) && less(at.grain, heights[k] ?? zero);
  const low = at.shared
    .filter((k) => isPositive(under(k)))
    .sort((a, b) => compare(under(b), under(a)) || b - a)[0];
  const from = at.shared.filter(keeps).sort((a, b) => compare(risen(b), risen(a)) || a - b)[0];
  if (low === undefined || from === undefined) return heights;
  const moved = heights.map((h, k) =>
    k === low ? add(h, at.grain) : k === from ? subtract(h, at.grain) : h,
  );
  return lifted(moved, at);
}

/**
 * Equal fronts cut all alike: rounded down, what is left over goes into the gaps.
 *
 * @param total inches; @param count whole, >= 1; @param grain inches, > 0
 * @returns inches; `left` < count grains
 * @throws RangeError if the count is 0 or the grain not positive
 * @example alike(inches(923n, 32n), 5, inches(1n, 32n)) // each 5 3/4, left 3/32
 */
export function alike(
  total: Length,
  count: number,
  grain: Length,
): { readonly each: Length; readonly left: Length } {
  const each = roundTo(over(total, BigInt(count)), grain, 'floor').value;
  return { each, left: subtract(total, times(each, BigInt(count))) };
}

/**
 * So much taken off in all, shared in equal parts of whole grains: the total rounded up, the larger shares off the
 * lower fronts.
 *
 * @param trim inches, >= 0; @param count fronts that give, whole, >= 1; @param grain inches, > 0
 * @returns by front from the top, inches
 * @throws RangeError if the trim is negative or no front gives
 * @example shareTrim(inches(5n, 64n), 2, inches(1n, 64n)) // 1/32, 3/64
 */
export function shareTrim(trim: Length, count: number, grain: Length): readonly Length[] {
  if (isNegative(trim)) throw new RangeError('shareTrim: nothing to take off');
  if (count < 1) throw new RangeError('shareTrim: no front gives');
  const units = Number(toWhole(howMany(trim, grain), 'ceil'));
  const [base, more] = [Math.floor(units / count), units % count];
  return Array.from({ length: count }, (_, k) => times(grain, BigInt(base + (k >= count - more ? 1 : 0))));
}
