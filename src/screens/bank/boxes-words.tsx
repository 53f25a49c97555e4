import type { ComponentChildren as Blank } from 'preact';
import { equals, isZero, type Length } from '../../length/length';
import type { Packing } from '../../plan/packing';
import type { WorkedDrawers } from '../../trade/boxes/drawers';
import { isOwnFront } from '../../trade/fronts/corner';
import { exactly as w } from '../shared/exact-words';
import { standText } from './words';

export const toCuts = 'To the cuts';
export const boxes = 'Boxes';
export const wide = (width: Blank) => <>{width} wide</>;
export const high = (height: Blank) => <>high {height}</>;
/** Whole fingers do not fill the height that was given. */
export const cutTo = (high: Length): string => `cut to ${w(high)}`;
export const atMost = (most: Length): string => `at most ${w(most)}`;

export const sizesAndJoint = 'Sizes and joint';
export const why = 'why?';
export const sizes = {
  deep: 'Box, deep',
  side: 'Sides, long',
  front: 'Front, long',
  back: 'Back, long',
  backHeight: 'Back, high',
  bottomWide: 'Bottom, wide',
  bottomDeep: 'Bottom, deep',
  insideWide: 'Inside, wide',
  insideDeep: 'Inside, deep',
} as const;

export const sticks = 'Sticks for the slides';
export const hang = 'Hang slides one at a time';

/** How sticks are used, and where the slides stand. `packing`: behind a face frame, by column. */
export function stand(worked: WorkedDrawers, packing: readonly Packing[]): string {
  const { setBack, hung } = worked.slides;
  if (hung)
    return `From the ${standText(worked)} to the lower edge of each, left and right alike, the longest first.${packedOut(packing)}`;
  const front = isOwnFront(worked.fronts.bank) ? 'as far as the sides' : 'the front’s thickness';
  const back = isZero(setBack)
    ? 'Slides flush with the front edge.'
    : `Slides set back ${w(setBack)}, ${front}.`;
  return `From the ${standText(worked)} to the lower edge of the slide, the longest first. ${back}${packedOut(packing)}`;
}

/** Said once where every column is alike. */
export function packedOut(packing: readonly Packing[]): string {
  const [first, ...rest] = packing;
  if (!first) return '';
  const sides = ({ left, right }: Packing) => `${w(left)} at the left, ${w(right)} at the right`;
  const alike = rest.every(({ left, right }) => equals(left, first.left) && equals(right, first.right));
  const told = alike
    ? sides(first)
    : packing.map((each) => `column ${each.column}: ${sides(each)}`).join('; ');
  return ` Pack them out behind the frame: ${told}.`;
}
