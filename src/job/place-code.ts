/**
 * A thing a note or a picture belongs to. A drawer is named as its parts are, by bank, column and number; a setup by
 * its key.
 */
export type NotedPlace =
  | { readonly of: 'job' }
  | { readonly of: 'room' }
  | { readonly of: 'part' | 'setup' | 'drawer'; readonly id: string };

/**
 * The word a place is kept under. Stored: the spelling is never changed.
 *
 * @example placeCode({ of: 'drawer', id: 'drawers~c1d2' }) // 'drawer~drawers~c1d2'
 */
export const placeCode = (place: NotedPlace): string =>
  'id' in place ? `${place.of}~${place.id}` : place.of;

/** The place of a code; one that says nothing readable is the job. @example placeOfCode('part~case~left') */
export function placeOfCode(code: string): NotedPlace {
  const [of, ...rest] = code.split('~');
  if (of === 'room') return { of };
  return (of === 'part' || of === 'setup' || of === 'drawer') && rest.length > 0
    ? { of, id: rest.join('~') }
    : { of: 'job' };
}

/** @example drawerId('drawers', { column: 1, no: 2 }) // 'drawers~c1d2' */
export const drawerId = (bank: string, at: { readonly column: number; readonly no: number }): string =>
  `${bank}~c${at.column}d${at.no}`;
