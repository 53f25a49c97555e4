import { tapes } from '../length/tape';
import { grooveMachineIds } from '../trade/machines/stored-ids';
import {
  amount,
  count,
  type Field,
  flag,
  length,
  lengths,
  moment,
  oneOf,
  places,
  silent,
  stockId,
  text,
} from './kinds';

import { stuffFields, yearFields } from './loads-fields';
import { groovedByFields, sheetSawFields, throughFields } from './own-fields';

export { bayFields, builtFields, caseFields, insideFields } from './case-fields';
export type { Field } from './kinds';
export { layoutFields, sheetFields } from './sheet-fields';

export const jobFields = {
  name: text(120),
  place: text(200),
  note: text(4000),
  tape: oneOf(...tapes),
  /** The unit system whose usual figures the job keeps, since something is cut by them. */
  usual: silent(oneOf('in', 'mm')),
  deleted: silent(moment),
  /** Key of the setup that stands on its machine. */
  standing: silent(text(80)),
  /** Over on each way of a piece of sheet before its final cuts, and on the length of a piece of stick. */
  over: length,
  overStick: length,
  /** Pounds one person carries. */
  carry: amount,
  /** There is no table saw: every sheet is cut along the guide. */
  guideOnly: flag,
  ...sheetSawFields,
  ...yearFields,
};

export const boardFields = {
  name: text(120),
  made: oneOf('alike', 'pair', 'partition'),
  copies: count,
  length,
  thickness: length,
  across: length,
  /** The sheet or stick it is cut out of. */
  stock: stockId,
  end: text(40),
  datum: length,
  mate: length,
  mateName: text(80),
  machine: oneOf(...grooveMachineIds),
  against: oneOf('reference', 'other'),
  grows: oneOf('toward', 'away'),
  guide: oneOf('reference', 'far'),
  stopSide: oneOf('left', 'right'),
  cutter: length,
  ...groovedByFields,
  gone: flag,
};

export const runFields = {
  spacing: oneOf('pitch', 'fill', 'openings', 'given'),
  face: oneOf('A', 'B'),
  point: oneOf('near', 'centre', 'far'),
  width: length,
  depth: length,
  count,
  pitch: length,
  first: length,
  endRoom: length,
  centred: flag,
  span: length,
  part: length,
  at: places,
  stopped: length,
  gone: flag,
};

/** One of the places of a run that are given one by one. */
export const placeFields = { at: length, gone: flag };

export const wideFields = { face: oneOf('A', 'B'), near: length, width: length, depth: length, gone: flag };

export const stockFields = {
  name: text(120),
  kind: oneOf('sheet', 'stick'),
  /**
   * Read from old jobs only: each reading has a path of its own now. So have `bad`, the places of a run and the bays.
   */
  readings: lengths,
  /** Thickness reckoned with until it is measured. */
  planned: length,
  /** The reading taken up: what is not cut yet is reckoned with it. */
  used: length,
  /** Nothing of it is cut: the greatest reading is in use as readings come, over what was planned or taken up. */
  asRead: silent(flag),
  long: length,
  wide: length,
  /** Cut off every edge of a sheet, both ends of a stick. */
  trim: length,
  grain: oneOf('long', 'wide', 'none'),
  /** At hand. */
  have: count,
  /** No more are to be had. */
  noMore: flag,
  price: amount,
  /** The stock whose parts may come out of it too. */
  like: stockId,
  /** Bad places of a stick: from, to, from, to … */
  bad: lengths,
  /** Thickness solid wood is bought in. */
  rough: length,
  ...stuffFields,
  gone: flag,
};

/** One thickness by calipers. */
export const readingFields = { size: length, gone: flag };

/** One bad place of a stick, off its squared end. */
export const badFields = { from: length, to: length, gone: flag };

/** How a part's grooves are cut. */
export const partFields = {
  machine: boardFields.machine,
  against: boardFields.against,
  grows: boardFields.grows,
  guide: boardFields.guide,
  stopSide: boardFields.stopSide,
  cutter: boardFields.cutter,
  ...groovedByFields,
  ...throughFields,
  /** Which way it lies on a sheet, and with what it shares one. */
  lies: oneOf('along', 'across', 'free'),
  share: oneOf('anywhere', 'A', 'B', 'C', 'D'),
  /** The mark its length keeps, and its width: others are cut to it, or are to match it. */
  mark: length,
  markWide: length,
  /** Whether its length, and its width, share a mark with equals of unlike stock or grain. */
  alike: oneOf('together', 'apart'),
  alikeWide: oneOf('together', 'apart'),
};

/** One copy of a part: what it came to when its size is not the one wanted. */
export const pieceFields = { asLength: length, asWidth: length };

/** Which making of a copy was spoiled (M16). */
export const spoilFields = { spoiled: flag };

/**
 * How wide a groove was cut for what stands in it, and how deep, or where a row of holes begins and ends, beside the
 * tick that keeps where.
 */
export const widthFields = { width: length, depth: length, first: length, last: length };

/** What was found out at a setup; it stays for ever. */
export const recipeFields = {
  /** Pieces between the outers, as `n/d` texts, one a piece. */
  stack: lengths,
  scale: length,
  height: length,
  got: length,
  note: text(400),
};

/** Why a blocked operation was let go ahead. */
export const letFields = { why: text(200) };

export const offcutFields = { stock: stockId, length, width: length, gone: flag };

/** What a table's fields read to; a field that is missing or not readable is undefined. */
export type Values<T> = { readonly [K in keyof T]: T[K] extends Field<infer V> ? V | undefined : never };
