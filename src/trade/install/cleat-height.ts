import { add, atMost, half, isZero, type Length, less, subtract, zero } from '../../length/length';

/** What is known of how high a cleat stands. Inches, up from the floor at its high point where nothing else is said. */
export type CleatPlan = {
  /** Its lower edge, as said. */
  readonly said?: Length | undefined;
  /** Its lower edge over the lower end of the case, where the case itself has it. */
  readonly inCase?: Length | undefined;
  /** What lifts the lower end of the case off the high point: feet that screw, a base frame. */
  readonly lift: Length;
  /** The back of the case, over its lower end; nothing while the case does not work out. */
  readonly back?: { readonly from: Length; readonly to: Length } | undefined;
  readonly wide?: Length | undefined;
  /** From a level line down to the high point of the floor. */
  readonly drop?: Length | undefined;
};

/** Heights at which the lower edge of a cleat has all of it behind the back. Inches over the high point. */
type Fits = { readonly least: Length; readonly most: Length };

export type CleatWrong =
  | ({ readonly code: 'under' | 'over'; readonly by: Length } & Fits)
  /** The cleat is so much wider than the back is high. */
  | { readonly code: 'too-wide'; readonly by: Length }
  /** The case has its own cleat somewhere else: below 0 the one said is lower by so much. */
  | { readonly code: 'differs'; readonly by: Length; readonly inCase: Length };

/** How high a cleat stands. Inches over the floor at its high point. */
export type CleatHeight = {
  /** Its lower edge, which is the line on the wall. */
  readonly low: Length;
  readonly by: 'said' | 'case';
  /** Its upper edge, where its width is known. */
  readonly top?: Length;
  /** Where its screws go: along its middle; along its lower edge while its width is not known. */
  readonly screws: Length;
  /** Its lower edge from the level line: below 0 it stands under the line. */
  readonly fromLine?: Length;
};

/**
 * How high a cleat stands: as said, else where the case has it.
 *
 * @param plan inches
 * @returns inches; nothing where nobody says it
 * @example cleatHeight(plan)?.low // 60 25/32: Example 10 of install
 */
export function cleatHeight({ said, inCase, lift, wide, drop }: CleatPlan): CleatHeight | undefined {
  const low = said ?? (inCase && add(inCase, lift));
  if (!low) return undefined;
  return {
    low,
    by: said ? 'said' : 'case',
    screws: add(low, half(wide ?? zero)),
    ...(wide ? { top: add(low, wide) } : {}),
    ...(drop ? { fromLine: subtract(low, drop) } : {}),
  };
}

/** Where a lower edge may stand; nothing while the case does not work out. Inches over the high point. */
const fitsOf = ({ back, lift, wide = zero }: CleatPlan): Fits | undefined =>
  back && { least: add(back.from, lift), most: subtract(add(back.to, lift), wide) };

/**
 * What is wrong with where a cleat stands: not behind the back of its case, or not where the case has it.
 *
 * @param plan inches; @param low its lower edge over the high point, inches
 * @returns by how much, and what fits; nothing where it can be
 * @example cleatWrong(plan, low)?.code // 'over': Example 10 of install
 */
export function cleatWrong(plan: CleatPlan, low: Length): CleatWrong | undefined {
  const fits = fitsOf(plan);
  if (fits && less(fits.most, fits.least)) return { code: 'too-wide', by: subtract(fits.least, fits.most) };
  if (fits && less(low, fits.least)) return { code: 'under', by: subtract(fits.least, low), ...fits };
  if (fits && less(fits.most, low)) return { code: 'over', by: subtract(low, fits.most), ...fits };
  const inCase = plan.inCase && add(plan.inCase, plan.lift);
  const by = inCase && subtract(low, inCase);
  return inCase && by && !isZero(by) ? { code: 'differs', by, inCase } : undefined;
}

/** A place in the wall where nothing may be fastened, from so high to so high. Inches over the high point. */
export type Band = { readonly low: Length; readonly high: Length };

/** Whether screws at a height keep off a band. A height just so far off is taken. */
export const clears = (screws: Length, { low, high }: Band, keep: Length): boolean =>
  atMost(add(screws, keep), low) || atMost(add(high, keep), screws);

/** How far a cleat is moved so that its screws clear every band; nothing where it cannot go. Inches. */
export type Moves = { readonly up?: Length; readonly down?: Length };

/**
 * How far up, and how far down, a cleat clears every band at once, and still stands behind its case.
 *
 * @param plan inches; @param at where it stands; @param bands in any order, and how far to keep off, inches
 * @example clearMoves(plan, at, bands).down // 2 3/8: Example 11 of install
 */
export function clearMoves(
  plan: CleatPlan,
  { low, screws }: CleatHeight,
  { bands, keep }: { readonly bands: readonly Band[]; readonly keep: Length },
): Moves {
  const fits = fitsOf(plan);
  const up = cleared(screws, bands, (at, band) => (clears(at, band, keep) ? at : add(band.high, keep)));
  const down = cleared(screws, bands, (at, band) => (clears(at, band, keep) ? at : subtract(band.low, keep)));
  const goes = (to: Length): boolean => {
    const edge = add(low, subtract(to, screws));
    return !less(edge, fits?.least ?? zero) && !(fits && less(fits.most, edge));
  };
  return {
    ...(goes(up) ? { up: subtract(up, screws) } : {}),
    ...(goes(down) ? { down: subtract(screws, down) } : {}),
  };
}

/** Past one band after another until none is left: each is passed once, so it ends. */
function cleared(from: Length, bands: readonly Band[], past: (at: Length, band: Band) => Length): Length {
  const to = bands.reduce(past, from);
  return bands.length === 0 || isZero(subtract(to, from)) ? to : cleared(to, bands, past);
}
