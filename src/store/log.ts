import type { Change, Entry, Json } from './entry';

export type TickState = { readonly figure: string; readonly at: string; readonly device: string };

/** What a log comes to. Kept as it grows: a tick on a long log costs one step, not the whole log. */
export type Folded = {
  /** Path → last written value. A value taken away is absent. */
  readonly values: ReadonlyMap<string, Json>;
  /** Operation → its tick; absent when not ticked. */
  readonly ticks: ReadonlyMap<string, TickState>;
  /** The last entry folded; later entries can be added without folding again. */
  readonly last?: Entry;
};

/** Order of a log: by count, then device. Wall clocks have no part in it. */
export function inOrder(a: Entry, b: Entry): number {
  if (a.count !== b.count) return a.count - b.count;
  return a.device < b.device ? -1 : a.device > b.device ? 1 : 0;
}

/** One entry of a job: which phone wrote it and its place there. */
export const keyOf = ({ count, device }: Pick<Entry, 'count' | 'device'>): string => `${count}.${device}`;

type Building = { values: Map<string, Json>; ticks: Map<string, TickState>; last?: Entry };

function apply(state: Building, entry: Entry): void {
  if (entry.kind === 'edit') {
    if (entry.value === null) state.values.delete(entry.path);
    else state.values.set(entry.path, entry.value);
  } else if (entry.kind === 'tick') {
    state.ticks.set(entry.op, { figure: entry.figure, at: entry.at, device: entry.device });
  } else state.ticks.delete(entry.op);
  state.last = entry;
}

/** What a log comes to, whatever order its entries are given in: the last in order wins. */
export function fold(entries: readonly Entry[]): Folded {
  const state: Building = { values: new Map(), ticks: new Map() };
  for (const entry of [...entries].sort(inOrder)) apply(state, entry);
  return state;
}

/**
 * Adds entries that all come after what was folded; undefined when one does not: fold again. The maps grow in place,
 * so a tick on a log of 100,000 costs one step; the state given in must not be used after.
 */
export function extend(folded: Folded, entries: readonly Entry[]): Folded | undefined {
  const sorted = [...entries].sort(inOrder);
  const first = sorted[0];
  if (!first) return folded;
  if (folded.last && inOrder(folded.last, first) >= 0) return undefined;
  const state = { ...folded } as Building;
  for (const entry of sorted) apply(state, entry);
  return state;
}

/** Union of two copies of a job's log. An entry is never changed once written, so ours stands where both have it. */
export function merge(ours: readonly Entry[], theirs: readonly Entry[]): readonly Entry[] {
  const have = new Set(ours.map(keyOf));
  return [...ours, ...theirs.filter((e) => !have.has(keyOf(e)))].sort(inOrder);
}

export type Act = { readonly act: string; readonly label: string; readonly entries: readonly Entry[] };

/** How many acts can be taken back. */
export const undoDepth = 50;

/** This phone's acts not yet taken back, newest first, at most 50. */
export function undoable(entries: readonly Entry[], device: string): readonly Act[] {
  const undone = new Set<string>();
  const acts = new Map<string, Entry[]>();
  for (let k = entries.length - 1; k >= 0 && acts.size <= undoDepth; k -= 1) {
    const entry = entries[k];
    if (entry?.device !== device) continue;
    if (entry.undoes !== undefined) undone.add(entry.undoes);
    else if (!undone.has(entry.act)) acts.set(entry.act, [entry, ...(acts.get(entry.act) ?? [])]);
  }
  return [...acts]
    .slice(0, undoDepth)
    .map(([act, own]) => ({ act, label: own[0]?.label ?? '', entries: own }));
}

/**
 * The changes that take an act back: each place goes to what the log would say there without the act. So an edit goes
 * to the value before it and a tick to the tick before it, or to none; what another phone has written there since
 * stands, written once more, so that the act counts as taken back and nobody's later word is lost.
 *
 * @param entries the whole log, in order
 */
export function undoOf(entries: readonly Entry[], act: Act): readonly Change[] {
  const touched = new Map(act.entries.map((entry) => [targetOf(entry), entry]));
  const undone = new Set([act.act]);
  for (const { undoes } of entries) if (undoes !== undefined) undone.add(undoes);
  const stands = new Map<string, Entry>();
  for (const other of entries) {
    if (other.undoes !== undefined || undone.has(other.act)) continue;
    const target = targetOf(other);
    if (touched.has(target)) stands.set(target, other);
  }
  return [...touched].map(([target, entry]) => restore(entry, stands.get(target)));
}

const targetOf = (entry: Entry): string => (entry.kind === 'edit' ? `edit ${entry.path}` : `op ${entry.op}`);

function restore(entry: Entry, stands: Entry | undefined): Change {
  if (entry.kind === 'edit') {
    return { kind: 'edit', path: entry.path, value: stands?.kind === 'edit' ? stands.value : null };
  }
  return stands?.kind === 'tick'
    ? { kind: 'tick', op: entry.op, figure: stands.figure }
    : { kind: 'untick', op: entry.op };
}
