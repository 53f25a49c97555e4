import { boundOf } from './bounds';
import { type Dice, diceOf } from './dice';
import { beginPart, dive, emptyPool, keep, type Pool, partOf, solvePart } from './dive';
import { exactly } from './exact';
import { quickPlan } from './greedy';
import {
  checkOneD,
  type Fill,
  fillsOf,
  isPlan,
  type Kinds,
  kindsOf,
  type OneD,
  pieceCount,
  type Stick,
} from './kinds';
import { isOver, type Meter, markOf, meterOf } from './meter';
import { reduce } from './reduce';
import type { Programme } from './relax';

/**
 * A plan: its sticks, a bound no plan is below, and whether it is proved to have the fewest (sticks.length = bound).
 */
export type Filled = { readonly sticks: readonly Fill[]; readonly bound: number; readonly proved: boolean };

/** `seed`: any whole number; `effort`: units of work, 1 ≈ a millisecond of a desktop core. */
export type Filling = { readonly seed: number; readonly effort: number };

/** What is known in the course of a search, over the kinds left after the reductions. */
type Search = {
  readonly kinds: Kinds;
  readonly meter: Meter;
  best: readonly Stick[];
  bound: number;
};

type Searching = Generator<readonly Stick[] | undefined, void>;

/** Pieces up to which every way is tried. Common practice, no source. */
const few = 40;

/** Takes a plan over when it is shorter and holds water. */
function isBetter(s: Search, plan: readonly Stick[]): boolean {
  if (plan.length >= s.best.length || !isPlan(s.kinds, plan)) return false;
  s.best = plan;
  return true;
}

/** Tries every way, one stick fewer at a time, for as long as a few steps allow. */
function* tryAll(s: Search, steps: number): Searching {
  while (s.best.length > s.bound && !isOver(s.meter)) {
    const { plan, none } = exactly(s.kinds, { target: s.best.length - 1, steps, meter: s.meter });
    if (none) s.bound = s.best.length;
    if (!plan || !isBetter(s, plan)) return;
    yield s.best;
  }
}

/** Part of the effort that may go into the programme before the first dive. Common practice, no source. */
const early = 0.5;

type Solved = { readonly pool: Pool; readonly dice: Dice; readonly root: Programme; readonly turns: number };

/** Dives from the programme until the bound is met, the work is used up or so many dives are done. */
function* byDiving(s: Search, { pool, dice, root, turns }: Solved): Searching {
  for (let turn = 0; turn < turns && s.best.length > s.bound && !isOver(s.meter); turn += 1) {
    const noise = turn === 0 ? 0 : 0.1 + 0.1 * (turn % 5);
    const target = s.best.length - 1;
    const found = yield* dive(s.kinds, { pool, meter: s.meter, dice, noise, target, root });
    if (found && isBetter(s, found)) yield s.best;
  }
}

/** Solves the programme and dives from it; a programme that takes long is left for a first dive, then solved. */
function* bySolving(s: Search, seed: number): Searching {
  const { kinds, meter } = s;
  const pool: Pool = emptyPool();
  const dice = diceOf(seed);
  for (const stick of s.best) keep(pool, stick);
  const whole = partOf(kinds, kinds.wanted);
  const until = markOf(meter, early);
  const begun = beginPart(whole, kinds.wanted, { pool, meter });
  const root = begun.programme;
  const { bound, done } = yield* solvePart(whole, begun, { pool, meter, until });
  s.bound = Math.max(s.bound, bound);
  if (!done) {
    yield* byDiving(s, { pool, dice, root, turns: 1 });
    if (s.best.length > s.bound) {
      const again = yield* solvePart(whole, begun, { pool, meter });
      s.bound = Math.max(s.bound, again.bound);
    }
  }
  yield* byDiving(s, { pool, dice, root, turns: Number.POSITIVE_INFINITY });
}

/**
 * Cuts all pieces from as few equal sticks as it finds. Yields a better plan each time one is found (the first at
 * once), and `undefined` now and then, so that the caller can stop; the same seed and effort give the same plan.
 *
 * @param problem sizes and capacity in whole grid steps, kerf already added to both
 * @param filling `seed`: any whole number; `effort`: units of work, ≥ 0 (1 ≈ a millisecond of a desktop core)
 * @returns the best plan, in sticks, with its bound and whether it is proved
 * @throws RangeError if the problem is not one (see `checkOneD`)
 * @example fillSticks({ capacity: 10, items: [{ size: 6, count: 2 }] }, { seed: 1, effort: 10 }).next().value?.bound // 2
 */
export function* fillSticks(problem: OneD, { seed, effort }: Filling): Generator<Filled | undefined, Filled> {
  checkOneD(problem);
  const all = kindsOf(problem);
  const { sticks, left } = reduce(all);
  const meter = meterOf(effort);
  const { kinds, back } = partOf(all, left);
  const s: Search = { kinds, meter, best: quickPlan(kinds, { steps: 2000, meter }), bound: boundOf(kinds) };
  const told = (): Filled => {
    const plan = [...sticks, ...s.best.map((stick) => stick.map((k) => back[k] ?? 0))];
    const bound = sticks.length + s.bound;
    return { sticks: fillsOf(problem, plan), bound, proved: plan.length === bound };
  };
  yield told();
  if (pieceCount(kinds) <= few) for (const found of tryAll(s, 30_000)) yield found && told();
  if (s.best.length > s.bound) for (const found of bySolving(s, seed)) yield found && told();
  return told();
}
