import { err, ok, type Result } from '../../../length/result';
import { areaBound, sheetLowerBound, waysOf } from './bound';
import { byBlocks, isForBlocks } from './by-blocks';
import { byPatterns, isForPatterns } from './by-patterns';
import { bySets, isForSets } from './by-sets';
import { diceOf } from './dice';
import { better, leftStep, measuresOf } from './measures';
import { costOf, sheetsOf } from './plan';
import { polish, starts } from './polish';
import { dropTo, searchWithin } from './search';
import { emptyState, restore, type State, saved } from './state';
import { kindsOf, stockOf } from './stock';
import { stripBound } from './strip-bound';
import type { Laid, TwoD, TwoDError } from './two-d';

/** Steps of work in a unit of effort: about a millisecond of a desktop core. Measured, no source. */
const workPerUnit = 60_000;

/** Polishing stops when so many units brought nothing. */
const patience = 300;

/** Work in a step of the bound. Measured, no source. */
const stepOfBound = 0.3;

/** Less than any difference in cost that counts. */
const hair = 1e-9;

const size = (x: number): boolean => Number.isSafeInteger(x) && x > 0;

function check({ sheets, pieces }: TwoD): void {
  const whole = [...sheets, ...pieces].every((x) => size(x.w) && size(x.h) && size((x.count ?? 1) + 1));
  if (!whole || !sheets.every((s) => s.cost > 0))
    throw new RangeError('laySheets: sizes are whole and > 0, counts whole and >= 0, costs > 0');
}

function groupTooLarge({ sheets, pieces }: TwoD): number | undefined {
  const largest = Math.max(0, ...sheets.filter((s) => (s.count ?? 1) > 0).map((s) => s.w * s.h));
  const area = new Map<number, number>();
  for (const { together, w, h, count } of pieces)
    if (together !== undefined) area.set(together, (area.get(together) ?? 0) + w * h * count);
  return [...area].find(([, sum]) => sum > largest)?.[0];
}

function faultIn(problem: TwoD): TwoDError | undefined {
  const piece = problem.pieces.findIndex((p) => p.count > 0 && waysOf(problem, p).length === 0);
  if (piece >= 0) return { code: 'no-sheet-takes', piece };
  const together = groupTooLarge(problem);
  return together === undefined ? undefined : { code: 'together-too-large', together };
}

/** What the search works on; `until`: the work it may come to. */
type Run = {
  readonly problem: TwoD;
  readonly state: State;
  readonly bound: number;
  readonly until: number;
};

function withBound({ sheets, cost }: Pick<Laid, 'sheets' | 'cost'>, bound: number): Laid {
  return { sheets, cost, bound: Math.min(bound, cost), proved: cost <= bound };
}

function laidOf({ state, problem, bound }: Run): Laid {
  const sheets = sheetsOf(state, problem);
  return withBound({ sheets, cost: costOf(problem, sheets) }, bound);
}

/** Parts of the work: for the plans laid in one go; where pieces come many times for those, and for whole sheets. */
const startShare = 0.5;
const startBeforePatterns = 0.1;
const patternShare = 0.25;
const setShare = 0.4;
const blockShare = 0.3;

/** The best of the plans laid in one go, left lying in the state; yields each that is better than those before. */
function* firstPlan(run: Run): Generator<Laid | undefined, Laid | undefined> {
  const { state, problem, until } = run;
  // where whole sheets will be found, or pieces are very many, they are not laid in every way first
  const stop = until * (isForPatterns(state) ? startBeforePatterns : startShare);
  let best: Laid | undefined;
  let kept = saved(state);
  for (const done of starts(state)) {
    yield undefined;
    if (best && state.work > stop) break;
    if (!done) continue;
    const next = laidOf(run);
    const rank = { ...measuresOf(next.sheets), cost: next.cost };
    if (best && !better(rank, { ...measuresOf(best.sheets), cost: best.cost }, leftStep(problem))) continue;
    best = next;
    kept = saved(state);
    yield best;
  }
  if (best) restore(state, kept);
  return best;
}

/** Aims at less and less cost, until the bound is met, or so much work brought nothing, or none is left. */
function* lessCost(
  run: Run,
  first: Laid | undefined,
  quiet: number,
): Generator<Laid | undefined, Laid | undefined> {
  const { state, until } = run;
  let best = first;
  let kept = saved(state);
  while (!best?.proved && state.work < until) {
    if (best) state.budget = best.cost * (1 - hair);
    if (best) dropTo(state, state.budget);
    const stop = best ? Math.min(until, state.work + quiet) : until;
    if (!(yield* searchWithin(state, stop))) break;
    best = laidOf(run);
    kept = saved(state);
    yield best;
  }
  if (best) restore(state, kept);
  return best;
}

/** A closer bound, and the best of the plans out of whole sheets of any sets, left lying in the state. */
function* fromSets(
  run: Run,
  good: Laid,
): Generator<Laid | undefined, { readonly run: Run; readonly best: Laid }> {
  const { state, until } = run;
  const [kind] = state.kinds;
  const cost = kind?.cost ?? 1;
  if (!isForSets(state, Math.round(run.bound / cost))) return { run, best: good };
  let now = run;
  let best = good;
  let kept = saved(state);
  const known = Math.round(good.cost / cost);
  for (const found of bySets(state, known, state.work + (until - state.work) * setShare)) {
    if (!found) yield undefined;
    else if ('bound' in found) {
      now = { ...now, bound: Math.max(now.bound, found.bound * cost) };
      best = withBound(best, now.bound);
      yield best;
    } else if (state.cost < best.cost) {
      best = laidOf(now);
      kept = saved(state);
      yield best;
    }
    if (best.proved) break;
  }
  restore(state, kept);
  return { run: now, best };
}

