import {
  howMany,
  inches,
  type Length,
  less,
  type Ratio,
  ratio,
  subtract,
  times,
  zero,
} from '../../length/length';
import { product } from './ratios';

/** What a piece is of. `pressed`: of fibres or chips, as particleboard, MDF and hardboard are. */
export type Stuff = 'ply' | 'hardwood' | 'softwood' | 'pressed';

/**
 * Pounds a square foot: oak 3/4 thick 2.8 (common practice, no source); Douglas-fir 34 pounds a cubic foot (Oregon
 * State University, wood properties); pressed board .8 as heavy as water, the middle of .6 to 1.0 (Wood Handbook,
 * FPL-GTR-190, 2010, table 12-1), water 62.4 pounds a cubic foot.
 */
const perInch: Record<Exclude<Stuff, 'ply'>, Ratio> = {
  hardwood: ratio(56n, 15n),
  softwood: ratio(34n, 12n),
  pressed: ratio(416n, 100n),
};

/** Birch ply: 1/4, which reads 7/32, .75 pounds a square foot; 23/32, 2.2. Common practice, no source. */
const thin = { thick: inches(7n, 32n), pounds: ratio(75n, 100n) };
const full = { thick: inches(23n, 32n), pounds: ratio(22n, 10n) };

/**
 * What a square foot weighs. Ply between its two known thicknesses goes by the straight line through them: a thin sheet
 * weighs more than its share of a thick one. Under and over them, and all else, in proportion. An estimate.
 *
 * @param thick inches, > 0
 * @returns pounds
 * @example perFootOf('ply', inches(7n, 32n)) // .75: Example 1 of loads
 */
export function perFootOf(stuff: Stuff, thick: Length): Ratio {
  if (stuff !== 'ply') return product(howMany(thick, inches(1n)), perInch[stuff]);
  if (less(thick, thin.thick)) return product(howMany(thick, thin.thick), thin.pounds);
  if (less(full.thick, thick)) return product(howMany(thick, full.thick), full.pounds);
  const share = howMany(subtract(thick, thin.thick), subtract(full.thick, thin.thick));
  return thin.pounds.add(product(share, full.pounds.sub(thin.pounds) as Ratio)) as Ratio;
}

/** A piece as it is weighed. Inches, > 0. */
export type Slab = {
  readonly long: Length;
  readonly wide: Length;
  readonly thick: Length;
  /** What is notched out of it. */
  readonly notch?: { readonly deep: Length; readonly high: Length } | undefined;
  /** Birch ply until it is said. */
  readonly stuff?: Stuff;
  /** What a square foot was found to weigh, pounds: it goes before the kind. */
  readonly perFoot?: Ratio;
};

/** Square inches in a square foot. */
const squareFoot = inches(144n);

/**
 * What one piece weighs, by area, thickness and kind. An estimate.
 *
 * @param at inches, > 0
 * @returns pounds
 * @example slabWeight({ long: inches(12n), wide: inches(12n), thick: inches(23n, 32n) }) // 2.2
 */
export function slabWeight({ long, wide, thick, notch, stuff = 'ply', perFoot }: Slab): Ratio {
  const area = (a: Length, b: Length): Length => times(a, howMany(b, inches(1n)));
  const out = notch ? area(notch.deep, notch.high) : zero;
  const feet = howMany(subtract(area(long, wide), out), squareFoot);
  return product(feet, perFoot ?? perFootOf(stuff, thick));
}

/**
 * How stiff a kind is when nobody measured it, least and greatest modulus of elasticity, pounds a square inch. Common
 * practice, no source; softwood from the Wood Handbook, FPL-GTR-190, 2010, table 5-3 (sugar pine to Douglas-fir).
 */
const stiffness: Record<
  Stuff,
  Record<'along' | 'across', readonly [least: bigint, most: bigint] | undefined>
> = {
  ply: { along: [1_200_000n, 1_500_000n], across: [600_000n, 800_000n] },
  hardwood: { along: [1_500_000n, 1_800_000n], across: undefined },
  softwood: { along: [1_190_000n, 1_950_000n], across: undefined },
  pressed: { along: [300_000n, 500_000n], across: [300_000n, 500_000n] },
};

/**
 * Modulus of elasticity of a kind, by which way the grain of its face runs to the span; the least is the one to reckon
 * with. Solid wood across its grain is no shelf, and has none.
 *
 * @returns pounds a square inch
 * @example stiffnessOf('ply', 'along')?.least // 1,200,000
 */
export function stiffnessOf(
  stuff: Stuff,
  grain: 'along' | 'across',
): { readonly least: Ratio; readonly most: Ratio } | undefined {
  const [least, most] = stiffness[stuff][grain] ?? [];
  return least && most ? { least: ratio(least), most: ratio(most) } : undefined;
}
