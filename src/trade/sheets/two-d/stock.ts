import type { TwoD } from './two-d';

/**
 * A kind of sheet as the search sees it: `of` is its number in what was given, for a kind may be split to narrow one
 * sheet.
 */
export type Kind = {
  readonly of: number;
  readonly w: number;
  readonly h: number;
  readonly count: number;
  readonly cost: number;
};

/**
 * The pieces as flat lists by number. `turn`: 1 when the other way is allowed and is another way. `group`: -1 for
 * none.
 */
export type PieceTable = {
  readonly w: Float64Array;
  readonly h: Float64Array;
  readonly area: Float64Array;
  readonly turn: Uint8Array;
  readonly group: Int32Array;
  readonly count: Int32Array;
  /** Pieces in all, and area of all in a group. */
  readonly total: number;
  readonly groupArea: Float64Array;
  /** The number given for each group. */
  readonly groups: readonly number[];
};

/**
 * The pieces as flat lists.
 *
 * @example stockOf(problem).total // pieces in all
 */
export function stockOf({ pieces }: TwoD): PieceTable {
  const groups = [...new Set(pieces.flatMap((p) => (p.together === undefined ? [] : [p.together])))];
  const group = Int32Array.from(pieces, (p) => (p.together === undefined ? -1 : groups.indexOf(p.together)));
  return {
    w: Float64Array.from(pieces, (p) => p.w),
    h: Float64Array.from(pieces, (p) => p.h),
    area: Float64Array.from(pieces, (p) => p.w * p.h),
    turn: Uint8Array.from(pieces, (p) => (p.turn && p.w !== p.h ? 1 : 0)),
    group,
    count: Int32Array.from(pieces, (p) => p.count),
    total: pieces.reduce((sum, p) => sum + p.count, 0),
    groupArea: Float64Array.from(groups, (g) =>
      pieces.reduce((sum, p) => (p.together === g ? sum + p.w * p.h * p.count : sum), 0),
    ),
    groups,
  };
}

/**
 * The kinds there are any of.
 *
 * @example kindsOf(problem).length
 */
export function kindsOf({ sheets }: TwoD): readonly Kind[] {
  return sheets.flatMap(({ w, h, count = Number.POSITIVE_INFINITY, cost }, of) =>
    count > 0 ? [{ of, w, h, count, cost }] : [],
  );
}
