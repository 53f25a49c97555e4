import type { Change, Entry, Json } from './entry';
import type { Folded, TickState } from './folded';
import {
  headsOf,
  inOrder,
  isDouble,
  isOver,
  keyOf,
  mostOver,
  overAt,
  placeOf,
  standing,
  undoneIn,
} from './merge';
import { awayOver, goneOver, lastOfEach, saysGone, takesAway, unseenBy } from './tombstones';

export type { Folded, TickState } from './folded';
export { inOrder, keyOf } from './merge';

type Building = {
  values: Map<string, Json>;
  ticks: Map<string, TickState>;
  places: Map<string, { trail: Entry[]; heads: readonly Entry[] }>;
  doubled: Set<string>;
  kept: Map<string, Entry>;
  /** Places that ever held a tombstone. */
  goneAt: Set<string>;
  last?: Entry;
};

const nothing = (): Building => ({
  values: new Map(),
  ticks: new Map(),
  places: new Map(),
  doubled: new Set(),
  kept: new Map(),
  goneAt: new Set(),
});

/**
 * Adds entries in log order. An entry over all heads of its place takes one step; any other place is worked out anew,
 * once, at the end.
 */
function add(state: Building, sorted: readonly Entry[]): void {
  const tangled = new Set<string>();
  for (const entry of sorted) {
    const at = placeOf(entry);
    const place = state.places.get(at);
    if (place) place.trail.push(entry);
    const heads = [entry];
    if (!place) state.places.set(at, { trail: [entry], heads });
    else if (entry.undoes !== undefined || !place.heads.every((head) => isOver(entry, head))) tangled.add(at);
    else place.heads = heads;
    if (!tangled.has(at)) settle(state, at, heads);
    if (entry.kind === 'edit' && saysGone(at)) state.goneAt.add(at);
    state.last = entry;
  }
  for (const at of tangled) {
    const place = state.places.get(at);
    if (place) place.heads = headsOf(place.trail, undoneIn(place.trail));
    settle(state, at, place?.heads ?? []);
  }
  keepThings(state, sorted);
}

/** Keeps a thing taken away while there is work on it that none of its tombstones had seen (M11). */
function keepThings(state: Building, fresh: readonly Entry[]): void {
  if (state.goneAt.size === 0) return;
  const away = (at: string) => state.values.get(at) === true || state.kept.has(at);
  const touched = new Set(
    fresh.flatMap((entry) =>
      [placeOf(entry), ...goneOver(placeOf(entry))].filter((at) => state.goneAt.has(at) && away(at)),
    ),
  );
  if (touched.size === 0) return;
  for (const at of touched) {
    state.kept.delete(at);
    settle(state, at, state.places.get(at)?.heads ?? []);
  }
  for (const [place, { heads }] of state.places)
    for (const at of goneOver(place)) if (touched.has(at)) for (const head of heads) keep(state, at, head);
}

function keep(state: Building, at: string, work: Entry): void {
  const heads = state.places.get(at)?.heads ?? [];
  if (state.values.get(at) !== true && !state.kept.has(at)) return;
  if (heads.length === 0 || !heads.every((gone) => unseenBy(gone, work))) return;
  const before = state.kept.get(at);
  if (!before || inOrder(before, work) < 0) state.kept.set(at, work);
  state.values.delete(at);
  state.doubled.add(at);
}

/** Brings the value or tick of a place to what its heads come to. No operation is spelled like a path. */
function settle(state: Building, at: string, heads: readonly Entry[]): void {
  const stands = standing(heads);
  if (stands?.kind === 'edit' && stands.value !== null) state.values.set(at, stands.value);
  else if (stands?.kind === 'tick')
    state.ticks.set(at, { figure: stands.figure, at: stands.at, device: stands.device });
  else {
    state.values.delete(at);
    state.ticks.delete(at);
  }
  if (isDouble(heads)) state.doubled.add(at);
  else if (state.doubled.size > 0) state.doubled.delete(at);
}

/** Folds a log, whatever order its entries are given in and whatever the clocks say (M1, M2). */
export function fold(entries: readonly Entry[]): Folded {
  const state = nothing();
  add(state, [...entries].sort(inOrder));
  return state;
}

/**
 * Adds entries to a fold when all of them come after its last entry; else undefined: fold the whole log (M18). The maps
 * grow in place, so a tick on a log of 100,000 costs one step; the fold given in must not be used afterwards.
 */
export function extend(folded: Folded, entries: readonly Entry[]): Folded | undefined {
  const sorted = [...entries].sort(inOrder);
  const first = sorted[0];
  if (!first) return folded;
  if (folded.last && inOrder(folded.last, first) >= 0) return undefined;
  const state = { ...folded } as Building;
  add(state, sorted);
  return state;
}

/** A fold with the values of these edits added, new paths last; places and ticks stay as they are. */
export function withChanges(folded: Folded, changes: readonly Change[]): Folded {
  const values = new Map(folded.values);
  for (const change of changes) {
    if (change.kind !== 'edit') continue;
    if (change.value === null) values.delete(change.path);
    else values.set(change.path, change.value);
  }
  return { ...folded, values };
}

/** Gives each change the keys of the heads it replaces, as this fold shows them (M9). */
export const over = (seen: Folded, changes: readonly Change[]): readonly Change[] =>
  changes.map((change) => {
    const here = overAt(seen.places.get(placeOf(change))?.heads ?? []);
    const also = takesAway(change) ? lastOfEach(seen) : awayOver(seen, placeOf(change));
    return { ...change, over: [...new Set([...here, ...also])].slice(0, mostOver) };
  });

/**
 * Union of two copies of a job's log, in order. An entry is never changed once written, so ours stands where both have
 * it.
 */
export function merge(ours: readonly Entry[], theirs: readonly Entry[]): readonly Entry[] {
  if (theirs.length === 0) return [...ours].sort(inOrder);
  const have = new Set(ours.map(keyOf));
  return [...ours, ...theirs.filter((e) => !have.has(keyOf(e)))].sort(inOrder);
}
