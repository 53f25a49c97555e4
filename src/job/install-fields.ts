import { count, few, flag, length, oneOf, stockId, text } from './kinds';

/** How a case, or a bank in a case that is none of the job's, is held to its wall and finished, by that id. */
export const putUpFields = {
  /** Solid sheathing takes a screw anywhere; other walls only in their framing. */
  wall: oneOf('sheathing', 'framing'),
  fixings: few,
  /** What they go through at the back. */
  cleatThick: length,
  cleatWide: length,
  /** It is in the case, and goes up with it; or on the wall before the case stands there. */
  cleatOn: oneOf('case', 'wall'),
  /** Its lower edge over the floor at the high point. */
  cleatAt: length,
  /** Along the wall from its left end, where it is not the cleat of the room. */
  cleatFrom: length,
  cleatTo: length,
  washers: flag,
  /** What lies between that and what the screws bite: wall board, a back. */
  cover: length,
  /** How thick solid sheathing is. */
  into: length,
  gauge: oneOf('6', '8', '10'),
  /** What it is finished with, and how many days that cures before anything goes in. */
  finish: text(120),
  cureDays: count,
};

/** Screws through one thing into another: one, or a row along a run. */
export const screwFields = {
  kind: oneOf('cleat', 'tocleat', 'case', 'top', 'base', 'filler', 'butted', 'other'),
  name: text(120),
  /** The case they are in. */
  of: stockId,
  through: length,
  /** What else lies between: wall board, a back. */
  cover: length,
  into: length,
  /** How thick the part is whose end they go into. */
  part: length,
  bite: oneOf('face', 'edge', 'solid', 'stud'),
  /** Head below the face. */
  sunk: length,
  washer: length,
  slant: oneOf('0', '20', '30', '45'),
  gauge: oneOf('6', '8', '10'),
  wood: oneOf('soft', 'hard'),
  run: length,
  end: length,
  most: length,
  rows: few,
  /** How many, where they are not in an even row. */
  many: count,
  gone: flag,
};

/** What holds the end or edge of a part against another, in the joint itself: dowels, biscuits or slant screws. */
export const joinFields = {
  by: oneOf('dowel', 'biscuit', 'slant'),
  name: text(120),
  /** The case they are in, and which of its butted meetings they hold: none said, they are set out by hand. */
  of: stockId,
  at: oneOf('bottom', 'top', 'partition', 'shelf'),
  part: length,
  mate: length,
  run: length,
  end: length,
  most: length,
  /** From the reference face of the part. */
  from: length,
  /** The one dowel on the shelf. */
  thick: length,
  long: length,
  /** Under and beside a slot. */
  leave: length,
  seat: length,
  head: length,
  /** Both lie in one plane. */
  flush: flag,
  /** Joints alike. */
  many: count,
  gone: flag,
};

/** A board before its test cuts, and what it then came to: the kerf of a blade. */
export const kerfFields = { before: length, cuts: few, pieces: length, rest: length };

/** One thing to do otherwise next time. */
export const nextFields = { said: text(400), gone: flag };
