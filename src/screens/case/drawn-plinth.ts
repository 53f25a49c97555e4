import { add, forDrawing, type Length, subtract, zero } from '../../length/length';
import { plinthOf } from '../../trade/carcass/plinth';
import type { Sizes } from '../../trade/carcass/sizes';
import { beforeSides } from '../../trade/carcass/toe-notch';
import { usualOf } from '../../trade/carcass/usual';
import type { DrawnPiece } from '../../ui/case-drawing';

type Drawing = { readonly wide: number; readonly high: number; readonly pieces: readonly DrawnPiece[] };

type Make = (
  role: string,
  at: { readonly x: Length; readonly y: Length; readonly w: Length; readonly h: Length },
  kind: DrawnPiece['kind'],
) => DrawnPiece;

/** The drawing of a case raised onto its plinth. */
export function onPlinth({ plinth }: Sizes, drawing: Drawing, under: readonly DrawnPiece[]): Drawing {
  const up = forDrawing(plinth);
  if (up === 0) return drawing;
  const raised = drawing.pieces.map((p) => ({ ...p, y: p.y + up }));
  return { ...drawing, high: drawing.high + up, pieces: [...under, ...raised] };
}

/** A plinth from the front: its front rail. */
export function plinthFront(sizes: Sizes, piece: Make): readonly DrawnPiece[] {
  const plinth = plinthOf(sizes);
  if (!plinth) return [];
  const at = { x: sizes.case.plinthLeft ?? zero, y: zero, w: plinth.long.value, h: sizes.plinth };
  return [piece('plinthrail', at, 'toe')];
}

/** A plinth cut through: its two rails, `front` being what stands before the sides in the drawing. */
export function plinthSection(sizes: Sizes, front: Length, piece: Make): readonly DrawnPiece[] {
  const plinth = plinthOf(sizes);
  if (!plinth) return [];
  const { case: c, thick } = sizes;
  const recess = subtract(c.plinthFront ?? usualOf(c).toeBack, beforeSides(sizes));
  const near = add(front, recess);
  const far = subtract(add(near, plinth.deep.value), thick('base'));
  const rail = (x: Length) => piece('plinthrail', { x, y: zero, w: thick('base'), h: sizes.plinth }, 'toe');
  return [rail(near), rail(far)];
}
