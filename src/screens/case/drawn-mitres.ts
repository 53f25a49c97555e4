import type { Part } from '../../trade/carcass/part';
import type { DrawnPiece } from '../../ui/case-drawing';

type Role = 'left' | 'right' | 'bottom' | 'top';

/**
 * A part from the front with its mitred ends: its outer edge whole, its inner one so much shorter at each of them as
 * the part is thick.
 */
export function withMitres(piece: DrawnPiece, role: Role, { mitres }: Pick<Part, 'mitres'>): DrawnPiece {
  if (!mitres) return piece;
  const { w, h } = piece;
  const by = (end: string, thick: number): number => (mitres.includes(end) ? thick : 0);
  if (role === 'bottom' || role === 'top') {
    const [inner, outer] = role === 'bottom' ? [h, 0] : [0, h];
    const [from, to] = [by('left', h), w - by('right', h)];
    return {
      ...piece,
      outline: [
        [0, outer],
        [w, outer],
        [to, inner],
        [from, inner],
      ],
    };
  }
  const [inner, outer] = role === 'left' ? [w, 0] : [0, w];
  const [low, high] = [by('bottom', w), h - by('top', w)];
  return {
    ...piece,
    outline: [
      [outer, 0],
      [outer, h],
      [inner, high],
      [inner, low],
    ],
  };
}
