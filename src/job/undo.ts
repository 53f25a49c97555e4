import type { Change, Entry } from './entry';
import { headsOf, overAt, placeOf, standing, undoneIn } from './merge';

type Act = { readonly act: string; readonly label: string; readonly entries: readonly Entry[] };

/** How many acts can be taken back. */
export const undoDepth = 50;

/**
 * This phone's acts not yet taken back, newest first, at most 50.
 * @param own whether entries by a name are this phone's
 */
export function undoable(entries: readonly Entry[], own: (device: string) => boolean): readonly Act[] {
  const undone = new Set<string>();
  const acts = new Map<string, Entry[]>();
  for (let k = entries.length - 1; k >= 0 && acts.size <= undoDepth; k -= 1) {
    const entry = entries[k];
    if (!entry || !own(entry.device)) continue;
    if (entry.undoes !== undefined) undone.add(entry.undoes);
    else if (!undone.has(entry.act)) acts.set(entry.act, [entry, ...(acts.get(entry.act) ?? [])]);
  }
  return [...acts]
    .slice(0, undoDepth)
    .map(([act, all]) => ({ act, label: all[0]?.label ?? '', entries: all }));
}

/**
 * The changes that take an act back: each place goes to what the log would say there without the act. So an edit goes
 * to the value before it and a tick to the tick before it, or to none; two readings that stood before it both stand
 * again; and what another phone has written there since stands, so that nobody's later word is lost.
 *
 * @param entries the whole log, in order
 */
export function undoOf(entries: readonly Entry[], act: Act): readonly Change[] {
  const touched = new Map(act.entries.map((entry) => [placeOf(entry), entry]));
  const undone = new Set([act.act]);
  for (const { undoes } of entries) if (undoes !== undefined) undone.add(undoes);
  const trails = new Map<string, Entry[]>([...touched.keys()].map((at) => [at, []]));
  for (const entry of entries) trails.get(placeOf(entry))?.push(entry);
  return [...touched].map(([at, entry]) => {
    const trail = trails.get(at) ?? [];
    const heads = headsOf(trail, (e) => e.undoes !== undefined || undone.has(e.act));
    return { ...restore(entry, standing(heads)), over: overAt(headsOf(trail, undoneIn(trail))) };
  });
}

function restore(entry: Entry, stands: Entry | undefined): Change {
  if (entry.kind === 'edit') {
    return { kind: 'edit', path: entry.path, value: stands?.kind === 'edit' ? stands.value : null };
  }
  return stands?.kind === 'tick'
    ? { kind: 'tick', op: entry.op, figure: stands.figure }
    : { kind: 'untick', op: entry.op };
}
