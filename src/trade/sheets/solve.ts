import { err, ok, type Result } from '../../length/result';
import { type Filled, fillSticks } from './one-d/fill-sticks';
import { exactMixed } from './one-d/mixed';
import { laySheets } from './two-d/lay-sheets';
import type { Laid, Tree, TwoD, TwoDError } from './two-d/two-d';

/** How hard to look: same seed and effort, same plan. `effort` 1 is about a millisecond of a desktop core. */
export type Effort = { readonly seed: number; readonly effort: number };

/** Better plans as they are found, and `undefined` now and then so that the caller can stop; the best at the end. */
type Solving = Generator<Laid | undefined, Result<Laid, TwoDError>>;

/** Sticks of one kind, as many as it takes: the search for sticks; everything else the one for sheets. */
const oneKind = (two: TwoD): boolean =>
  two.sheets.length === 1 && two.sheets[0]?.count === undefined && two.sheets[0]?.h === 1;

/**
 * Lays pieces out on sheets or sticks.
 *
 * @param two whole numbers, kerf included
 * @example [...solve(two, { seed: 1, effort: 100 })]
 */
export function solve(two: TwoD, effort: Effort): Solving {
  if (oneKind(two)) return solveSticks(two, effort);
  return isSticks(two) && pieceCount(two) <= few ? solveFew(two, effort) : laySheets(two, effort);
}

/** Pieces up to which every way is tried. Common practice, no source: a dozen are done in a blink. */
const few = 12;

const isSticks = ({ sheets }: TwoD): boolean => sheets.every((s) => s.h === 1);
const pieceCount = ({ pieces }: TwoD): number => pieces.reduce((n, p) => n + p.count, 0);

/** Sticks of several lengths, offcuts among them: a plan at once, then every way that costs less. */
function* solveFew(two: TwoD, effort: Effort): Solving {
  const start = yield* laySheets(two, { ...effort, effort: Math.min(effort.effort, 200) });
  if (!start.ok && start.error.code !== 'sheets-run-out') return start;
  const mix = {
    sticks: two.sheets.map(({ w, cost, count }) => ({
      capacity: w,
      cost,
      ...(count === undefined ? {} : { count }),
    })),
    items: two.pieces.map((p) => ({ size: p.w, count: p.count })),
  };
  const found = exactMixed(mix, start.ok ? start.value.cost : undefined);
  if (!found.sticks) {
    return start.ok && found.whole ? ok({ ...start.value, bound: start.value.cost, proved: true }) : start;
  }
  const sheets = found.sticks.map(({ kind, items }) => ({
    kind,
    tree: rowOf(items, two, two.sheets[kind]?.w ?? 0),
  }));
  const bound = found.whole ? found.cost : start.ok ? start.value.bound : 0;
  return ok({ sheets, cost: found.cost, bound, proved: bound === found.cost });
}

function* solveSticks(two: TwoD, effort: Effort): Solving {
  const [stick] = two.sheets;
  if (!stick) return err({ code: 'no-sheet-takes', piece: 0 });
  const long = two.pieces.findIndex((p) => p.w > stick.w);
  if (long >= 0) return err({ code: 'no-sheet-takes', piece: long });
  const problem = { capacity: stick.w, items: two.pieces.map((p) => ({ size: p.w, count: p.count })) };
  const search = fillSticks(problem, effort);
  for (;;) {
    const { value, done } = search.next();
    if (done) return ok(laidOf(value, two));
    yield value && laidOf(value, two);
  }
}

function laidOf({ sticks, bound, proved }: Filled, two: TwoD): Laid {
  const [stick] = two.sheets;
  const cost = stick?.cost ?? 1;
  const whole = stick?.w ?? 0;
  return {
    sheets: sticks.map(({ items }) => ({ kind: 0, tree: rowOf(items, two, whole) })),
    cost: sticks.length * cost,
    bound: bound * cost,
    proved,
  };
}

/** The longest first; what is over is left at the end. */
function rowOf(items: readonly number[], two: TwoD, whole: number): Tree {
  const [piece, ...rest] = [...items].sort(
    (a, b) => (two.pieces[b]?.w ?? 0) - (two.pieces[a]?.w ?? 0) || a - b,
  );
  if (piece === undefined) return { w: whole, h: 1, is: 'left' };
  const w = two.pieces[piece]?.w ?? 0;
  const leaf: Tree = { w, h: 1, is: 'piece', piece, turned: false };
  return w === whole
    ? leaf
    : { w: whole, h: 1, is: 'cut', across: false, at: w, a: leaf, b: rowOf(rest, two, whole - w) };
}

/** As many pieces as go, and how many of each found no place. */
export type Refit = { readonly laid: Laid | undefined; readonly dropped: readonly number[] };

/**
 * Lays out what goes on the sheets there are, the largest pieces first; what does not go is handed back.
 *
 * @param two with a count for every sheet
 * @returns `dropped`: by number of the piece, how many have no place
 */
export function* refit(two: TwoD, effort: Effort): Generator<undefined, Refit> {
  const counts = two.pieces.map(() => 0);
  const area = (k: number) => (two.pieces[k]?.w ?? 0) * (two.pieces[k]?.h ?? 0);
  const order = two.pieces
    .flatMap((p, k) => Array.from({ length: p.count }, () => k))
    .sort((a, b) => area(b) - area(a) || a - b);
  let laid: Laid | undefined;
  const whole = yield* finish(two, effort);
  if (whole) return { laid: whole, dropped: counts };
  for (const k of order) {
    const wanted = counts.map((n, j) => (j === k ? n + 1 : n));
    const pieces = two.pieces.map((p, j) => ({ ...p, count: wanted[j] ?? 0 }));
    const found = yield* finish({ ...two, pieces }, effort);
    if (!found) continue;
    laid = found;
    counts[k] = (counts[k] ?? 0) + 1;
  }
  return { laid, dropped: two.pieces.map((p, k) => p.count - (counts[k] ?? 0)) };
}

function* finish(two: TwoD, effort: Effort): Generator<undefined, Laid | undefined> {
  const search = laySheets(two, effort);
  for (;;) {
    const { value, done } = search.next();
    if (done) return value.ok ? value.value : undefined;
    yield undefined;
  }
}
