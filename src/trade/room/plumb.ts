import { add, isPositive, type Length, negate, shortest, subtract } from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import type { Row } from './row';
import { type AtSpot, greatestOf, leastOf, readTwice, type Spot, unmatched, valueAt } from './spot';

/**
 * Two plumb lines, one near each wall, so far apart; from each to its wall, away from the middle of the room counting
 * up (negative: the wall comes in over the line). Left and right read at the same spots. Inches.
 */
type PlumbLines = {
  readonly apart: Length;
  readonly left: readonly AtSpot[];
  readonly right: readonly AtSpot[];
  /** The widths measured across as well, where they were. */
  readonly across?: Row;
};

/** What stands between two walls. Inches. */
export type Plumb = {
  readonly widths: readonly AtSpot[];
  /** The least of the widths, of those reckoned and those measured. */
  readonly least: Length;
  /** Room for a plumb box: never more than `least`. */
  readonly width: Length;
  /** How much less that is than the least width: what the widths alone would have hidden. */
  readonly less: Length;
  /** The least offset of either side: there a plumb box touches first. */
  readonly nearLeft: Length;
  readonly nearRight: Length;
  /** Greatest less least offset: how far the wall is out of plumb and bowed together. */
  readonly outLeft: Length;
  readonly outRight: Length;
  /** Width measured across less width reckoned, at each spot that has both and where they differ. */
  readonly differs: readonly AtSpot[];
  readonly lines: PlumbLines;
};

export type PlumbError =
  | { readonly code: 'no-readings' }
  | { readonly code: 'not-positive' }
  | { readonly code: 'twice'; readonly side: 'left' | 'right'; readonly spot: Spot }
  /** A spot read on one side only. */
  | { readonly code: 'spots-differ'; readonly missing: 'left' | 'right'; readonly spot: Spot }
  /** The walls meet: nothing is left between, or so much too little. */
  | { readonly code: 'no-room'; readonly by: Length };

function refused({ apart, left, right }: PlumbLines): PlumbError | undefined {
  if (!isPositive(apart)) return { code: 'not-positive' };
  const [twiceLeft, twiceRight] = [readTwice(left), readTwice(right)];
  if (twiceLeft) return { code: 'twice', side: 'left', spot: twiceLeft };
  if (twiceRight) return { code: 'twice', side: 'right', spot: twiceRight };
  const odd = unmatched(left, right);
  if (odd)
    return { code: 'spots-differ', missing: odd.missing === 'first' ? 'left' : 'right', spot: odd.spot };
  return undefined;
}

const differences = (widths: readonly AtSpot[], across: readonly AtSpot[]): readonly AtSpot[] =>
  widths.flatMap(({ value, ...spot }) => {
    const read = valueAt(across, spot);
    const by = read && subtract(read, value);
    return by && by.n !== 0n ? [{ ...spot, value: by }] : [];
  });

/**
 * Room for a plumb box between two walls: apart + least offset left + least offset right. Two walls that lean one way
 * have the same width everywhere and less room than it.
 *
 * @param lines inches; apart > 0, offsets of any sign
 * @returns inches; `PlumbError` where the readings do not go together
 * @example plumbWidth(lines).value.width // Example 2 of room: 47
 */
export function plumbWidth(lines: PlumbLines): Result<Plumb, PlumbError> {
  const bad = refused(lines);
  if (bad) return err(bad);
  const { apart, left, right, across } = lines;
  const widths = left.map((l) => ({ ...l, value: add(add(apart, l.value), valueAt(right, l) ?? l.value) }));
  const ends = [leastOf(left), greatestOf(left), leastOf(right), greatestOf(right), leastOf(widths)];
  const [nearLeft, farLeft, nearRight, farRight, narrow] = ends.map((end) => end?.value);
  if (!nearLeft || !farLeft || !nearRight || !farRight || !narrow) return err({ code: 'no-readings' });
  const least = across ? shortest(narrow, across.least.value) : narrow;
  const width = shortest(add(add(apart, nearLeft), nearRight), least);
  if (!isPositive(width)) return err({ code: 'no-room', by: negate(width) });
  return ok({
    widths,
    least,
    width,
    less: subtract(least, width),
    nearLeft,
    nearRight,
    outLeft: subtract(farLeft, nearLeft),
    outRight: subtract(farRight, nearRight),
    differs: differences(widths, across?.trues ?? []),
    lines,
  });
}
