import type { Dice } from './dice';
import { exactly } from './exact';
import { quickPlan } from './greedy';
import { type Kinds, pieceCount, type Stick } from './kinds';
import { amountsOf, costOf, type Master } from './master';
import { isOver, type Meter } from './meter';
import { pricerOf } from './price';
import type { Pricer } from './pricer';
import { generate, type Programme, programmeOf } from './relax';

/** The kinds still wanted, and which of the whole kinds each is. */
type Part = { readonly kinds: Kinds; readonly back: Int32Array };

/** A programme and the finder of sticks for it. */
type Begun = { readonly programme: Programme; readonly price: Pricer };

/** What dives of one problem share: all sticks priced so far. */
export type Pool = { readonly sticks: Stick[]; readonly keys: Set<string> };

/** A pool that knows nothing yet. @example emptyPool().sticks // [] */
export const emptyPool = (): Pool => ({ sticks: [], keys: new Set() });

/** Keeps a stick not yet known. @example keep(emptyPool(), [0, 1]) */
export function keep(pool: Pool, stick: Stick): void {
  const key = stick.join();
  if (pool.keys.has(key)) return;
  pool.keys.add(key);
  pool.sticks.push(stick);
}

/** Leaves out the kinds nobody wants any more. @example partOf(kinds, kinds.wanted).back */
export function partOf({ sizes, capacity }: Kinds, left: Int32Array): Part {
  const back = Int32Array.from([...left.keys()].filter((k) => (left[k] ?? 0) > 0));
  return {
    back,
    kinds: {
      capacity,
      sizes: Float64Array.from(back, (k) => sizes[k] ?? 0),
      wanted: Int32Array.from(back, (k) => left[k] ?? 0),
    },
  };
}

/** True when the stick can still be cut of what is left; sticks list equal kinds side by side. */
function isProper(stick: Stick, left: Int32Array): boolean {
  let run = 0;
  for (let p = 0; p < stick.length; p += 1) {
    const k = stick[p] ?? 0;
    run = k === stick[p - 1] ? run + 1 : 1;
    if (run > (left[k] ?? 0)) return false;
  }
  return true;
}

function take(stick: Stick, left: Int32Array): void {
  for (const k of stick) left[k] = (left[k] ?? 0) - 1;
}

/** Sticks that can still be cut, in the part's kinds. */
function usable(sticks: readonly Stick[], left: Int32Array, { back }: Part): Stick[] {
  const to = new Int32Array(left.length).fill(-1);
  back.forEach((k, at) => {
    to[k] = at;
  });
  return sticks.filter((s) => isProper(s, left)).map((s) => s.map((k) => to[k] ?? 0));
}

type Solving = {
  readonly pool: Pool;
  readonly meter: Meter;
  readonly most?: number;
  readonly until?: number;
};

/** A part and its programme. */
type Above = { readonly programme: Programme; readonly part: Part };

/** The best prices of a programme above, for the kinds of a part. */
function pricesOf({ programme, part }: Above, { back }: Part): Float64Array {
  const at = new Map(Array.from(part.back, (k, p) => [k, p]));
  return Float64Array.from(back, (k) => programme.dual.centre[at.get(k) ?? 0] ?? 0);
}

/** The programme of a part, begun with what the pool knows, and with what one above it has come to. */
export function beginPart(
  part: Part,
  left: Int32Array,
  { pool, meter, above }: { pool: Pool; meter: Meter; above?: Above },
): Begun {
  const known = above && {
    sticks: usable(weightiest(above), left, part),
    centre: pricesOf(above, part),
  };
  const programme = programmeOf(part.kinds, usable(pool.sticks, left, part), known);
  return { programme, price: pricerOf(part.kinds, meter) };
}

/**
 * Solves the programme of what is left; new sticks go to the pool.
 * @example solvePart(part, begun, { pool, meter }).next()
 */
export function* solvePart(part: Part, { programme, price }: Begun, { pool, ...how }: Solving) {
  const { sticks } = programme.columns;
  const known = sticks.length;
  const found = yield* generate(part.kinds, programme, { ...how, price });
  for (const stick of sticks.slice(known)) keep(pool, whole(stick, part));
  return found;
}

/** The sticks of a programme's plan in the kinds of the whole, those most is cut of first. */
function weightiest({ programme, part }: Above): Stick[] {
  const { amount, basis } = programme.master;
  const found: { readonly stick: Stick; readonly much: number }[] = [];
  basis.forEach((entry, r) => {
    if (typeof entry !== 'number') found.push({ stick: whole(entry, part), much: amount[r] ?? 0 });
  });
  return found.sort((a, b) => b.much - a.much).map(({ stick }) => stick);
}

