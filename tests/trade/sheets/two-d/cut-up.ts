type Size = { readonly w: number; readonly h: number };

/** A rectangle cut from edge to edge again and again: each figure says which piece is cut, which way and where. */
export function cutUp(whole: Size, figures: readonly number[]): readonly Size[] {
  return figures.reduce<readonly Size[]>(
    (pieces, x) => {
      const at = Math.floor(x) % pieces.length;
      const { w, h } = pieces[at] ?? whole;
      const part = x - Math.floor(x);
      const [first, second] =
        w > h
          ? [
              { w: Math.round(w * part), h },
              { w: w - Math.round(w * part), h },
            ]
          : [
              { w, h: Math.round(h * part) },
              { w, h: h - Math.round(h * part) },
            ];
      return [...pieces.slice(0, at), first, second, ...pieces.slice(at + 1)].filter(
        (p) => p.w > 2 && p.h > 2,
      );
    },
    [whole],
  );
}
