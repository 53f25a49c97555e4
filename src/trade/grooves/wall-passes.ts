import {
  add,
  compare,
  howMany,
  isNegative,
  isPositive,
  type Length,
  less,
  negate,
  over,
  subtract,
  times,
  zero,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { toWhole } from '../../length/round';

export type Wall = 'only' | 'near' | 'far' | 'between';

/** One pass: how far its near teeth stand past the groove's near edge, inches. */
export type Pass = { readonly wall: Wall; readonly offset: Length };

export type PassError =
  | { readonly code: 'cutter-too-wide'; readonly cutter: Length; readonly width: Length }
  /** Passes that do not meet leave wood standing, this much between two. */
  | { readonly code: 'overlap-negative'; readonly by: Length }
  | { readonly code: 'overlap-too-big'; readonly overlap: Length; readonly cutter: Length };

/** More passes for one groove than anybody makes: the overlap leaves next to nothing. */
const mostPasses = 1000n;

/**
 * Passes for a groove wider than its cutter: 1 + ceil((w - c)/(c - overlap)), evenly stepped by (w - c)/(passes - 1).
 * Both walls come first, near then far: they set the fit; what stands between is cleared after.
 *
 * @param width groove width, inches, > 0; @param cutter inches, > 0; @param overlap inches, >= 0, < cutter
 * @returns at least one pass, or that the cutter cannot make it
 * @throws RangeError if the cutter is not positive: a board or a shop with such a cutter is refused before
 * @example passesFor(inches(45n, 16n), inches(5n, 8n), inches(1n, 16n)) // 5 passes, step 35/64: Example 12 of grooves
 */
export function passesFor(
  width: Length,
  cutter: Length,
  overlap: Length,
): Result<readonly Pass[], PassError> {
  if (!isPositive(cutter)) throw new RangeError('passesFor: cutter must be > 0');
  if (less(width, cutter)) return err({ code: 'cutter-too-wide', cutter, width });
  const rest = subtract(width, cutter);
  if (compare(rest, zero) === 0) return ok([{ wall: 'only', offset: zero }]);
  if (isNegative(overlap)) return err({ code: 'overlap-negative', by: negate(overlap) });
  const gain = subtract(cutter, overlap);
  if (!isPositive(gain)) return err({ code: 'overlap-too-big', overlap, cutter });
  const more = toWhole(howMany(rest, gain), 'ceil');
  if (more >= mostPasses) return err({ code: 'overlap-too-big', overlap, cutter });
  const step = over(rest, more);
  const between = Array.from(
    { length: Number(more) - 1 },
    (_, k): Pass => ({
      wall: 'between',
      offset: times(step, BigInt(k + 1)),
    }),
  );
  return ok([{ wall: 'near', offset: zero }, { wall: 'far', offset: rest }, ...between]);
}

/**
 * How far each pass moves: (w - c)/(passes - 1); 0 for a single pass.
 *
 * @param width, cutter inches; @param passes whole, >= 1
 * @example passStep(inches(45n, 16n), inches(5n, 8n), 5) // 35/64
 */
export function passStep(width: Length, cutter: Length, passes: number): Length {
  return passes < 2 ? zero : over(subtract(width, cutter), BigInt(passes - 1));
}

/** Where a pass ends: its far teeth past the groove's near edge. */
export const passEnd = (pass: Pass, cutter: Length): Length => add(pass.offset, cutter);
