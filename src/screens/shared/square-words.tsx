import type { ComponentChildren as Blank } from 'preact';
import type { RackingError } from '../../length/racking';
import { assertNever } from '../../length/result';
import { exactly } from './exact-words';

export const diagonals = 'Diagonals';

/** Each diagonal by its ends, as you face the case. */
export const diagonalNames = {
  frontA: 'Diagonal, low left to high right',
  frontB: 'Diagonal, low right to high left',
} as const;

export const slip = (at: {
  readonly wide: Blank;
  readonly high: Blank;
  readonly frontA: Blank;
  readonly frontB: Blank;
}) => (
  <>
    Outside {at.wide} × {at.high}. From low left to high right it reads {at.frontA}, from low right to high
    left {at.frontB}.
  </>
);

export const pushTo = (way: 'left' | 'right'): string => `Push the top to the ${way} by`;
export const untilEach = 'until each diagonal reads';
export const pushAndUntil = (way: 'left' | 'right', push: string, until: string): string =>
  `${pushTo(way)} ${push}, ${untilEach} ${until}.`;
export const cannotAgree =
  'These four figures cannot all be right: measure again, and measure all four sides.';
export const equalDiagonals =
  'The diagonals are equal. With both widths and both heights equal too, it is square.';

/** Why a case cannot be squared up. */
export function rackingText(error: RackingError): string {
  switch (error.code) {
    case 'not-positive':
      return 'All four must be more than 0.';
    case 'cannot-be':
      return `That diagonal cannot be: with this width and height it lies between ${exactly(error.least)} and ${exactly(error.most)}.`;
    default:
      return assertNever(error);
  }
}
