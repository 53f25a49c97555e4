import { isPositive, type Length, type Ratio, ratio } from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { whole } from '../../length/round';
import { isLess, isMore, product, total } from './ratios';
import { type Slab, slabWeight } from './stuff';

/** What a weight is of, so that each has its own sum. */
export type Belongs = 'case' | 'drawer' | 'loose' | 'sheet' | 'hardware';

/** Alike pieces to be weighed: by size and kind, or with what one was found to weigh. */
export type Weighable = { readonly id: string; readonly of: Belongs; readonly count: number } & (
  | { readonly slab: Slab }
  | { readonly pounds: Ratio }
);

type Weighed = {
  readonly id: string;
  readonly of: Belongs;
  /** Pounds: of one, of all alike, and of all in the list so far. */
  readonly one: Ratio;
  readonly all: Ratio;
  readonly running: Ratio;
};

type Weights = {
  readonly pieces: readonly Weighed[];
  /** Pounds. */
  readonly sums: Readonly<Record<Belongs, Ratio>>;
  readonly all: Ratio;
};

/** Every fault of a list: which piece, and what of it. */
type WeightError =
  | { readonly code: 'size-not-positive'; readonly id: string; readonly what: 'long' | 'wide' | 'thick' }
  | { readonly code: 'pounds-negative' | 'count-not-whole' | 'per-foot-not-positive'; readonly id: string };

/**
 * Running weight of a list: each piece, each group and the whole. Nothing is left out: a piece without a size is an
 * error, not a piece that weighs nothing.
 *
 * @param list inches, > 0; pounds, >= 0; counts whole, >= 0
 * @returns pounds, in the order of the list
 * @example weighAll(list) // 91.5: Example 2 of loads
 */
export function weighAll(list: readonly Weighable[]): Result<Weights, readonly WeightError[]> {
  const errors = list.flatMap(faultsOf);
  if (errors.length > 0) return err(errors);
  const pieces: Weighed[] = [];
  let running = ratio(0n);
  for (const { id, of, count, ...how } of list) {
    const one = 'slab' in how ? slabWeight(how.slab) : how.pounds;
    const all = product(one, whole(count));
    running = total([running, all]);
    pieces.push({ id, of, one, all, running });
  }
  const sumOf = (of: Belongs): Ratio =>
    total(pieces.flatMap((piece) => (piece.of === of ? [piece.all] : [])));
  const sums = {
    case: sumOf('case'),
    drawer: sumOf('drawer'),
    loose: sumOf('loose'),
    sheet: sumOf('sheet'),
    hardware: sumOf('hardware'),
  };
  return ok({ pieces, sums, all: running });
}

function faultsOf(piece: Weighable): readonly WeightError[] {
  const { id, count } = piece;
  const faults: WeightError[] =
    Number.isInteger(count) && count >= 0 ? [] : [{ code: 'count-not-whole', id }];
  if ('pounds' in piece) return isLess(piece.pounds) ? [...faults, { code: 'pounds-negative', id }] : faults;
  const sizes: readonly (readonly ['long' | 'wide' | 'thick', Length])[] = [
    ['long', piece.slab.long],
    ['wide', piece.slab.wide],
    ['thick', piece.slab.thick],
  ];
  for (const [what, size] of sizes)
    if (!isPositive(size)) faults.push({ code: 'size-not-positive', id, what });
  const { perFoot } = piece.slab;
  return perFoot && !isMore(perFoot) ? [...faults, { code: 'per-foot-not-positive', id }] : faults;
}
