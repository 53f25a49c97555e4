import { add, inches, isPositive, type Length, less, shortest, subtract } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { err, ok, type Result } from '../../length/result';
import type { Units } from '../../length/units';
import type { Row } from './row';
import { type AtSpot, greatestOf, leastOf, readTwice, type Spot, unmatched, valueAt } from './spot';

/** A level line round the walls: from it down to the floor and up to the ceiling, at the same spots. Inches, > 0. */
type LevelLine = {
  readonly drops: readonly AtSpot[];
  readonly rises: readonly AtSpot[];
  /** The heights measured straight from floor to ceiling as well, where they were. */
  readonly upright?: Row;
};

/** What stands between floor and ceiling. Inches. */
export type Level = {
  readonly heights: readonly AtSpot[];
  /** The least of the heights, of those reckoned and those measured. */
  readonly least: Length;
  /** Room for a level box, from the high point of the floor to the low point of the ceiling: at most `least`. */
  readonly height: Length;
  /** How much less that is than the least height. */
  readonly less: Length;
  readonly leastDrop: Length;
  readonly leastRise: Length;
  /** How far the floor and the ceiling are out of level. */
  readonly floorOut: Length;
  readonly ceilingOut: Length;
  readonly line: LevelLine;
};

export type LevelError =
  | { readonly code: 'no-readings' }
  | { readonly code: 'not-positive'; readonly side: 'drop' | 'rise'; readonly spot: Spot }
  | { readonly code: 'twice'; readonly side: 'drop' | 'rise'; readonly spot: Spot }
  /** A spot read one way only. */
  | { readonly code: 'spots-differ'; readonly missing: 'drop' | 'rise'; readonly spot: Spot }
  /** The drops differ by so much more than a floor does: one is misread. */
  | {
      readonly code: 'misread';
      readonly least: AtSpot;
      readonly greatest: AtSpot;
      readonly by: Length;
      readonly most: Length;
    };

/** Drops that differ by more are misread: no floor falls so much under a case. Common practice, no source. Inches. */
export const mostFall = inches(3n);

function refused({ drops, rises }: LevelLine): LevelError | undefined {
  for (const [side, row] of [
    ['drop', drops],
    ['rise', rises],
  ] as const) {
    const twice = readTwice(row);
    if (twice) return { code: 'twice', side, spot: twice };
    const none = row.find(({ value }) => !isPositive(value));
    if (none) return { code: 'not-positive', side, spot: { at: none.at, plane: none.plane } };
  }
  const odd = unmatched(drops, rises);
  if (odd)
    return { code: 'spots-differ', missing: odd.missing === 'first' ? 'drop' : 'rise', spot: odd.spot };
  return undefined;
}

/**
 * Room for a level case between floor and ceiling: least drop + least rise, not the least of the heights.
 *
 * @param line inches; @param units of the job
 * @returns inches; `LevelError` where the readings do not go together
 * @example levelHeight(line).value.height // Example 4 of room: 95 7/8
 */
export function levelHeight(line: LevelLine, units?: Units): Result<Level, LevelError> {
  const bad = refused(line);
  if (bad) return err(bad);
  const { drops, rises, upright } = line;
  const heights = drops.map((d) => ({ ...d, value: add(d.value, valueAt(rises, d) ?? d.value) }));
  const [high, low, narrow] = [leastOf(drops), greatestOf(drops), leastOf(heights)];
  const [under, over] = [leastOf(rises), greatestOf(rises)];
  if (!high || !low || !narrow || !under || !over) return err({ code: 'no-readings' });
  const floorOut = subtract(low.value, high.value);
  const most = figureIn(units, mostFall);
  if (less(most, floorOut))
    return err({ code: 'misread', least: high, greatest: low, by: subtract(floorOut, most), most });
  const least = upright ? shortest(narrow.value, upright.least.value) : narrow.value;
  const height = shortest(add(high.value, under.value), least);
  return ok({
    heights,
    least,
    height,
    less: subtract(least, height),
    leastDrop: high.value,
    leastRise: under.value,
    floorOut,
    ceilingOut: subtract(over.value, under.value),
    line,
  });
}

/**
 * A level case of any height at every spot: what is under it and over it.
 *
 * @param level as `levelHeight` found it; @param height of the case, inches, > 0
 * @returns inches: `under`, the floor below the case, >= 0; `over`, up to the ceiling, negative where it binds
 * @example heightAt(level, inches(765n, 8n)) // Example 4 of room: over 3/8, 11/16, 1/4
 */
export function heightAt(
  { line, leastDrop }: Level,
  height: Length,
): { readonly under: readonly AtSpot[]; readonly over: readonly AtSpot[] } {
  const under = line.drops.map((d) => ({ ...d, value: subtract(d.value, leastDrop) }));
  const over = line.rises.map((r) => ({ ...r, value: subtract(add(r.value, leastDrop), height) }));
  return { under, over };
}
