import type { Change, Entry, Json } from './entry';

/** Order of a log: by count, then device. Wall clocks have no part in it. */
export function inOrder(a: Entry, b: Entry): number {
  if (a.count !== b.count) return a.count - b.count;
  return a.device < b.device ? -1 : a.device > b.device ? 1 : 0;
}

/** One entry of a job: which phone wrote it and its place there. */
export const keyOf = ({ count, device }: Pick<Entry, 'count' | 'device'>): string => `${count}.${device}`;

/** The path or operation a change is about. No operation is spelled like a path. */
export const placeOf = (change: Change): string => (change.kind === 'edit' ? change.path : change.op);

/** Most keys in one `over`, so that a row stays small; more heads are replaced by several entries. */
export const mostOver = 100;

/** Keys of the heads that a change made now replaces. */
export const overAt = (heads: readonly Entry[]): readonly string[] => heads.slice(-mostOver).map(keyOf);

/**
 * Whether an entry replaces an earlier one of its place: its `over` names it (M4), or both are of one phone (M5), or
 * neither has an `over` and the order decides (M13).
 */
export const isOver = (entry: Entry, earlier: Entry): boolean =>
  entry.device === earlier.device ||
  (entry.over === undefined ? earlier.over === undefined : entry.over.includes(keyOf(earlier)));

type Drops = (entry: Entry) => boolean;

/**
 * The heads of one place: its entries that no other entry of it replaces (M6). A dropped entry is no head and replaces
 * nothing by itself; but whatever replaced it replaced what it was over too.
 *
 * @param trail the entries of one place, in order
 * @example two phones that write over one reading, neither having seen the other: both of theirs
 */
export function headsOf(trail: readonly Entry[], dropped: Drops): readonly Entry[] {
  const behind = behindEach(trail);
  const replaced = new Set<string>();
  const heads: Entry[] = [];
  for (let k = trail.length - 1; k >= 0; k -= 1) {
    const entry = trail[k];
    if (!entry) continue;
    const hidden = replaced.has(keyOf(entry));
    const out = dropped(entry);
    if (!hidden && !out) heads.push(entry);
    if (hidden || !out) for (const key of behind[k] ?? []) replaced.add(key);
  }
  return heads.reverse();
}

/** For each entry, the keys of those it is over. */
function behindEach(trail: readonly Entry[]): readonly (readonly string[])[] {
  const own = new Map<string, string>();
  let silent: string | undefined;
  return trail.map((entry) => {
    const key = keyOf(entry);
    const before = own.get(entry.device);
    const keys = [...(entry.over ?? (silent === undefined ? [] : [silent]))];
    if (before !== undefined) keys.push(before);
    own.set(entry.device, key);
    if (entry.over === undefined) silent = key;
    return keys;
  });
}

/**
 * Tells the entries of one place to drop because they were taken back: an act and its undo both, as if neither had been
 * written (M10). Acts without `over` are taken back by an ordinary edit (M13).
 *
 * @param trail the entries of one place, in order
 */
export function undoneIn(trail: readonly Entry[]): Drops {
  const name = (device: string, act: string) => `${device} ${act}`;
  const first = new Map<string, number>();
  const takenBack = new Map<string, number>();
  for (const { device, act, undoes, count, over } of trail) {
    if (over === undefined) continue;
    if (!first.has(name(device, act))) first.set(name(device, act), count);
    if (undoes !== undefined) takenBack.set(name(device, undoes), count);
  }
  return ({ device, act, undoes, count, over }) =>
    over !== undefined &&
    (count < (takenBack.get(name(device, act)) ?? 0) ||
      (undoes !== undefined && (first.get(name(device, undoes)) ?? count) < count));
}

/** What an entry says of its place; null that nothing is there. */
export const said = (entry: Entry): Json =>
  entry.kind === 'edit' ? entry.value : entry.kind === 'tick' ? entry.figure : null;

/**
 * The head to reckon with while a place is double: the last in order that says something, so that a merge takes nothing
 * away and unticks no cut (M7).
 */
export const standing = (heads: readonly Entry[]): Entry | undefined =>
  heads.length < 2
    ? heads[0]
    : (heads.filter((head) => said(head) !== null).pop() ?? heads[heads.length - 1]);

/** Whether the heads of a place say different things. */
export const isDouble = (heads: readonly Entry[]): boolean =>
  heads.length > 1 && new Set(heads.map((head) => JSON.stringify(said(head)))).size > 1;
