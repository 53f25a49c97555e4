import { type Built, type Case, heldBys, type Inside, newCase } from '../trade/carcass/case';
import { boredWith } from '../trade/shelves/bore';
import { byStock, type Read } from './by-stock';
import { count, few, flag, length, oneOf, places, stockId, text } from './kinds';
import { roundFields } from './round-fields';

/** One bay from the left: its own width, or that it has none any more. */
export const bayFields = { wide: length, open: flag };

/** Of these a meeting has its own: what is none of them stands at the usual one. */
const joint = oneOf('dado', 'rabbet', 'butt', 'over', 'tongue', 'mitre');
const hugs = oneOf('near', 'far');

export const caseFields = {
  name: text(120),
  hold: oneOf('outside', 'openings'),
  width: length,
  height: length,
  depth: length,
  opening: length,
  clear: length,
  feet: length,
  partitions: few,
  bays: places,
  sideStock: stockId,
  bottomStock: stockId,
  topStock: stockId,
  partitionStock: stockId,
  shelfStock: stockId,
  trayStock: stockId,
  backStock: stockId,
  cleatStock: stockId,
  frameStock: stockId,
  looseStock: stockId,
  edgingStock: stockId,
  toeStock: stockId,
  baseStock: stockId,
  crossStock: stockId,
  fillerStock: stockId,
  nailerStock: stockId,
  stopStock: stockId,
  shelfedgeStock: stockId,
  hasTop: flag,
  hasBack: flag,
  hasFrame: flag,
  hasLooseTop: flag,
  hasEdging: flag,
  hasToe: flag,
  hasBase: flag,
  dado: length,
  partitionDado: length,
  bottomRabbet: length,
  topRabbet: length,
  bottomJoint: joint,
  topJoint: joint,
  bottomRightJoint: joint,
  topRightJoint: joint,
  partitionJoint: joint,
  shelfJoint: joint,
  bottomPast: length,
  topPast: length,
  tongue: length,
  tongueRoom: length,
  bottomHugs: hugs,
  partitionHugs: hugs,
  shelfHugs: hugs,
  backDeep: length,
  backWide: length,
  ...roundFields,
  ease: length,
  fit: length,
  cleats: few,
  cleatWide: length,
  cleatRabbet: length,
  cleatRabbetWide: length,
  notchDeep: length,
  overhang: length,
  stile: length,
  middle: length,
  topRail: length,
  bottomRail: length,
  stilesOff: flag,
  middleOff: flag,
  looseFront: length,
  looseSide: length,
  lip: length,
  mitres: count,
  toeBack: length,
  crosses: few,
  crossWide: length,
  gone: flag,
};

export const insideFields = {
  kind: oneOf('trays', 'fixed', 'loose', 'rail', 'stop'),
  bay: count,
  count,
  at: length,
  first: length,
  pitch: length,
  endRoom: length,
  width: length,
  depth: length,
  slack: length,
  wide: length,
  heldBy: oneOf(...heldBys),
  front: length,
  behind: length,
  bore: oneOf(...boredWith),
  stripThick: length,
  stripRoom: length,
  stripSold: length,
  spares: count,
  templateLong: length,
  templateFirst: length,
  templateHoles: count,
  templateError: length,
  templatePlay: length,
  flange: length,
  play: length,
  frontPlay: length,
  backPlay: length,
  band: length,
  gone: flag,
};

export const builtFields = { frontA: length, frontB: length, backA: length, backB: length, used: length };

/** A case of its fields as read: what each piece is of is gathered into one list. */
export const caseOf = (
  id: string,
  own: Read,
  under: { readonly inside: readonly Inside[]; readonly built: Readonly<Record<string, Built>> },
): Case => ({ ...newCase(id), ...byStock(own), ...under });

/** A thing in a bay before anything is said of it. */
export const newInside = (id: string): Inside => ({ id, kind: 'loose', bay: 1 });
