import { type Dual, dualsFor } from './dual';
import { type Holder, leastCost, leastCostQuick } from './sheet-count-bound';
import type { TwoD } from './two-d';

type Way = { readonly w: number; readonly h: number };

/**
 * The ways a piece may lie that some kind of sheet takes.
 *
 * @example waysOf(problem, { w: 3, h: 2, count: 1, turn: true }) // as it is, turned
 */
export function waysOf(problem: TwoD, piece: TwoD['pieces'][number]): readonly Way[] {
  const ways = [piece, ...(piece.turn && piece.w !== piece.h ? [{ w: piece.h, h: piece.w }] : [])];
  return ways.filter((way) => problem.sheets.some((s) => (s.count ?? 1) > 0 && way.w <= s.w && way.h <= s.h));
}

/**
 * Values of every way along one side, piece by piece: [as it is, turned]; a way not allowed is left out of both
 * lists.
 */
type Sides = { readonly x: Float64Array; readonly y: Float64Array };

/**
 * The list of ways, flat, those of one piece next to each other; `more`: 1 where the next way is of the same piece;
 * `counts`: how many there are of the piece.
 */
type Flat = { readonly ways: readonly Way[]; readonly more: Uint8Array; readonly counts: Float64Array };

function flatten(problem: TwoD): Flat | undefined {
  const lists = problem.pieces
    .filter((p) => p.count > 0)
    .map((p) => ({ count: p.count, ways: waysOf(problem, p) }));
  if (lists.some((l) => l.ways.length === 0)) return undefined;
  return {
    ways: lists.flatMap((l) => l.ways),
    more: Uint8Array.from(lists.flatMap((l) => l.ways.map((_, k) => (k < l.ways.length - 1 ? 1 : 0)))),
    counts: Float64Array.from(lists.flatMap((l) => l.ways.map(() => l.count))),
  };
}

const valuesOf = (duals: readonly Dual[], sizes: readonly number[]): readonly Float64Array[] =>
  duals.map((f) => Float64Array.from(sizes, f));

/** What all pieces come to: each in the way that comes to least, as many times as it is wanted. */
function needOf({ more, counts }: Flat, { x, y }: Sides): number {
  let need = 0;
  for (let k = 0; k < more.length; k += 1) {
    let least = (x[k] ?? 0) * (y[k] ?? 0);
    for (; more[k] === 1; k += 1) least = Math.min(least, (x[k + 1] ?? 0) * (y[k + 1] ?? 0));
    need += least * (counts[k] ?? 0);
  }
  return need;
}

/** Bounds worth working out with whole sheets: the best few of the quick ones. */
const mostExact = 8;

type Candidate = { readonly quick: number; readonly kinds: readonly Holder[]; readonly need: number };

function keepBest(kept: Candidate[], candidate: Candidate): void {
  kept.push(candidate);
  kept.sort((a, b) => b.quick - a.quick);
  if (kept.length > mostExact) kept.pop();
}

function bestOf(problem: TwoD, flat: Flat, spend: (steps: number) => void): number {
  const kinds = problem.sheets.filter((s) => (s.count ?? 1) > 0);
  const xs = dualsFor(
    Math.max(...kinds.map((s) => s.w)),
    flat.ways.map((way) => way.w),
  );
  const ys = dualsFor(
    Math.max(...kinds.map((s) => s.h)),
    flat.ways.map((way) => way.h),
  );
  const across = valuesOf(
    xs,
    flat.ways.map((way) => way.w),
  );
  const along = valuesOf(
    ys,
    flat.ways.map((way) => way.h),
  );
  const kept: Candidate[] = [];
  spend(xs.length * ys.length * flat.ways.length);
  for (const [i, x] of across.entries()) {
    for (const [j, y] of along.entries()) {
      const need = needOf(flat, { x, y });
      const holders = kinds.map((s) => ({
        holds: (xs[i]?.(s.w) ?? 0) * (ys[j]?.(s.h) ?? 0),
        count: s.count ?? Number.POSITIVE_INFINITY,
        cost: s.cost,
      }));
      const quick = leastCostQuick(holders, need);
      if (kept.length < mostExact || quick > (kept.at(-1)?.quick ?? 0))
        keepBest(kept, { quick, kinds: holders, need });
    }
  }
  return Math.max(0, ...kept.map((c) => leastCost(c.kinds, c.need)));
}

/**
 * No plan costs less: areas, and areas of sizes replaced by dual feasible functions; a piece that may be turned
 * counts as it lies where it comes to least. Cuts of any kind, not only from edge to edge, obey it.
 *
 * @param problem whole numbers, one unit, kerf added @param spend is told the steps of work it takes
 * @returns cost, >= 0; Infinity when a piece fits no sheet or the sheets there are cannot do
 * @example sheetLowerBound({ sheets: [{ w: 4, h: 4, cost: 1 }], pieces: [{ w: 3, h: 3, count: 2, turn: false }] }) // 2
 * Source: S. P. Fekete, J. Schepers, "A general framework for bounds for higher-dimensional orthogonal packing
 * problems", Math. Methods of OR 60 (2004): dual feasible functions of the sides are conservative scales.
 */
export function sheetLowerBound(problem: TwoD, spend: (steps: number) => void = () => {}): number {
  const flat = flatten(problem);
  if (!flat) return Number.POSITIVE_INFINITY;
  return flat.ways.length === 0 ? 0 : bestOf(problem, flat, spend);
}

/**
 * The bound of plain areas, in no time: for a first plan.
 *
 * @returns cost, >= 0; never above `sheetLowerBound`
 * @example areaBound({ sheets: [{ w: 4, h: 4, cost: 1 }], pieces: [{ w: 4, h: 3, count: 2, turn: false }] }) // 2
 */
export function areaBound({ sheets, pieces }: TwoD): number {
  const kinds = sheets
    .filter((s) => (s.count ?? 1) > 0)
    .map((s) => ({ holds: s.w * s.h, count: s.count ?? Number.POSITIVE_INFINITY, cost: s.cost }));
  const need = pieces.reduce((sum, p) => sum + p.w * p.h * p.count, 0);
  return kinds.length === 0 ? 0 : leastCostQuick(kinds, need);
}