const whole = (stick: Stick, { back }: Part): Stick => stick.map((k) => back[k] ?? 0);

/** Settles sticks after the programme: its whole parts, then those nearest to a whole stick, with some chance. */
function settleSome(
  master: Master,
  part: Part,
  { left, noise, dice }: { left: Int32Array; noise: number; dice: Dice },
): Stick[] {
  const settled: Stick[] = [];
  const rest: { readonly stick: Stick; readonly score: number }[] = [];
  const amount = amountsOf(master);
  master.basis.forEach((entry, r) => {
    if (typeof entry === 'number') return;
    const stick = whole(entry, part);
    const times = Math.floor((amount[r] ?? 0) + 1e-6);
    for (let t = 0; t < times && isProper(stick, left); t += 1) {
      take(stick, left);
      settled.push(stick);
    }
    const score = (amount[r] ?? 0) - times;
    if (score > 1e-6) rest.push({ stick, score: score + (noise * dice(1000)) / 1000 });
  });
  rest.sort((a, b) => b.score - a.score);
  for (const [at, { stick, score }] of rest.entries()) {
    if ((at > 0 && score < 0.6 + noise) || !isProper(stick, left)) break;
    take(stick, left);
    settled.push(stick);
  }
  return settled;
}

type Diving = {
  readonly pool: Pool;
  readonly meter: Meter;
  readonly dice: Dice;
  /** Chance in the choice of sticks, 0 … 1. */
  readonly noise: number;
  /** Sticks a plan may have, to be worth finding. */
  readonly target: number;
  /** The programme of the whole, solved. */
  readonly root: Programme;
};

/** How far a dive has come: what is settled, and the programme of what is left. */
type Level = {
  readonly settled: readonly Stick[];
  readonly left: Int32Array;
  readonly part: Part;
  readonly programme: Programme;
};

/** Pieces up to which what is left is tried every way, and the steps that may cost. Common practice, no source. */
const few = 36;
const steps = 6000;

/** Finishes what is left of a dive at once, if it can be done in `most` sticks. */
function finish(part: Part, most: number, meter: Meter): readonly Stick[] | undefined {
  const quick = quickPlan(part.kinds, { steps: 400, meter });
  if (quick.length <= most) return quick.map((s) => whole(s, part));
  if (pieceCount(part.kinds) > few) return undefined;
  return exactly(part.kinds, { target: most, steps, meter }).plan?.map((s) => whole(s, part));
}

/** One level deeper: some sticks settled, and the plan if the rest can be finished at once. */
function* deeper(
  kinds: Kinds,
  diving: Diving,
  from: Level,
): Generator<undefined, { readonly plan?: readonly Stick[]; readonly level?: Level }> {
  const { meter, target, pool } = diving;
  const left = Int32Array.from(from.left);
  const more = settleSome(from.programme.master, from.part, { left, noise: diving.noise, dice: diving.dice });
  const settled = [...from.settled, ...more];
  const part = partOf(kinds, left);
  const rest = finish(part, target - settled.length, meter);
  if (rest) return { plan: [...settled, ...rest] };
  if (more.length === 0) return {};
  const begun = beginPart(part, left, { pool, meter, above: from });
  const { programme } = begun;
  yield* solvePart(part, begun, { pool, meter, most: target - settled.length });
  if (settled.length + Math.ceil(costOf(programme.master) - 1e-6) > target) return {};
  return { level: { settled, left, part, programme } };
}

/** Times a dive may go back some levels before it is given up. Common practice, no source. */
const turns = 6;

/**
 * Settles sticks of the programme's plan a few at a time, solving what is left anew each time; where that cannot end
 * well it goes back some levels and settles others.
 *
 * @param kinds what is wanted, at least one of each kind
 * @param diving see the type
 * @returns a plan of at most `target` sticks, or undefined
 * @example dive(kinds, { pool, meter, dice, noise: 0, target: 3, root }).next()
 */
export function* dive(kinds: Kinds, diving: Diving): Generator<undefined, readonly Stick[] | undefined> {
  const { meter, dice, root } = diving;
  const top: Level = { settled: [], left: kinds.wanted, part: partOf(kinds, kinds.wanted), programme: root };
  const levels = [top];
  for (let turn = 0; !isOver(meter) && turn < turns; ) {
    const from = levels[levels.length - 1] ?? top;
    const noise = turn === 0 ? diving.noise : diving.noise + 0.2;
    const { plan, level } = yield* deeper(kinds, { ...diving, noise }, from);
    if (plan) return plan;
    if (level) levels.push(level);
    else {
      turn += 1;
      levels.length = Math.max(1, levels.length - dice(Math.min(levels.length, 1 + turn)));
    }
  }
  return undefined;
}
