type Size = { readonly w: number; readonly h: number };
type Piece = Size & { readonly turn: boolean };

/** Every way to part a list in two, the first always in the first part's complement or not: both orders are tried. */
function parts<T>(list: readonly T[]): readonly (readonly [readonly T[], readonly T[]])[] {
  return Array.from({ length: 2 ** list.length }, (_, bits) => [
    list.filter((_x, k) => (bits >> k) & 1),
    list.filter((_x, k) => !((bits >> k) & 1)),
  ]);
}

/** Whether all pieces come out of a rectangle by cuts from edge to edge: every cut and every parting is tried. */
export function comeOut({ w, h }: Size, pieces: readonly Piece[]): boolean {
  const [first] = pieces;
  if (!first) return true;
  if (pieces.reduce((sum, p) => sum + p.w * p.h, 0) > w * h) return false;
  if (pieces.length === 1)
    return (first.w <= w && first.h <= h) || (first.turn && first.h <= w && first.w <= h);
  const partings = parts(pieces).filter(([a, b]) => a.length > 0 && b.length > 0);
  return partings.some(([a, b]) => {
    for (let at = 1; at < w; at += 1)
      if (comeOut({ w: at, h }, a) && comeOut({ w: w - at, h }, b)) return true;
    for (let at = 1; at < h; at += 1)
      if (comeOut({ w, h: at }, a) && comeOut({ w, h: h - at }, b)) return true;
    return false;
  });
}

/**
 * The fewest equal sheets a handful of small pieces come out of, by trying everything.
 *
 * @example leastSheets({ w: 4, h: 4 }, [{ w: 3, h: 3, turn: false }]) // 1
 */
export function leastSheets(sheet: Size, pieces: readonly Piece[]): number {
  if (pieces.length === 0) return 0;
  const counts = parts(pieces).flatMap(([on, off]) =>
    on.length > 0 && comeOut(sheet, on) ? [1 + (off.length === 0 ? 0 : leastSheets(sheet, off))] : [],
  );
  return Math.min(...counts);
}
