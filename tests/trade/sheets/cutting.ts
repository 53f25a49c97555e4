import { add, inches, type Length, subtract } from '../../../src/length/length';
import { writeLength } from '../../../src/length/write';
import type { RoughPiece } from '../../../src/trade/sheets/pieces';
import type { Branch, CutBranch } from '../../../src/trade/sheets/tree';

export const n = (whole: number, num = 0, den = 1): Length =>
  add(inches(BigInt(whole)), inches(BigInt(num), BigInt(den)));

export const kerf = n(0, 1, 8);

export const w = (x: Length | undefined): string => (x ? writeLength(x) : '');

export const leaf = (id: string): Branch => ({ is: 'piece', piece: `${id}/1`, turned: false });

export const cut = (way: CutBranch['way'], at: Length, near: Branch, far: Branch): CutBranch => ({
  is: 'cut',
  way,
  at,
  near,
  far,
});

export const left: Branch = { is: 'left' };

/** Two strips 17 3/4 with two shelves each, and what is left beside them. */
export const strip = (a: string, b: string) =>
  cut('cross', n(40), leaf(a), cut('cross', n(40), leaf(b), left));

export const sheet = {
  size: { long: n(96), wide: n(48) },
  tree: cut('rip', n(17, 3, 4), strip('a', 'b'), cut('rip', n(17, 3, 4), strip('c', 'd'), left)),
};

export const piece = (id: string, long: Length, wide: Length): RoughPiece => ({
  id: `${id}/1`,
  part: id,
  copy: '1',
  name: { of: { role: 'board', named: id } },
  stuff: 'a',
  thickness: undefined,
  finished: { long: subtract(long, n(0, 1, 4)), wide: subtract(wide, n(0, 1, 4)) },
  long,
  wide,
  lies: 'along',
});
