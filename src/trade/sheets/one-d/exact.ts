import type { Kinds, Stick } from './kinds';
import type { Meter } from './meter';

/** A plan of so few sticks; `none`: there is no such plan; neither: the steps ran out first. */
type Answer = { readonly plan: readonly Stick[] | undefined; readonly none: boolean };

type Trial = {
  readonly pieces: readonly number[];
  readonly rooms: number[];
  readonly into: Int32Array;
  readonly target: number;
  /** Length that may stay empty in all. */
  slack: number;
  steps: number;
};

/** Where a piece may go: no earlier than an equal one before it, and not into two sticks with equal room. */
function places(kinds: Kinds, t: Trial, at: number): readonly number[] {
  const size = kinds.sizes[t.pieces[at] ?? 0] ?? 0;
  const from = at > 0 && t.pieces[at - 1] === t.pieces[at] ? (t.into[at - 1] ?? 0) : 0;
  const seen = new Set<number>();
  const found: number[] = [];
  for (let s = from; s < t.rooms.length; s += 1) {
    const room = t.rooms[s] ?? 0;
    if (room < size || seen.has(room)) continue;
    seen.add(room);
    found.push(s);
  }
  if (t.rooms.length < t.target) found.push(t.rooms.length);
  return found;
}

/** What is lost for good: rooms too short for the shortest piece. */
function lost({ rooms }: Trial, shortest: number): number {
  let sum = 0;
  for (const room of rooms) if (room < shortest) sum += room;
  return sum;
}

function place(kinds: Kinds, t: Trial, at: number): boolean {
  if (at === t.pieces.length) return true;
  if (t.steps <= 0) return false;
  t.steps -= 1;
  if (lost(t, kinds.sizes[kinds.sizes.length - 1] ?? 0) > t.slack) return false;
  const size = kinds.sizes[t.pieces[at] ?? 0] ?? 0;
  for (const s of places(kinds, t, at)) {
    const isNew = s === t.rooms.length;
    if (isNew) t.rooms.push(kinds.capacity);
    t.rooms[s] = (t.rooms[s] ?? 0) - size;
    t.into[at] = s;
    if (place(kinds, t, at + 1)) return true;
    if (isNew) t.rooms.pop();
    else t.rooms[s] = (t.rooms[s] ?? 0) + size;
  }
  return false;
}

/**
 * Tries every way to cut all pieces from so many sticks: for small jobs.
 *
 * @param kinds sizes in whole grid steps, longest first
 * @param options `target` sticks, ≥ 0; `steps` the search may cost; `meter` counts the work
 * @returns a plan, or that there is none, or neither when the steps ran out
 * @example exactly(kinds, { target: 2, steps: 1000, meter }).none
 */
export function exactly(
  kinds: Kinds,
  { target, steps, meter }: { target: number; steps: number; meter: Meter },
): Answer {
  const pieces = [...kinds.wanted].flatMap((n, k) => new Array<number>(n).fill(k));
  const sum = pieces.reduce((s, k) => s + (kinds.sizes[k] ?? 0), 0);
  const slack = target * kinds.capacity - sum;
  if (slack < 0) return { plan: undefined, none: true };
  const trial: Trial = { pieces, rooms: [], into: new Int32Array(pieces.length), target, slack, steps };
  const found = place(kinds, trial, 0);
  meter.spent += (steps - trial.steps) * 400;
  if (!found) return { plan: undefined, none: trial.steps > 0 };
  const sticks: number[][] = trial.rooms.map(() => []);
  pieces.forEach((k, at) => {
    sticks[trial.into[at] ?? 0]?.push(k);
  });
  return { plan: sticks, none: false };
}
