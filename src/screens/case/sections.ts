import type { StockRole } from '../../trade/carcass/case';
import type { CaseField } from '../../trade/carcass/problems';

/** A sentence of the page: what is wrong with a blank is said under the sentence it stands in. */
export type Section =
  | 'sizes'
  | 'stock'
  | 'joints'
  | 'back'
  | 'cleats'
  | 'frame'
  | 'loose'
  | 'edging'
  | 'toe'
  | 'base'
  | 'plinth'
  | 'nailers'
  | `in ${string}`;

/** The sentence a figure of a case stands in. */
export const sections: Readonly<Record<CaseField, Section>> = {
  width: 'sizes',
  height: 'sizes',
  depth: 'sizes',
  opening: 'sizes',
  clear: 'sizes',
  feet: 'sizes',
  dado: 'joints',
  partitionDado: 'joints',
  bottomRabbet: 'joints',
  topRabbet: 'joints',
  tongue: 'joints',
  tongueRoom: 'joints',
  bottomPast: 'joints',
  topPast: 'joints',
  sidePast: 'joints',
  fit: 'joints',
  backDeep: 'back',
  backWide: 'back',
  backLand: 'back',
  backGroove: 'back',
  backGrooveWide: 'back',
  backInset: 'back',
  ease: 'back',
  cleatWide: 'cleats',
  cleatRabbet: 'cleats',
  cleatRabbetWide: 'cleats',
  notchDeep: 'cleats',
  overhang: 'frame',
  stile: 'frame',
  middle: 'frame',
  topRail: 'frame',
  bottomRail: 'frame',
  frameClear: 'frame',
  frameSill: 'frame',
  frameToe: 'frame',
  looseFront: 'loose',
  looseSide: 'loose',
  lip: 'edging',
  toeBack: 'toe',
  nailerWide: 'nailers',
  nailerDeep: 'nailers',
  plinthFront: 'plinth',
  plinthLeft: 'plinth',
  plinthRight: 'plinth',
  plinthBack: 'plinth',
  frontOver: 'toe',
  toeClear: 'toe',
  crossWide: 'base',
};

/** And what a piece is of. */
export const stockSections: Readonly<Record<StockRole, Section>> = {
  side: 'stock',
  bottom: 'stock',
  top: 'stock',
  partition: 'stock',
  shelf: 'stock',
  tray: 'stock',
  back: 'back',
  cleat: 'cleats',
  frame: 'frame',
  loose: 'loose',
  edging: 'edging',
  toe: 'toe',
  base: 'base',
  cross: 'base',
  filler: 'stock',
  nailer: 'nailers',
  stop: 'stock',
  shelfedge: 'stock',
};
