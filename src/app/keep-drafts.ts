import type { Json } from '../job/entry';
import type { Store } from '../store/store';
import { type Drafts, drafts, readDrafts } from '../ui/drafts';

const prefix = 'draft/';

/**
 * Drafts of blanks as they were kept, and each kept under a key of its own from now on: pages do not write over each
 * other.
 */
export function keepDrafts(store: Pick<Store, 'keep'>, kept: Readonly<Record<string, Json>>): void {
  const found = Object.entries(kept).filter(([key]) => key.startsWith(prefix));
  drafts.value = readDrafts(Object.fromEntries(found.map(([key, one]) => [key.slice(prefix.length), one])));
  let before: Drafts = drafts.value;
  const waiting = new Map<string, Json>();
  let writing = false;
  /** One at a time, and of each only what it came to meanwhile. */
  async function write(): Promise<void> {
    if (writing) return;
    writing = true;
    for (let next = waiting.entries().next(); !next.done; next = waiting.entries().next()) {
      const [key, value] = next.value;
      waiting.delete(key);
      await store.keep(`${prefix}${key}`, value).catch(() => undefined);
    }
    writing = false;
  }
  drafts.subscribe((now) => {
    for (const key of new Set([...Object.keys(before), ...Object.keys(now)]))
      if (before[key] !== now[key]) waiting.set(key, now[key] ?? null);
    before = now;
    void write();
  });
}
