import {
  add,
  asInches,
  asNumber,
  inches,
  isNegative,
  type Length,
  longest,
  over,
  type Ratio,
  ratio,
  sum,
  times,
} from '../../length/length';
import { roundTo } from '../../length/round';
import type { Part } from '../carcass/part';
import type { BoardFeet } from './line';

/** A stock as the list buys it. Inches. */
export type BuyingStock = {
  readonly id: string;
  readonly name: string;
  readonly kind: 'sheet' | 'stick';
  /** Reckoned with, and whether that is a reading. */
  readonly thickness: Length;
  readonly measured: boolean;
  /** As it is sold, before it is planed. */
  readonly rough?: Length;
};

/** A piece of solid wood, so many alike. Inches; `count` whole, >= 0. */
export type SolidPiece = { readonly long: Length; readonly wide: Length; readonly count: number };

/** Cubic inches in a board foot: 12 x 12 x 1. Source: the unit itself, one foot square and an inch thick. */
const cubicInches = 144n;

/** Bought over what the parts hold: 15 to 20 %. Common practice, no source. */
const usualWaste = ratio(1n, 5n);

const tenth = inches(1n, 10n);

/**
 * Board feet = sum of length × width × thickness / 144.
 *
 * @param pieces inches, > 0
 * @param thick rough thickness, inches, > 0
 * @returns board feet, exact
 * @example boardFeet([{ long: inches(96n), wide: inches(6n), count: 1 }], inches(1n)) // 4
 */
export function boardFeet(pieces: readonly SolidPiece[], thick: Length): Ratio {
  const faces = pieces.map((p) => times(times(p.long, asNumber(p.wide)), BigInt(p.count)));
  return asNumber(over(times(sum(faces), asNumber(thick)), cubicInches));
}

/**
 * What to buy of a solid stock by the board foot: what its parts hold at the rough thickness, waste over it, up to a
 * tenth. Where no rough thickness is known the thickness in use stands in, and `as` says so.
 *
 * @param pieces inches, > 0
 * @param stock thicknesses in inches, > 0
 * @param waste share, >= 0
 * @returns nothing where it has no pieces
 * @throws RangeError if the waste is below 0: a mistake in the program
 * @example solidOf(pieces, oak, ratio(1n, 5n)).buy
 */
export function solidOf(
  pieces: readonly SolidPiece[],
  stock: Pick<BuyingStock, 'thickness' | 'measured' | 'rough'>,
  waste: Ratio = usualWaste,
): BoardFeet | undefined {
  if (isNegative(asInches(waste))) throw new RangeError('solidOf: waste must be >= 0');
  const count = pieces.reduce((n, p) => n + p.count, 0);
  if (count === 0) return undefined;
  const thick = stock.rough ?? stock.thickness;
  const net = boardFeet(pieces, thick);
  const wasted = add(asInches(net), times(asInches(net), waste));
  return {
    pieces: count,
    net,
    buy: asNumber(roundTo(wasted, tenth, 'ceil').value),
    waste,
    thick,
    as: stock.rough ? 'rough' : stock.measured ? 'measured' : 'planned',
  };
}

/**
 * The pieces that come out of a stock: to the long points where the ends are mitred. Fronts that come off one blank
 * are in the blank, and not counted again.
 *
 * @param parts every part of the job
 * @param stock id of the stock
 * @example solidPiecesOf(parts, 'oak') // the pieces of the face frame
 */
export function solidPiecesOf(parts: readonly Part[], stock: string): readonly SolidPiece[] {
  const ids = new Set(parts.map((p) => p.id));
  return parts
    .filter((p) => p.stuff === stock && !ids.has(blankOf(p.id)))
    .map((p) => ({
      long: p.longPoint ? longest(p.length.mark.value, p.longPoint.value) : p.length.mark.value,
      wide: p.width.mark.value,
      count: p.copies,
    }));
}

/** Id of the blank a front would come off; any other part gives an id that is no part's. */
const blankOf = (id: string): string => (/d\d+front$/.test(id) ? id.replace(/d\d+front$/, 'blank') : '');
