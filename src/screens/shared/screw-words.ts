import type { Screw } from '../../trade/install/screw';
import { reckoned as w } from './exact-words';

/** Why no screw on the shelf does. */
export function screwText({ least, most, fails }: Screw): string {
  const range = `between ${w(least)} and ${w(most)}`;
  switch (fails) {
    case 'no-room':
      return 'Front and box front are too thin for a screw to bite and stay in: glue it, or use thicker wood.';
    case 'too-short':
      return `Every screw on the shelf is too short to bite: one ${range} is wanted.`;
    case 'too-long':
      return `Every screw on the shelf would come through: one ${range} is wanted.`;
    case 'no-wood':
      return 'A thickness is 0 or less: measure the front and the box front.';
    case 'no-list':
      return `No screws on the list: one ${range} is wanted. See Shop figures.`;
    default:
      return `None on the shelf does: one ${range} is wanted.`;
  }
}
