import { type Ratio, ratio } from '../../length/length';

/** Across the grain: `flat` along the growth rings, `quarter` across them. */
type Cut = 'flat' | 'quarter';

/**
 * Change of size for each 1 % of moisture, from 6 to 14 %, in hundred-thousandths: quartersawn (radial), flat-sawn
 * (tangential). Source: Wood Handbook, FPL-GTR-190, 2010, table 13-5. The softwoods and yellow-poplar are from memory.
 */
const table = {
  'red-oak': [158n, 369n],
  'white-oak': [180n, 365n],
  'hard-maple': [165n, 353n],
  'red-maple': [137n, 289n],
  'silver-maple': [102n, 252n],
  'yellow-birch': [256n, 338n],
  'paper-birch': [219n, 304n],
  'black-cherry': [126n, 248n],
  'black-walnut': [190n, 274n],
  'white-ash': [169n, 274n],
  beech: [190n, 431n],
  'red-alder': [151n, 256n],
  basswood: [230n, 330n],
  aspen: [119n, 234n],
  butternut: [116n, 223n],
  hickory: [169n, 315n],
  elm: [144n, 338n],
  sweetgum: [183n, 365n],
  sycamore: [172n, 296n],
  apple: [205n, 376n],
  'yellow-poplar': [158n, 289n],
  'douglas-fir': [165n, 267n],
  'white-pine': [71n, 212n],
  'ponderosa-pine': [133n, 216n],
  'loblolly-pine': [165n, 259n],
  'longleaf-pine': [176n, 263n],
  'white-fir': [112n, 245n],
  'western-redcedar': [111n, 234n],
  'sitka-spruce': [148n, 263n],
} as const satisfies Record<string, readonly [radial: bigint, tangential: bigint]>;

export type Species = keyof typeof table;

const hasSpecies = (key: string): key is Species => Object.hasOwn(table, key);

/** In the order of the table. */
export const species: readonly Species[] = Object.keys(table).filter(hasSpecies);

/**
 * The coefficient of a species; a cut that nobody knows counts as flat-sawn, which moves more.
 *
 * @returns share of the size for 1 % of moisture
 * @example coefficientOf('red-oak') // .00369
 */
export function coefficientOf(of: Species, cut: Cut = 'flat'): Ratio {
  const [radial, tangential] = table[of];
  return ratio(cut === 'quarter' ? radial : tangential, 100_000n);
}
