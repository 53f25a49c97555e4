import {
  add,
  compare,
  inches,
  isNegative,
  isPositive,
  type Length,
  less,
  longest,
  negate,
  shortest,
  subtract,
  zero,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { err, ok, type Result } from '../../length/result';
import { type Rounded, roundTo } from '../../length/round';
import type { Units } from '../../length/units';

/** Clearances over the thickest reading, inches. Common practice, no source. */
export const clearances = {
  gluedSnug: inches(3n, 1000n),
  glued: inches(5n, 1000n),
  gluedEasy: inches(8n, 1000n),
  slides: inches(1n, 32n),
  slidesEasy: inches(1n, 16n),
};

type Clearances = typeof clearances;

const inMillimetres = Object.fromEntries(
  Object.entries(clearances).map(([kind, clearance]) => [kind, figureIn('mm', clearance)]),
) as Clearances;

/** The same, round in the unit of the job. */
export const clearancesIn = (units: Units): Clearances => (units === 'mm' ? inMillimetres : clearances);

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
  /** A glued fit too loose at the thinnest. */
  readonly weakGlueLine: boolean;
  /** When that is for the readings' spread: the readings in two groups, each for a stack of its own. */
  readonly groups?: readonly [readonly Length[], readonly Length[]];
};

export type FitError =
  | { readonly code: 'no-readings' }
  | { readonly code: 'not-positive'; readonly at: number }
  /** The groove would be narrower than the sheet, by so much. */
  | { readonly code: 'clearance-negative'; readonly by: Length };

/**
 * Groove width from the sheet as measured: the thickest reading sets the width, the thinnest the loosest place.
 *
 * @param readings thicknesses by calipers, inches, at least one, > 0
 * @param clearance over the thickest, inches, >= 0
 * @param glued whether a weak glue line is to be warned of
 * @param units of the job: its limits are round in them
 * @example fitFrom(readings, inches(5n, 1000n), true) // .712 thickest: .717, Example 16 of grooves
 */
export function fitFrom(
  readings: readonly Length[],
  clearance: Length,
  glued: boolean,
  units?: Units,
): Result<Fit, FitError> {
  const [first, ...rest] = readings;
  if (!first) return err({ code: 'no-readings' });
  const bad = readings.findIndex((r) => !isPositive(r));
  if (bad >= 0) return err({ code: 'not-positive', at: bad });
  if (isNegative(clearance)) return err({ code: 'clearance-negative', by: negate(clearance) });
  const thickest = longest(first, ...rest);
  const thinnest = shortest(first, ...rest);
  const width = add(thickest, clearance);
  const loosest = subtract(width, thinnest);
  const spread = subtract(thickest, thinnest);
  const weakGlueLine = glued && less(figureIn(units, loosestGlueLine), loosest);
  return ok({
    width,
    nearest64: roundTo(width, inches(1n, 64n), 'halfExpand'),
    thinnest,
    thickest,
    spread,
    loosest,
    wideSpread: less(figureIn(units, leastSpreadToWarn), spread),
    weakGlueLine,
    ...(weakGlueLine && isPositive(spread) ? { groups: twoGroups(readings) } : {}),
  });
}

/** Splits readings, thin ones first, so that the wider of the two groups is as narrow as can be. */
function twoGroups(readings: readonly Length[]): readonly [readonly Length[], readonly Length[]] {
  const sorted = [...readings].sort(compare);
  const spreadOf = (group: readonly Length[]): Length => {
    const [first = zero] = group;
    return subtract(group[group.length - 1] ?? first, first);
  };
  const wider = (cut: number): Length => longest(spreadOf(sorted.slice(0, cut)), spreadOf(sorted.slice(cut)));
  let best = 1;
  for (let cut = 2; cut < sorted.length; cut += 1) if (less(wider(cut), wider(best))) best = cut;
  return [sorted.slice(0, best), sorted.slice(best)];
}
