/** A value the database did not take; the note holds when that was. */
export const noteOf = (store: 'settings' | 'shop', key: string): string => `alone/${store}/${key}`;
export const isNote = (key: string): boolean => key.startsWith('alone/');
/** The value a note is about; undefined where it is no such note. */
export function notedValue(
  note: string,
): { readonly store: 'settings' | 'shop'; readonly key: string } | undefined {
  const store = (['settings', 'shop'] as const).find((name) => note.startsWith(noteOf(name, '')));
  return store && { store, key: note.slice(noteOf(store, '').length) };
}

/** The journal has entries the database did not take. */
export const aloneNote = 'alone/log/entries';

/** The database has something the journal did not take. */
export const behindKey = 'behind';
/** A value the journal did not take; the note, in the database, holds when that was. */
export const behindOf = (store: 'settings' | 'shop', key: string): string => `${behindKey}/${store}/${key}`;
export const isBehind = (key: string): boolean => key === behindKey || key.startsWith(`${behindKey}/`);

/** A block of nothing in the database, given up for the last change when the phone is full. */
export const reserveKey = 'reserve';
