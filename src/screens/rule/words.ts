import type { Length } from '../../length/length';
import { exactly } from '../shared/exact-words';

export const title = 'Rule on the screen';
export const back = 'This phone';
export const not = 'Never set a cutter, a stop or a stick from a screen.';
export const thick = 'Show how thick';
export const shows = 'The block is';
export const drawn = 'A rule down the left edge of the screen';
export const again = 'Calibrate again';
export const doubt = (reach: Length, off: string): string =>
  `Its whole ${exactly(reach)} may be off by ${off}, as its calibration is sure.`;
export const doubtOf = (length: Length, off: string): string =>
  `${exactly(length)} may be off by ${off} here.`;

export const calibrate = 'Calibrate';
export const lay = {
  long: 'Lay a bank card flat on the glass, its long edge upright at the left, its upper end on the upper line. Move the lower line to its lower end.',
  short: 'Now turn the card: its short edge upright at the left. Move the lower line to its lower end.',
} as const;
export const card =
  'Any card as large as a bank card does, with square corners: not worn, nothing raised under it.';
export const zoomed =
  'The screen is zoomed or scaled otherwise than when it was calibrated: calibrate it again.';
export const move = {
  up10: 'Up 10',
  up1: 'Up a little',
  down1: 'Down a little',
  down10: 'Down 10',
} as const;
export const touches = { long: 'It touches: next the short edge', short: 'It touches' } as const;
export const tooLow = 'The screen is too low for the card: hold it upright, or close the keys.';
/** The short edge did not come out: calibrated wrong. */
export const disagrees = (by: string): string =>
  `The short edge comes out ${by}. The long edge was not met: start again, with the card along the line.`;
export const long = 'too long';
export const short = 'too short';
