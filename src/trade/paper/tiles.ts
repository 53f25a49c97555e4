import { add, atMost, howMany, isPositive, type Length, negate, subtract, times } from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { toWhole } from '../../length/round';
import { between } from './sheet';

/** A stick laid over sheets that lap. Inches. */
type TilesAsked = {
  /** How long the stick is, > 0. */
  readonly stick: Length;
  /** The side of the sheet it runs along, what stays white at both ends of it, and how far two sheets lap. */
  readonly side: Length;
  readonly margin: Length;
  readonly overlap: Length;
};

/** The part of the stick on one sheet, from the reference end. Inches. */
export type Tile = { readonly from: Length; readonly to: Length };

type Tiles = {
  readonly usable: Length;
  readonly tiles: readonly Tile[];
  /** Both ends of each lap: a cross stands at either on both sheets. */
  readonly laps: readonly Tile[];
};

/** Why a stick cannot be laid over sheets, and by how much. Inches. */
export type TilesProblem =
  | { readonly code: 'margins-eat'; readonly by: Length }
  /** The lap leaves a sheet nothing new; it has to be less than `usable`. */
  | { readonly code: 'overlap-eats'; readonly by: Length; readonly usable: Length };

/**
 * How a stick lies on sheets: a sheet takes *side − 2 margins*, each but the first begins *usable − overlap* after the
 * one before.
 *
 * @returns the tiles from the reference end, the last as long as what is left
 * @example tilesOf({ stick: l('64 1/4'), side: l('11'), margin: l('1/2'), overlap: l('3/4') }) // 7: Example 1 of paper
 */
export function tilesOf({ stick, side, margin, overlap }: TilesAsked): Result<Tiles, TilesProblem> {
  const usable = between(side, margin);
  if (!isPositive(usable)) return err({ code: 'margins-eat', by: negate(usable) });
  const step = subtract(usable, overlap);
  if (!isPositive(step)) return err({ code: 'overlap-eats', by: negate(step), usable });
  const more = atMost(stick, usable) ? 0 : Number(toWhole(howMany(subtract(stick, usable), step), 'ceil'));
  const starts = Array.from({ length: more + 1 }, (_, k) => times(step, BigInt(k)));
  const tiles = starts.map((from, k) => ({ from, to: k === more ? stick : add(from, usable) }));
  return ok({ usable, tiles, laps: starts.slice(1).map((from) => ({ from, to: add(from, overlap) })) });
}
