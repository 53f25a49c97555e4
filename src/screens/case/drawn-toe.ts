import { add, type Length, subtract, zero } from '../../length/length';
import type { Sizes } from '../../trade/carcass/sizes';
import { beforeSides, isNotched } from '../../trade/carcass/toe-notch';
import { usualOf } from '../../trade/carcass/usual';
import type { DrawnPiece } from '../../ui/case-drawing';

type Make = (
  role: string,
  at: { readonly x: Length; readonly y: Length; readonly w: Length; readonly h: Length },
  kind: DrawnPiece['kind'],
) => DrawnPiece;

/** How high the toe board reaches, and how far it stays clear of the floor. */
function heights({ case: c }: Sizes): { readonly y: Length; readonly h: Length } {
  const y = isNotched(c) ? (c.toeClear ?? usualOf(c).toeClear) : zero;
  return { y, h: subtract(c.feet ?? zero, y) };
}

/** The toe board from the front: between the sides, or over them. */
export function toeFront(sizes: Sizes, piece: Make): readonly DrawnPiece[] {
  const { case: c, thick, clearWidth, width } = sizes;
  if (!c.hasToe || !c.feet) return [];
  const across = isNotched(c) ? { x: zero, w: width.value } : { x: thick('side'), w: clearWidth.value };
  return [piece('toe', { ...across, ...heights(sizes) }, 'toe')];
}

/** The toe board cut through, `front` being what stands before the sides in the drawing. */
export function toeSection(sizes: Sizes, front: Length, piece: Make): readonly DrawnPiece[] {
  const { case: c, thick } = sizes;
  if (!c.hasToe || !c.feet) return [];
  const back = c.toeBack ?? usualOf(c).toeBack;
  const x = add(front, isNotched(c) ? subtract(back, beforeSides(sizes)) : back);
  return [piece('toe', { x, w: thick('toe'), ...heights(sizes) }, 'toe')];
}