/** The best of the plans that leave almost nothing of their sheets, left lying in the state. */
function* fromBlocks(run: Run, good: Laid): Generator<Laid | undefined, Laid> {
  const { state, problem, bound, until } = run;
  const cost = problem.sheets[0]?.cost ?? 1;
  let best = good;
  for (;;) {
    const fewer = Math.round(best.cost / cost) - 1;
    if (fewer * cost < bound || !isForBlocks(state, fewer)) return best;
    if (!(yield* byBlocks(state, fewer, state.work + (until - state.work) * blockShare))) return best;
    best = laidOf(run);
    yield best;
  }
}

/**
 * A plan of less cost where one is soon found, made good to cut by; then the rest of the work goes into one of less
 * cost still, so that whoever stops early has a plan to be cut by.
 */
function* bestPlan(run: Run, first: Laid | undefined): Generator<Laid | undefined, Laid | undefined> {
  const { state, problem, until } = run;
  const share = Math.min(until / 4, 2 * patience * workPerUnit);
  const polished = (laid: Laid, to: number) =>
    polish(state, laid, { problem, until: to, patience: patience * workPerUnit });
  const soon = yield* lessCost(run, first, share / 2);
  if (!soon || soon.proved) return soon && (yield* polished(soon, until));
  const kept = saved(state);
  const good = yield* polished(soon, state.work + share);
  restore(state, kept);
  const blocks = yield* fromBlocks(run, good);
  const sets = yield* fromSets(run, blocks);
  // making it good may have made it cheaper: only what costs less than that is of use
  const late = yield* lessCost(sets.run, sets.best, until);
  return !late || late.cost >= good.cost
    ? withBound(good, sets.run.bound)
    : yield* polished(late, state.work + share);
}

/** The dearer bound, where the quick ones do not meet the plan. */
function* raisedBound(run: Run): Generator<undefined, Run> {
  const [kind] = run.state.kinds;
  const known = Math.round(run.bound / (kind?.cost ?? 1));
  const strips = yield* stripBound(run.problem, known, (units) => {
    run.state.work += units * workPerUnit;
  });
  return { ...run, bound: Math.max(run.bound, strips) };
}

/** The best of the plans out of whole sheets, left lying in the state where it costs less than the one there is. */
function* fromPatterns(run: Run, first: Laid): Generator<Laid | undefined, Laid> {
  const { state, until } = run;
  let best = first;
  let kept = saved(state);
  for (const done of byPatterns(state, state.work + (until - state.work) * patternShare)) {
    yield undefined;
    if (!done || state.cost >= best.cost) continue;
    best = laidOf(run);
    kept = saved(state);
    yield best;
    if (best.proved) break;
  }
  restore(state, kept);
  return best;
}

/** Why it came to nothing: pieces of one number that go on no sheet together even alone, or too few sheets. */
function* whyNot(run: Run): Generator<undefined, TwoDError> {
  const { state, problem, until } = run;
  for (const together of state.stock.groups) {
    const pieces = problem.pieces.map((p) => (p.together === together ? p : { ...p, count: 0 }));
    const alone = emptyState(stockOf({ ...problem, pieces }), state.kinds, diceOf(1));
    if (!(yield* searchWithin(alone, until / 8))) return { code: 'together-too-large', together };
  }
  return { code: 'sheets-run-out', left: state.least };
}

/**
 * Lays pieces on sheets that are cut apart from edge to edge: at least cost, then with one large leftover kept whole,
 * then with few fence settings, then with few cuts. Every sheet's tree is what a saw can do; the same seed and effort
 * give the same plan everywhere.
 *
 * @param problem sizes in whole numbers of one unit, > 0, at most 2^31, kerf added; areas at most 2^53
 * @param options `seed`: any whole number; `effort`: > 0, about milliseconds of a desktop core
 * @returns a generator: yields a better plan each time there is one (or the same with a higher bound), and undefined
 *   every few milliseconds; returns the best
 *   (`proved` when no plan costs less), or an error: see `TwoDError`
 * @throws RangeError when a size is not whole or not > 0, a count not whole or < 0, a cost not > 0
 * @example laySheets({ sheets: [{ w: 4, h: 4, cost: 1 }], pieces: [{ w: 4, h: 2, count: 2, turn: false }] }, { seed: 1, effort: 10 })
 */
export function* laySheets(
  problem: TwoD,
  { seed, effort }: { readonly seed: number; readonly effort: number },
): Generator<Laid | undefined, Result<Laid, TwoDError>> {
  check(problem);
  const fault = faultIn(problem);
  if (fault) return err(fault);
  const state = emptyState(stockOf(problem), kindsOf(problem), diceOf(seed));
  const until = effort * workPerUnit;
  const quick: Run = { problem, state, until, bound: areaBound(problem) };
  const first = yield* firstPlan(quick);
  const bound = sheetLowerBound(problem, (steps) => {
    state.work += steps * stepOfBound;
  });
  const run: Run = { ...quick, bound };
  const bounded = first && withBound(first, run.bound);
  if (bounded && bounded.bound > (first?.bound ?? 0)) yield bounded;
  const closer = bounded && !bounded.proved ? yield* raisedBound(run) : run;
  const start = bounded && withBound(bounded, closer.bound);
  if (start && start.bound > bounded.bound) yield start;
  const several = start && !start.proved && isForPatterns(state);
  const best = yield* bestPlan(closer, several ? yield* fromPatterns(closer, start) : start);
  return best ? ok(best) : err(yield* whyNot(closer));
}
