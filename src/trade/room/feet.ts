import { compare, inches, isPositive, type Length, less, subtract } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { err, ok, type Result } from '../../length/result';
import type { Units } from '../../length/units';
import { mostFall } from './level-line';

/** One foot: front to back its row, side to side its number from the left, 1 the first. */
export type FootPlace = { readonly row: 'front' | 'middle' | 'back'; readonly number: number };

/** From one level line down to the floor under a foot, inches, > 0. */
export type FootDrop = FootPlace & { readonly drop: Length };

type FootShim = FootPlace & { readonly shim: Length };

export type LevelFeet = {
  /** Every foot in the order given; 0 on the high point. */
  readonly shims: readonly FootShim[];
  /** The feet on the high point: nothing goes under them. */
  readonly high: readonly FootPlace[];
  /** The thickest shim. */
  readonly most: Length;
  /** All feet in one row: a case shimmed so twists. */
  readonly oneRow: boolean;
  /** Shims over what is sound, `by` too thick: a scribed base instead. */
  readonly over: readonly (FootShim & { readonly limit: Length; readonly by: Length })[];
};

export type FeetError =
  | { readonly code: 'no-feet' }
  | { readonly code: 'twice'; readonly foot: FootPlace }
  | { readonly code: 'not-positive'; readonly foot: FootPlace }
  /** The drops differ by so much more than a floor falls: one is misread. */
  | {
      readonly code: 'misread';
      readonly least: FootPlace;
      readonly greatest: FootPlace;
      readonly by: Length;
      readonly most: Length;
    };

/** A shim over this wants a scribed base instead. Common practice, no source. Inches. */
const mostShim = inches(3n, 4n);

const placeOf = ({ row, number }: FootPlace): FootPlace => ({ row, number });
const samePlace = (a: FootPlace, b: FootPlace): boolean => a.row === b.row && a.number === b.number;

function refused(feet: readonly FootDrop[]): FeetError | undefined {
  const twice = feet.find((foot, k) => feet.slice(0, k).some((before) => samePlace(before, foot)));
  if (twice) return { code: 'twice', foot: placeOf(twice) };
  const none = feet.find(({ drop }) => !isPositive(drop));
  return none && { code: 'not-positive', foot: placeOf(none) };
}

/**
 * Shims for every foot, front to back and side to side from the same level line: drop less the least drop.
 *
 * @param feet inches, at least one, no foot twice
 * @param units of the job
 * @returns inches
 * @example levelFeet(feet).value.shims // Example 12 of room: 3/16, 0, 5/16, 1/16
 */
export function levelFeet(feet: readonly FootDrop[], units?: Units): Result<LevelFeet, FeetError> {
  const bad = refused(feet);
  if (bad) return err(bad);
  const byDrop = [...feet].sort((a, b) => compare(a.drop, b.drop));
  const [least, greatest] = [byDrop[0], byDrop[byDrop.length - 1]];
  if (!least || !greatest) return err({ code: 'no-feet' });
  const [fall, most] = [subtract(greatest.drop, least.drop), figureIn(units, mostFall)];
  if (less(most, fall)) {
    const ends = { least: placeOf(least), greatest: placeOf(greatest) };
    return err({ code: 'misread', ...ends, by: subtract(fall, most), most });
  }
  const limit = figureIn(units, mostShim);
  const shims = feet.map((foot) => ({ ...placeOf(foot), shim: subtract(foot.drop, least.drop) }));
  return ok({
    shims,
    high: shims.filter(({ shim }) => !isPositive(shim)).map(placeOf),
    most: fall,
    oneRow: shims.every(({ row }) => row === least.row),
    over: shims
      .filter(({ shim }) => less(limit, shim))
      .map((foot) => ({ ...foot, limit, by: subtract(foot.shim, limit) })),
  });
}
