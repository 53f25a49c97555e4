import {
  absolute,
  add,
  compare,
  isNegative,
  isPositive,
  type Length,
  less,
  longest,
  shortest,
  subtract,
  times,
  zero,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import {
  faultIn,
  finestStep,
  type Margin,
  type Piece,
  type PieceError,
  type StackStock,
  usualMargin,
} from './pieces';
import { type Sum, sumsOf, type TooManyWays } from './sums';

/** What goes between the two outers, and what it cuts. Inches. */
export type Stack = {
  /** What one outer cuts. */
  readonly outer: Length;
  /** Larger first, each with a count of at least 1. */
  readonly chosen: readonly Piece[];
  /** Two outers and the pieces as marked: what the arbor carries. */
  readonly nominal: Length;
  /** What it cuts: nominal and the set's correction. */
  readonly width: Length;
  /** width - want. */
  readonly error: Length;
  /** Chippers and shims; the outers are not counted. */
  readonly pieces: number;
  readonly shims: number;
};

/** The margin is narrower than the least change one shim makes, so what lies in it lies there by luck. */
type NarrowMargin = { readonly code: 'margin-too-narrow'; readonly step: Length };

type Stacks = {
  readonly fewest: Stack;
  /** Nearer what is wanted, for more pieces. */
  readonly closest?: Stack;
  readonly note?: NarrowMargin;
};

export type StackError =
  | PieceError
  | TooManyWays
  | { readonly code: 'not-positive'; readonly what: 'want' | 'outer' }
  | { readonly code: 'margin-negative' }
  /** Narrower than the two outers alone; `bare` is them when they still lie in the margin. */
  | { readonly code: 'single-blade'; readonly least: Length; readonly bare?: Stack }
  | { readonly code: 'over-arbor'; readonly capacity: Length; readonly over: Length }
  /** `by` = nearest - want. A piece of size `fix.piece` more in `fix.to` makes what is wanted. */
  | {
      readonly code: 'none-fits';
      readonly nearest: Stack;
      readonly by: Length;
      readonly fix: { readonly piece: Length; readonly to: Stack };
      readonly note?: NarrowMargin;
    };

type Wanted = { readonly stock: StackStock; readonly want: Length; readonly margin: Margin };
type Order = (a: Stack, b: Stack) => number;

const nearer: Order = (a, b) => compare(absolute(a.error), absolute(b.error));
const fewer: Order = (a, b) => a.pieces - b.pieces;
const fewerShimsThenWider: Order = (a, b) => a.shims - b.shims || compare(b.width, a.width);
const fewestFirst: Order = (a, b) => fewer(a, b) || nearer(a, b) || fewerShimsThenWider(a, b);
const closestFirst: Order = (a, b) => nearer(a, b) || fewer(a, b) || fewerShimsThenWider(a, b);

/**
 * The stack for a groove, by the whole search. In the margin: fewest pieces, then least error, then fewest shims, then
 * the wider stack, then larger pieces first; beside it the closest, when that is another.
 *
 * @param stock the set in its box; @param want width to be cut, inches, > 0
 * @param margin inches, both sides >= 0, ends included; .001 under to .002 over when not said
 * @returns lengths in inches, or why there is none; with none in the margin, the nearest and the piece that is missing
 * @example stackFor(set, inches(7145n, 10000n)) // error 0, seven pieces: Example 1 of stacks
 */
export function stackFor(
  stock: StackStock,
  want: Length,
  margin: Margin = usualMargin,
): Result<Stacks, StackError> {
  const wanted = { stock, want, margin };
  const refused = refusal(wanted);
  if (refused) return err(refused);
  const target = between(wanted);
  const found = sumsOf(stock.pieces, {
    from: subtract(target, margin.under),
    to: add(target, margin.over),
  });
  if (!found.ok) return found;
  const inWindow = found.value.map((sum) => toStack(sum, wanted));
  const [first, ...rest] = inWindow.filter((s) => !stock.arbor || !less(stock.arbor, s.nominal));
  if (!first) return noneCarried(wanted, inWindow);
  const fewest = best(fewestFirst, first, rest);
  const closest = best(closestFirst, first, rest);
  return ok({ fewest, ...(nearer(closest, fewest) < 0 ? { closest } : {}), ...noteOn(wanted) });
}

/** What the two outers alone cut. */
const leastOf = ({ outer, correction = zero }: StackStock): Length => add(times(outer, 2n), correction);
/** What has to stand between the outers. */
const between = ({ stock, want }: Wanted): Length => subtract(want, leastOf(stock));

function refusal(wanted: Wanted): StackError | undefined {
  const { stock, want, margin } = wanted;
  if (!isPositive(stock.outer)) return { code: 'not-positive', what: 'outer' };
  if (!isPositive(want)) return { code: 'not-positive', what: 'want' };
  if (isNegative(margin.under) || isNegative(margin.over)) return { code: 'margin-negative' };
  return faultIn(stock.pieces) ?? tooNarrow(wanted) ?? tooWide(wanted);
}

function tooNarrow(wanted: Wanted): StackError | undefined {
  const least = leastOf(wanted.stock);
  if (!less(wanted.want, least)) return undefined;
  const bare = toStack({ total: zero, pieces: 0, shims: 0, chosen: [] }, wanted);
  const fits = !less(wanted.margin.over, bare.error);
  return { code: 'single-blade', least, ...(fits ? { bare } : {}) };
}

/** Over what the arbor carries, whatever lies in the box. */
function tooWide({ stock, want, margin }: Wanted): StackError | undefined {
  if (!stock.arbor) return undefined;
  const asked = subtract(subtract(want, margin.under), stock.correction ?? zero);
  const needed = longest(asked, times(stock.outer, 2n));
  if (!less(stock.arbor, needed)) return undefined;
  return { code: 'over-arbor', capacity: stock.arbor, over: subtract(needed, stock.arbor) };
}

function toStack({ total, chosen, pieces, shims }: Sum, { stock, want }: Wanted): Stack {
  const nominal = add(times(stock.outer, 2n), total);
  const width = add(nominal, stock.correction ?? zero);
  return { outer: stock.outer, chosen, nominal, width, error: subtract(width, want), pieces, shims };
}

/** Nothing in the margin that the arbor carries: too wide for the arbor, or not in the box. */
function noneCarried(wanted: Wanted, tooLong: readonly Stack[]): Result<never, StackError> {
  const { arbor } = wanted.stock;
  const [first, ...rest] = tooLong.map((s) => s.nominal);
  if (arbor && first)
    return err({ code: 'over-arbor', capacity: arbor, over: subtract(shortest(first, ...rest), arbor) });
  const nearest = nearestTo(wanted, 'either-side');
  if (!nearest.ok) return nearest;
  const under = nearestTo(wanted, 'under');
  if (!under.ok) return under;
  const aim = arbor ? shortest(wanted.want, add(arbor, wanted.stock.correction ?? zero)) : wanted.want;
  return err({
    code: 'none-fits',
    nearest: nearest.value,
    by: nearest.value.error,
    fix: { piece: subtract(aim, under.value.width), to: under.value },
    ...noteOn(wanted),
  });
}

/**
 * Widens the search until something lies in it: then the nearest of all does. It ends, for the outers alone cut no more
 * than is wanted and the arbor carries them.
 */
function nearestTo(wanted: Wanted, side: 'either-side' | 'under'): Result<Stack, TooManyWays> {
  const { pieces, arbor, outer } = wanted.stock;
  const target = between(wanted);
  const room = arbor && subtract(arbor, times(outer, 2n));
  for (let reach = finestStep(pieces) ?? outer; ; reach = times(reach, 2n)) {
    const to = side === 'under' ? target : add(target, reach);
    const found = sumsOf(pieces, { from: subtract(target, reach), to: room ? shortest(to, room) : to });
    if (!found.ok) return found;
    const [first, ...rest] = found.value.map((sum) => toStack(sum, wanted));
    if (first) return ok(best(closestFirst, first, rest));
  }
}

const best = (order: Order, first: Stack, rest: readonly Stack[]): Stack =>
  rest.reduce((kept, s) => (order(s, kept) < 0 ? s : kept), first);

function noteOn({ stock, margin }: Wanted): { readonly note?: NarrowMargin } {
  const step = finestStep(stock.pieces);
  return step && less(add(margin.under, margin.over), step)
    ? { note: { code: 'margin-too-narrow', step } }
    : {};
}
