import { add, isNegative, type Length, shortest, subtract } from '../../length/length';

type Sold = {
  /** The longest each piece may be, for one groove. Inches, > 0. */
  readonly pieces: readonly Length[];
  /** As a strip is sold, and what a saw takes between two pieces. Inches. */
  readonly sold: Length;
  readonly cut: Length;
};

/** Strips that one groove takes, each with what is left of it. Inches. */
type Taken = { readonly count: number; readonly left: readonly Length[] };

/**
 * How many strips the pieces of one groove come out of: the longest first, each out of the first strip that still holds
 * it. All four grooves of a bay are cut so alike, which brings their slots level. A strip sold shorter than a piece may
 * be stands as it was sold.
 *
 * @example soldStrips({ pieces, sold, cut }).count // 2: Example 9 of shelves
 */
export function soldStrips({ pieces, sold, cut }: Sold): Taken {
  const left: Length[] = [];
  for (const long of [...pieces].sort((a, b) => b.compare(a))) {
    const piece = shortest(long, sold);
    const k = left.findIndex((rest) => !isNegative(subtract(rest, add(piece, cut))));
    const rest = left[k];
    if (rest) left[k] = subtract(rest, add(piece, cut));
    else left.push(subtract(sold, piece));
  }
  return { count: left.length, left };
}
