import type { ComponentChildren as Blank } from 'preact';
import type { Length } from '../../length/length';
import { exactly as w } from '../shared/exact-words';

/** Where the opening is measured: high at two sides, wide at two depths. */
export type Place = 'left' | 'right' | 'front' | 'back';

export const placeNames: Record<Place, string> = {
  left: 'high, at the left',
  right: 'high, at the right',
  front: 'wide, in front',
  back: 'wide, at the back',
};

export const opening = 'Opening';
export const when =
  'Measure once the case stands square and the frame is on. Nothing changes until you use it.';
export const again = (problems: readonly string[]): string => `${problems.join(' ')} Measure it again here.`;
export const ask = (place: Place): string => `Opening, ${placeNames[place]}`;
export const measured = (place: Place): string => `Opening measured: ${placeNames[place]}`;
export const takenUp = 'Opening taken up';
export const seeChange = 'See what this would change';

export const outOfSquare = (by: Length): string =>
  `Out of square by ${w(by)}: heights are worked out from the lower side.`;
export const notParallel = (by: Length): string =>
  `Front and back differ by ${w(by)}: pack what the boxes run on parallel before you trust a box. Boxes are made to the narrower.`;

export const inUse = 'in use';
/** What the opening comes to by reckoning, wide by high. */
export const reckoned = (wide: Blank, high: Blank) => (
  <>
    worked out {wide} × {high}
  </>
);
