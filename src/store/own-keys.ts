// Settings of the store itself: no screen reads them, and no copy carries them.

/** A block of filler in the database, given up for the last change on a full phone. */
export const reserveKey = 'reserve';
/** Set in the database when the journal did not take some of its rows. */
export const behindKey = 'behind';
/** Set in the journal when it took entries alone. */
export const aloneKey = 'alone';
/** In the database: what starts have seen of deleted jobs, see `purge-rule.ts`. */
export const watchKey = 'watch';
/** In the database: when a start began that has not come to its screen. */
export const openingKey = 'opening';
/** When a setting or figure was last written or taken away, in the database; a line of the journal says it itself. */
export const stampKey = (store: 'settings' | 'shop', key: string): string => `at/${store}/${key}`;

export const isOwn = (key: string): boolean =>
  [reserveKey, behindKey, aloneKey, watchKey, openingKey].includes(key) || /^(at|alone|behind)\//.test(key);

/**
 * The phone's own name. It is not restored from the journal: had that missed the newest entries, their places in the
 * log would be taken again with other content.
 */
export const nameKey = 'device';
