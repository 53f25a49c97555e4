import type { StockRole } from '../../trade/carcass/case';
import type { Way } from '../../trade/carcass/check';
import type { CaseField } from '../../trade/carcass/problems';

export const title = 'Case';
export const back = 'Job';
export const under = 'What goes in';
export const noCase = 'This case is not in the job.';
export const more = 'More of this case';
export const pages = {
  built: 'As built',
  loads: 'Loads',
  lift: 'Weight and lifting',
  solid: 'Solid wood',
  level: 'Level and feet',
  scribe: 'Scribe',
  screws: 'Screws and anchors',
} as const;
export const remove = 'Remove this case';
export const removed = (name: string): string => `${name || title} removed`;
export const parts = 'Parts';
export const toCuts = 'To the cuts';

// The drawing.

export const view = 'View';
export const views = { front: 'From the front', section: 'Cut through' } as const;
export const drawn = {
  front: 'Case from the front, to scale',
  section: 'Case cut through, front at the left, to scale',
} as const;
export const beforeChange = 'before this change';
export const clearWidth = 'Clear width';
export const clearHeight = 'Clear height';
export const bayClear = (no: number, bays: number): string => (bays === 1 ? clearWidth : `Bay ${no}, clear`);

// What is asked for, worth a look, and adds back up.

export const nextBlank = (blank: string): string => `Next: ${blank.charAt(0).toLowerCase()}${blank.slice(1)}`;
export const seeBlank = (blank: string): string =>
  `Does not fit: ${blank.charAt(0).toLowerCase()}${blank.slice(1)}`;
export const measureIt = (stock: string): string => `Measure ${stock}`;
export const worthLook = 'Worth a look';
export const addsUp = 'Adds back up';

/** The lines that add the parts back up. */
export const checkWords: Record<Way, string> = {
  bottom: 'Across at the bottom',
  bays: 'Across by the bays',
  top: 'Across at the top',
  side: 'Up a side',
  partition: 'Up a partition',
};

export const caseFieldNames: Record<CaseField, string> = {
  width: 'Outside width',
  height: 'Outside height',
  depth: 'Depth, without a face frame',
  opening: 'Clear width of each bay',
  clear: 'Clear height inside',
  feet: 'Floor to the underside of the case',
  dado: 'Depth of the dadoes in the sides',
  partitionDado: 'Depth of the dadoes for partitions',
  bottomRabbet: 'Depth of the rabbet for the bottom',
  topRabbet: 'Depth of the rabbet for the top',
  tongue: 'How thick the tongues are',
  tongueRoom: 'Room under the tongues',
  bottomPast: 'How far the bottom of the case stands past each side',
  topPast: 'How far the top of the case stands past each side',
  sidePast: 'How far the sides run past the upper face of the top',
  backDeep: 'Depth of the rabbet for the back',
  backWide: 'Width of the rabbet for the back',
  backLand: 'What is left behind the groove for the back',
  backGroove: 'Depth of the groove for the back',
  backGrooveWide: 'Width of the groove for the back',
  backInset: 'How far in from the outside the back ends',
  ease: 'Room round the back and over a cleat',
  fit: 'Clearance in the dadoes',
  cleatWide: 'How wide the cleats are',
  cleatRabbet: 'Depth of the rabbet for the cleats',
  cleatRabbetWide: 'Width of the rabbet for the cleats',
  notchDeep: 'How deep the notches for cleats are',
  overhang: 'How far the frame stands past the sides',
  stile: 'How wide the stiles are',
  middle: 'How wide the middle stile is',
  topRail: 'How wide the top rail is',
  bottomRail: 'How wide the bottom rail is',
  frameClear: 'How far the stiles stay clear of the floor',
  frameSill: 'How far the bottom rail stands over the case bottom',
  frameToe: 'How high off the floor the bottom rail ends',
  looseFront: 'How far the top stands past the front',
  looseSide: 'How far the top stands past each side',
  lip: 'How far the edging hangs below',
  toeBack: 'How far back the toe board stands',
  nailerWide: 'How wide the nailers are',
  nailerDeep: 'How deep the nailers are let into the sides',
  plinthFront: 'How far back the plinth stands',
  plinthLeft: 'How far in the plinth is at the left',
  plinthRight: 'How far in the plinth is at the right',
  plinthBack: 'How far in the plinth is at the back',
  frontOver: 'What stands before the sides',
  toeClear: 'How far the toe board stays clear of the floor',
  crossWide: 'How wide rails and cross members are',
};

export const stockNames: Record<StockRole, string> = {
  side: 'the sides are',
  bottom: 'the bottom is',
  top: 'the top is',
  partition: 'the partitions are',
  shelf: 'the shelves are',
  tray: 'the trays are',
  back: 'the back is',
  cleat: 'the cleats are',
  frame: 'the frame is',
  loose: 'the loose top is',
  edging: 'the edging is',
  toe: 'the toe board is',
  base: 'the base rails are',
  cross: 'the cross members are',
  filler: 'the filler strips are',
  nailer: 'the nailers are',
  stop: 'the stop strips are',
  shelfedge: 'the shelf edging is',
};
