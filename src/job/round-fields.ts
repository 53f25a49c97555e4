import { few, flag, length, oneOf } from './kinds';

/** How the back and the base of a case are made, where that is said. */
export const roundFields = {
  backHow: oneOf('rabbet', 'groove', 'applied'),
  backLand: length,
  backGroove: length,
  backGrooveWide: length,
  backInset: length,
  frameHow: oneOf('case', 'floor'),
  frameMeets: oneOf('butt', 'lap'),
  frameClear: length,
  frameSill: length,
  frameToe: length,
  toeHow: oneOf('between', 'notch'),
  frontOver: length,
  toeClear: length,
  hasNailers: flag,
  nailers: few,
  nailerWide: length,
  nailerDeep: length,
  hasPlinth: flag,
  plinthHow: oneOf('shimmed', 'scribed'),
  plinthFront: length,
  plinthLeft: length,
  plinthRight: length,
  plinthBack: length,
  plinthCrosses: few,
};
