import { add, half, inches, type Length, subtract, zero } from '../../src/length/length';
import type { CutPiece } from './cut-pieces';

/** An end that goes into another piece: the piece it is of, which end, and how thick that is. Inches. */
export type GoesIn = { readonly piece: CutPiece; readonly end: string; readonly thick: Length };

/** Where the middle of its thickness comes along the other, from that one's end; how far it goes past the face. */
export type Seated = { readonly middle: Length; readonly reach: Length };

/** As wide as what goes in and the usual clearance. */
const fit = inches(1n, 200n);

/**
 * An end as it stands in the other piece: on its line, to the floor of its dado, or with its tongue in the middle of a
 * groove and its shoulder against the face.
 */
export function seated(mate: CutPiece, id: string, { piece, end, thick }: GoesIn): Seated {
  const line = mate.lines.get(id);
  if (line) return { middle: add(line, half(thick)), reach: zero };
  const cut = mate.grooves.get(id);
  if (!cut) throw new Error(`no groove ${id}`);
  const middle = half(add(cut.lo, cut.hi));
  const tongue = piece.tongues.get(end);
  if (!tongue) return { middle, reach: cut.deep };
  const own = subtract(thick, tongue.shoulder);
  if (!subtract(subtract(cut.hi, cut.lo), add(own, fit)).equals(zero))
    throw new Error(`${id}: off its tongue`);
  if (tongue.long.compare(cut.deep) > 0)
    throw new Error(`${id}: its tongue stands on the floor of its groove`);
  // cut away in the nearer face the tongue lies at the farther one, and the part begins a shoulder before it
  const isFar = tongue.face === 'under' || tongue.face === 'left';
  const near = subtract(subtract(middle, half(own)), isFar ? tongue.shoulder : zero);
  return { middle: add(near, half(thick)), reach: tongue.long };
}
