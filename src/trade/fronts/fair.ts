import {
  add,
  howMany,
  isNegative,
  isZero,
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
 * missing go to the largest remainders, a tie to the lower front.
 *
 * @param exact heights from the top, inches; @param at.total what they come to together; at.grain > 0
 * @returns heights whose sum is exact, in the order of the exact ones, none off by a whole grain; `left`, under a grain
 *   when any is shared, goes to the bottom reveal
 * @throws RangeError if the grain is not positive
 * @example fairRound(exact, { total: inches(923n, 32n), grain: inches(1n, 32n) }).heights // 4 3/8, 5 1/16, 5 25/32 …
 */
export function fairRound(
  exact: readonly Length[],
  at: FairAt,
): { readonly heights: readonly Length[]; readonly left: Length } {
  const given = (k: number): boolean => at.given?.[k] ?? false;
  const floors = exact.map((h, k) => (given(k) ? h : roundTo(h, at.grain, 'floor').value));
  const room = subtract(at.total, sum(floors));
  const extra = Number(toWhole(howMany(room, at.grain), 'floor'));
  const rest = (k: number): Length => subtract(exact[k] ?? zero, floors[k] ?? zero);
  const short = (k: number): boolean => {
    const least = at.least?.[k];
    return least !== undefined && less(floors[k] ?? zero, least);
  };
  const raised = new Set(
    exact
      .map((_, k) => k)
      .filter((k) => !given(k) && !isZero(rest(k)))
      .sort((a, b) => Number(short(b)) - Number(short(a)) || rest(b).compare(rest(a)) || b - a)
      .slice(0, Math.max(0, extra)),
  );
  const heights = floors.map((h, k) => (raised.has(k) ? add(h, at.grain) : h));
  return { heights, left: subtract(at.total, sum(heights)) };
}

/**
 * Equal fronts cut all alike: rounded down, what is left over goes into the gaps.
 *
 * @param total inches; @param count whole, >= 1; @param grain inches, > 0
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
 * So much taken off in all, shared in equal parts of whole grains: the total rounded up, the larger shares off the lower
 * fronts.
 *
 * @param trim inches, >= 0; @param count fronts that give, >= 1; @param grain inches, > 0
 * @returns by front from the top, inches
 * @throws RangeError if the trim is negative
 * @example shareTrim(inches(5n, 64n), 2, inches(1n, 64n)) // 1/32, 3/64
 */
export function shareTrim(trim: Length, count: number, grain: Length): readonly Length[] {
  if (isNegative(trim)) throw new RangeError('shareTrim: nothing to take off');
  const units = Number(toWhole(howMany(trim, grain), 'ceil'));
  const [base, more] = [Math.floor(units / count), units % count];
  return Array.from({ length: count }, (_, k) => times(grain, BigInt(base + (k >= count - more ? 1 : 0))));
}
