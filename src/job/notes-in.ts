import type { Json } from './entry';

/** Notes for next time among values by path. */
export const notesIn = (values: ReadonlyMap<string, Json>): readonly string[] =>
  [...values].flatMap(([path, said]) => {
    const [table, id, field] = path.split('/');
    const is = table === 'next' && field === 'said' && values.get(`next/${id}/gone`) !== true;
    return is && typeof said === 'string' && said ? [said] : [];
  });
