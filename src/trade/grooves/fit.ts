import {
  add,
  compare,
  inches,
  isPositive,
  type Length,
  less,
  longest,
  shortest,
  subtract,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { type Rounded, roundTo } from '../../length/round';

/** Clearances over the thickest reading, inches. Common practice, no source. */
export const clearances = {
  gluedSnug: inches(3n, 1000n),
  glued: inches(5n, 1000n),
  gluedEasy: inches(8n, 1000n),
  slides: inches(1n, 32n),
  slidesEasy: inches(1n, 16n),
} as const;

/** Readings that differ by more are two lots, not one. Common practice, no source. */
export const leastSpreadToWarn = inches(1n, 64n);
/** A glue line looser than this is weak. Common practice, no source. */
export const loosestGlueLine = inches(15n, 1000n);

export type Fit = {
  /** For the stack: thickest reading plus clearance, exact. Never set a stack from the 64th. */
  readonly width: Length;
  /** For a mark. */
  readonly nearest64: Rounded;
  readonly thinnest: Length;
  readonly thickest: Length;
  readonly spread: Length;
  /** Play at the thinnest place. */
  readonly loosest: Length;
  readonly wideSpread: boolean;
  /** When a glued fit is too loose at the thinnest: the readings in two groups, each for a stack of its own. */
  readonly groups?: readonly [readonly Length[], readonly Length[]];
};

export type FitError =
  | { readonly code: 'no-readings' }
  | { readonly code: 'not-positive'; readonly at: number };

/**
 * Groove width from the sheet as measured: the thickest reading sets the width, the thinnest the loosest place.
 *
 * @param readings thicknesses by calipers, inches, at least one, > 0
 * @param clearance over the thickest, inches
 * @param glued whether a weak glue line is to be warned of
 * @example fitFrom(readings, inches(5n, 1000n), true) // .712 thickest: .717
 */
export function fitFrom(
  readings: readonly Length[],
  clearance: Length,
  glued: boolean,
): Result<Fit, FitError> {
  const [first, ...rest] = readings;
  if (!first) return err({ code: 'no-readings' });
  const bad = readings.findIndex((r) => !isPositive(r));
  if (bad >= 0) return err({ code: 'not-positive', at: bad });
  const thickest = longest(first, ...rest);
  const thinnest = shortest(first, ...rest);
  const width = add(thickest, clearance);
  const loosest = subtract(width, thinnest);
  const spread = subtract(thickest, thinnest);
  return ok({
    width,
    nearest64: roundTo(width, inches(1n, 64n), 'halfExpand'),
    thinnest,
    thickest,
    spread,
    loosest,
    wideSpread: less(leastSpreadToWarn, spread),
    ...(glued && less(loosestGlueLine, loosest) ? { groups: twoGroups(readings) } : {}),
  });
}

/** Splits readings at their widest gap, thin ones first. */
function twoGroups(readings: readonly Length[]): readonly [readonly Length[], readonly Length[]] {
  const sorted = [...readings].sort(compare);
  const gap = (k: number): Length => {
    const a = sorted[k - 1];
    const b = sorted[k];
    return a && b ? subtract(b, a) : inches(0n);
  };
  let cut = Math.min(1, sorted.length);
  for (let k = 2; k < sorted.length; k += 1) if (less(gap(cut), gap(k))) cut = k;
  return [sorted.slice(0, cut), sorted.slice(cut)];
}
