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

/** More heads than this are replaced in several goes: a row stays of a size. */
export const mostOver = 100;

/** Keys of the heads that a change made now replaces. */
export const overAt = (heads: readonly Entry[]): readonly string[] => heads.slice(-mostOver).map(keyOf);

/**
 * Whether an entry replaces an earlier one of its place: it says so, or it is of the same phone, or neither says
 * anything and order alone speaks, as it did when they were written. Such a row never replaces one that does say:
 * the code that wrote it could not have read the other.
 */
export const isOver = (entry: Entry, earlier: Entry): boolean =>
  entry.device === earlier.device ||
  (entry.over === undefined ? earlier.over === undefined : entry.over.includes(keyOf(earlier)));

type Drops = (entry: Entry) => boolean;

/**
 * The heads of one place: the entries written to it that no other entry of that place is over. An entry that is dropped
 * stands for nothing and replaces nothing by itself, yet whatever replaced it replaced what it was over too.
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
 * What is dropped of a place because it was taken back: the act and its undo, both, so that all stands as if neither
 * had been. Acts written before entries said what they are over are taken back by an edit like any other.
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
 * The head that is reckoned with meanwhile: the last in order that says something. What one phone took away and
 * another wrote anew, not knowing, is there: putting logs together takes nothing away and unticks no cut.
 */
export const standing = (heads: readonly Entry[]): Entry | undefined =>
  heads.filter((head) => said(head) !== null).pop() ?? heads[heads.length - 1];

/** Whether the heads of a place say different things. */
export const isDouble = (heads: readonly Entry[]): boolean =>
  heads.length > 1 && new Set(heads.map((head) => JSON.stringify(said(head)))).size > 1;
