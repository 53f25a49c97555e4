import type { ComponentChildren as Blank } from 'preact';
import { isZero, type Length } from '../../length/length';
import { assertNever } from '../../length/result';
import type { BlankError } from '../../trade/fronts/blank';
import { exactly as w } from '../shared/exact-words';

export const label = 'One blank';
export const heading = 'Out of one blank';

export const size = (long: Blank, wide: Blank) => (
  <>
    {long} by {wide}, from its top end. Number the fronts and draw one long triangle across before you cut.
  </>
);

export const front = (no: number): string => `Front ${no}`;
export const high = (at: Length): string => `${w(at)} high`;

/** How far the figure slips at a joint, and what a spoiled front comes to. */
export const slips = (slip: Length): string =>
  `${
    isZero(slip) ? 'The figure runs true over every joint.' : `The figure slips ${w(slip)} at each joint.`
  } Cut from the top down and keep the offcut: a spoiled lowest front comes out of it. A higher one breaks the run: cut all below it again, or live with the break.`;

/** What keeps the fronts of a column from coming out of one blank. */
export function blankErrorText(error: BlankError): string {
  switch (error.code) {
    case 'kerf-missing':
      return 'Enter the kerf of the blade in Shop figures: every cut loses it.';
    case 'core-gone':
      return `The bands leave nothing of front ${error.front}: ${w(error.by)} too thick.`;
    case 'negative':
      return `The ${blankFields[error.what]} is ${w(error.by)} below 0. Make it 0 or more.`;
    default:
      return assertNever(error);
  }
}

const blankFields = { trim: 'trim', band: 'band', between: 'gap between the fronts' } as const;
