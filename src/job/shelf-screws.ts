import { compare, inches, type Length } from '../length/length';
import { fromStored } from '../length/stored';
import type { Json } from './entry';

/**
 * The screws of the lists of a shop as the plan needs them, read apart from those lists: they come with other screens.
 * A test holds the two the same. The usual ones: common practice, no source. Inches.
 */
const usual: readonly Length[] = [3n, 4n, 5n, 6n, 8n, 10n, 12n].map((quarters) => inches(quarters, 4n));

const screwKey = 'shelf/screw/';

function lengthIn(json: Json | undefined): readonly Length[] {
  const found = typeof json === 'string' ? fromStored(json) : undefined;
  return found?.ok ? [found.value] : [];
}

/** As they were once kept whole. */
function onceWhole(lists: Json | undefined): readonly Length[] {
  const whole = typeof lists === 'object' && lists !== null && 'screws' in lists ? lists.screws : undefined;
  return Array.isArray(whole) ? whole.slice(0, 200).flatMap((item: Json) => lengthIn(item)) : usual;
}

/**
 * Lengths of the screws on the shelf, the shortest first: once kept whole, and over that each by itself.
 *
 * @param rows all that is kept of this phone, by its name
 */
export function shelfScrews(rows: Readonly<Record<string, Json>>): readonly Length[] {
  const own = Object.entries(rows).flatMap(([key, count]) =>
    key.startsWith(screwKey)
      ? lengthIn(key.slice(screwKey.length).replace('~', '/')).map((long) => ({ long, has: count !== 0 }))
      : [],
  );
  const kept = onceWhole(rows.lists).filter((long) => !own.some((other) => other.long.equals(long)));
  const all = [...kept, ...own.flatMap(({ long, has }) => (has ? [long] : []))];
  return all.filter((long, k) => all.findIndex((other) => other.equals(long)) === k).sort(compare);
}
