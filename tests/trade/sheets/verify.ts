import {
  add,
  atMost,
  equals,
  isNegative,
  type Length,
  less,
  subtract,
  zero,
} from '../../../src/length/length';
import type { RoughPiece } from '../../../src/trade/sheets/pieces';
import type { Branch, Rect } from '../../../src/trade/sheets/tree';

export type Found = {
  readonly piece: string;
  readonly turned: boolean;
  readonly from: Rect;
  readonly size: Rect;
};

/**
 * Cuts a sheet apart on its own terms, sharing no code with what planned it: every cut runs from edge to edge of what
 * it cuts and takes one kerf; what it leaves is cut on. Throws at a cut that lies off its rectangle.
 */
export function cutApart(
  sheet: { readonly size: Rect; readonly tree: Branch },
  kerf: Length,
): readonly Found[] {
  const found: Found[] = [];
  const saw = (branch: Branch, size: Rect, from: Rect): void => {
    if (branch.is === 'piece') {
      found.push({ piece: branch.piece, turned: branch.turned, from, size });
      return;
    }
    if (branch.is !== 'cut') return;
    const rip = branch.way === 'rip';
    const whole = rip ? size.wide : size.long;
    if (isNegative(branch.at) || less(whole, branch.at)) throw new Error('a cut off its rectangle');
    const rest = subtract(subtract(whole, branch.at), kerf);
    const beyond = isNegative(rest) ? zero : rest;
    const on = add(branch.at, kerf);
    saw(branch.near, rip ? { ...size, wide: branch.at } : { ...size, long: branch.at }, from);
    saw(
      branch.far,
      rip ? { ...size, wide: beyond } : { ...size, long: beyond },
      rip ? { ...from, wide: add(from.wide, on) } : { ...from, long: add(from.long, on) },
    );
  };
  saw(sheet.tree, sheet.size, { long: zero, wide: zero });
  return found;
}

/** Two pieces at least a kerf apart one way or the other. */
const apart = (a: Found, b: Found, kerf: Length): boolean => {
  const clear = (p: Found, q: Found, way: 'long' | 'wide') =>
    atMost(add(add(p.from[way], p.size[way]), kerf), q.from[way]);
  return clear(a, b, 'long') || clear(b, a, 'long') || clear(a, b, 'wide') || clear(b, a, 'wide');
};

/** What is wrong with a plan; empty when nothing is. */
export function faultsOf(
  sheets: readonly { readonly size: Rect; readonly tree: Branch }[],
  wanted: readonly RoughPiece[],
  at: { readonly kerf: Length; readonly grain: 'long' | 'wide' | 'none'; readonly exact: boolean },
): readonly string[] {
  const faults: string[] = [];
  const all = sheets.map((sheet) => cutApart(sheet, at.kerf));
  const names = all.flat().map((f) => f.piece);
  const byId = new Map(wanted.map((piece) => [piece.id, piece]));
  for (const { id } of wanted)
    if (names.filter((name) => name === id).length !== 1) faults.push(`${id} is not there once`);
  if (names.length !== wanted.length) faults.push('pieces nobody wants');
  for (const found of all) {
    for (const f of found) {
      const piece = byId.get(f.piece);
      if (!piece) continue;
      const own = f.turned ? { long: f.size.wide, wide: f.size.long } : f.size;
      if (less(own.long, piece.long) || less(own.wide, piece.wide)) faults.push(`${f.piece} is short`);
      if (at.exact && !(equals(own.long, piece.long) && equals(own.wide, piece.wide)))
        faults.push(`${f.piece} is not its size`);
      const lengthAlongGrain = at.grain === 'wide' ? f.turned : !f.turned;
      const must = piece.lies === 'along' ? true : piece.lies === 'across' ? false : lengthAlongGrain;
      if (at.grain !== 'none' && lengthAlongGrain !== must) faults.push(`the grain of ${f.piece} is turned`);
    }
    for (const [k, a] of found.entries())
      for (const b of found.slice(k + 1))
        if (!apart(a, b, at.kerf)) faults.push(`${a.piece} and ${b.piece} are not a kerf apart`);
  }
  for (const piece of wanted) {
    if (piece.together === undefined) continue;
    const sheet = all.findIndex((found) => found.some((f) => f.piece === piece.id));
    const first = wanted.find((p) => p.together === piece.together);
    if (sheet !== all.findIndex((found) => found.some((f) => f.piece === first?.id)))
      faults.push(`${piece.id} is not on the sheet of its mates`);
  }
  return faults;
}
