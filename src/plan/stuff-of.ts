import type { Job, Stock } from '../job/job';
import { inches, type Ratio } from '../length/length';
import { type Stuff as Kind, type Slab, stiffnessOf } from '../trade/loads/stuff';

/** What a stock is of: as somebody said, else sheets are plywood and sticks are hardwood. */
export const kindOf = ({ stuff, kind }: Pick<Stock, 'stuff' | 'kind'>): Kind =>
  stuff ?? (kind === 'stick' ? 'hardwood' : 'ply');

/** A million, as a share of what a stiffness is kept in. */
const million = 1_000_000n;

/**
 * Modulus of elasticity of a stock along or across the way its pieces span: what somebody said, else the least of its
 * kind. None for solid wood across its grain.
 *
 * @returns pounds a square inch
 */
export const stiffOf = (stock: Stock | undefined, grain: 'along' | 'across'): Ratio | undefined =>
  stock?.stiff
    ? (stock.stiff.mul(million) as Ratio)
    : stiffnessOf(stock ? kindOf(stock) : 'ply', grain)?.least;

/** How a stock is weighed. */
export function weighedAs(
  job: Pick<Job, 'stock'>,
): (id: string) => Pick<Slab, 'stuff' | 'perFoot'> | undefined {
  return (id) => {
    const stock = job.stock.find((s) => s.id === id);
    if (!stock) return undefined;
    return { stuff: kindOf(stock), ...(stock.perFoot ? { perFoot: stock.perFoot } : {}) };
  };
}

/** How tall the strip on the front edge of a shelf is until it is said. Common practice, no source. Inches. */
export const usualTall = inches(3n, 2n);
