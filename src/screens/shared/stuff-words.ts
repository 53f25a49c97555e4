import type { Stuff } from '../../trade/loads/stuff';
import type { Species } from '../../trade/movement/species';

export const stuffs: Readonly<Record<Stuff, string>> = {
  ply: 'plywood',
  hardwood: 'hardwood',
  softwood: 'softwood',
  pressed: 'pressed board',
};

/** Hyphens of the key are blanks, but in names written with one. */
export const speciesWord = (key: Species): string =>
  key === 'douglas-fir' ? 'Douglas-fir' : key === 'yellow-poplar' ? key : key.replace('-', ' ');
