/**
 * What is to be cut, and from what, in one unit and whole numbers. The caller adds the kerf once to both measures of
 * every piece and of every usable sheet: a piece that ends on the edge of the sheet then needs no cut there, and two
 * that meet are a kerf apart.
 */
export type TwoD = {
  /** Kinds of sheet: usable size + kerf; how many there are, any number when absent; what one costs, > 0. */
  readonly sheets: readonly {
    readonly w: number;
    readonly h: number;
    readonly count?: number;
    readonly cost: number;
  }[];
  /** Sizes + kerf; `turn`: may lie turned by 90°; pieces of one `together` number lie on one sheet. */
  readonly pieces: readonly {
    readonly w: number;
    readonly h: number;
    readonly count: number;
    readonly turn: boolean;
    readonly together?: number;
  }[];
};

/**
 * A sheet as a saw takes it apart: every rectangle is cut from edge to edge, or is a piece of exactly its size, or is
 * left. `across`: the cut runs along x at height `at`, `a` lies below it and `b` above; otherwise it runs along y at
 * `at`, `a` to the left, `b` to the right.
 */
export type Tree = { readonly w: number; readonly h: number } & (
  | { readonly is: 'cut'; readonly across: boolean; readonly at: number; readonly a: Tree; readonly b: Tree }
  | { readonly is: 'piece'; readonly piece: number; readonly turned: boolean }
  | { readonly is: 'left' }
);

/**
 * `kind` and `piece` count from 0 in the order given. `proved`: no plan costs less than this one (cost equals bound).
 */
export type Laid = {
  readonly sheets: readonly { readonly kind: number; readonly tree: Tree }[];
  readonly cost: number;
  readonly bound: number;
  readonly proved: boolean;
};

/**
 * `no-sheet-takes`: the piece fits no kind of sheet in a way it may lie. `sheets-run-out`: `left` pieces found no
 * place on the sheets there are. `together-too-large`: the pieces of that number were not got onto one sheet of any
 * kind.
 */
export type TwoDError =
  | { readonly code: 'no-sheet-takes'; readonly piece: number }
  | { readonly code: 'sheets-run-out'; readonly left: number }
  | { readonly code: 'together-too-large'; readonly together: number };
