import { add, isPositive, type Length, less, longest, negate, zero } from '../../length/length';
import type { Units } from '../../length/units';
import type { Board, Wide } from './board';
import { leastLandIn, overlapOf } from './lands';
import type { Dropped, Groove, Problem } from './layout';

/** The wide grooves of a board, from the reference end, and what is missing from them. */
export function wideGrooves(board: Board): {
  readonly grooves: readonly Groove[];
  readonly problems: readonly Problem[];
} {
  const problems = board.wides.flatMap(missing);
  const grooves = board.wides.flatMap((wide, k) => placed(wide, k, board.datum ?? zero));
  return { grooves, problems };
}

function missing(wide: Wide): readonly Problem[] {
  const fields = ['near', 'width'] as const;
  const found: Problem[] = fields
    .filter((field) => wide[field] === undefined)
    .map((field) => ({ code: 'missing', in: wide.id, field }));
  for (const field of ['width', 'depth'] as const) {
    const value = wide[field];
    if (value && !isPositive(value)) found.push({ code: 'not-positive', in: wide.id, field });
  }
  return found;
}

function placed(wide: Wide, k: number, datum: Length): readonly Groove[] {
  if (!wide.near || !wide.width) return [];
  const { id, face, width, depth, fits, called, calledNo, said } = wide;
  const near = add(wide.near, datum);
  return [
    {
      id,
      no: `W${k + 1}`,
      face,
      near,
      width,
      wide: true,
      ...(depth ? { depth } : {}),
      ...(fits ? { fits } : {}),
      ...(called ? { called } : {}),
      ...(calledNo === undefined ? {} : { calledNo }),
      ...(said === undefined ? {} : { said }),
    },
  ];
}

/**
 * Where a wide groove meets narrow ones the wide one wins: a narrow one goes when it overlaps, or when the land
 * between is under the larger of its depth and common practice's 1/4 (no source).
 *
 * @param narrow, wides grooves from the reference end; of two faces they never meet
 * @example dropFor(narrow, wides).dropped.map((d) => d.groove.no)
 */
export function dropFor(
  narrow: readonly Groove[],
  wides: readonly Groove[],
  units?: Units,
): { readonly kept: readonly Groove[]; readonly dropped: readonly Dropped[] } {
  const dropped: Dropped[] = [];
  const kept = narrow.filter((groove) => {
    const lost = wides.map((by) => loses(groove, by, leastLandIn(units))).find((d) => d !== undefined);
    if (lost) dropped.push(lost);
    return lost === undefined;
  });
  return { kept, dropped };
}

function loses(groove: Groove, by: Groove, leastLand: Length): Dropped | undefined {
  if (groove.face !== by.face) return undefined;
  const shared = overlapOf(groove, by);
  if (isPositive(shared)) return { groove, by, why: 'overlap', amount: shared };
  const land = negate(shared);
  const least = longest(leastLand, groove.depth ?? zero);
  return less(land, least) ? { groove, by, why: 'land', amount: land } : undefined;
}
