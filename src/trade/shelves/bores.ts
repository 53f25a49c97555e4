import { add, type Length, times } from '../../length/length';
import type { Inside } from '../carcass/case';
import type { Sizes } from '../carcass/sizes';
import type { Face } from '../grooves/layout';
import type { Bore, RowName } from './bore';
import { holeRow } from './hole-row';
import { type Pins, pinsOf } from './pins';
import { rowOf, sameRows } from './same-rows';

/** A wall of a bay: the face that looks into it, and how far its reference end lies below the case bottom. Inches. */
type Wall = { readonly face: Face; readonly datum: Length };

/**
 * The rows of holes in one wall of a bay. Both its walls have the same rows: what differs is where their reference end
 * lies, so each hole stands level with the one it faces.
 *
 * @returns front row and rear row of each set of loose shelves, holes from the bottom up, inches
 * @example boresIn(sizes, 1, { face: 'A', datum })[0]?.holes.length // 35: Example 1 of shelves
 */
export const boresIn = (sizes: Sizes, bay: number, wall: Wall): readonly Bore[] =>
  sizes.case.inside
    .filter((i) => i.kind === 'loose' && i.bay === bay && !sameRows(sizes, i))
    .flatMap((i) => {
      const pins = pinsOf(sizes, i);
      return pins ? (['front', 'rear'] as const).map((row) => boreOf(i, row, { ...wall, pins, sizes })) : [];
    });

function boreOf(i: Inside, row: RowName, at: Wall & { readonly pins: Pins; readonly sizes: Sizes }): Bore {
  const { first, top, front, rear, ...pins } = at.pins;
  const { count } = holeRow({ span: at.sizes.clearHeight.value, first, top, pitch: pins.pitch });
  const holes = Array.from({ length: count }, (_, k) => ({
    no: k + 1,
    at: add(add(at.datum, first), times(pins.pitch, BigInt(k))),
  })).filter(({ no }) => !pins.leftOut.includes(no));
  return {
    ...pins,
    ...rowOf(at.sizes, i, row),
    inside: i.id,
    row,
    face: at.face,
    off: row === 'front' ? front : rear,
    holes,
    by: i.bore ?? 'template',
  };
}
