// Keys among the settings that say how things are kept, not what: no screen reads them, and they go into no copy.

/** A block of nothing in the database, given up for the last change when the phone is full. */
export const reserveKey = 'reserve';
/** In the database: it has rows of a log that the journal did not take. */
export const behindKey = 'behind';
/** In the journal: it has rows of a log that the database did not take. */
export const aloneKey = 'alone';
/** In the database: what starts have seen of deleted jobs, see `purging.ts`. */
export const watchKey = 'watch';
/** In the database: a start has not come to its screen yet, and since when. */
export const openingKey = 'opening';
/** When a setting or figure was last written or taken away, in the database; a line of the journal says it itself. */
export const stampKey = (store: 'settings' | 'shop', key: string): string => `at/${store}/${key}`;

export const isOwn = (key: string): boolean =>
  [reserveKey, behindKey, aloneKey, watchKey, openingKey].includes(key) || /^(at|alone|behind)\//.test(key);

/**
 * The phone's own name does not come back: should the journal have missed its newest entries, their places in the log
 * must not be taken again with other content.
 */
export const nameKey = 'device';
