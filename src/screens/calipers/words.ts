import { assertNever } from '../../length/result';
import type { Came, TypedReading } from '../../ui/in-hand';

/** A reading, and what came of it; `nowhere` when no field was in hand. */
export type Said = { readonly reading: TypedReading; readonly came: Came | 'nowhere' };

const figure = ({ text, unit }: TypedReading): string =>
  `${text}${unit === 'mm' ? ' mm' : unit === 'in' ? ' inches' : ''}`;

/** One line for a reading. At the saw no second figure is shown. */
export function cameText({ reading, came }: Said, atTheSaw: boolean): string {
  switch (came) {
    case 'taken':
      return `Calipers: ${figure(reading)}. Taken.`;
    case 'shown':
      return `Calipers: ${figure(reading)}.`;
    case 'not-above-zero':
      return `Calipers: ${figure(reading)} is no size. Close the jaws, set them to zero, and measure again.`;
    case 'no-length-wanted':
      return `Calipers: ${figure(reading)}. No length is wanted here.`;
    case 'nowhere':
      return atTheSaw ? 'Calipers: no blank is open.' : `Calipers: ${figure(reading)}. Open a blank first.`;
    default:
      return assertNever(came);
  }
}
