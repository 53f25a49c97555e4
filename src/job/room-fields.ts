import { few, flag, length, oneOf, text } from './kinds';

/** The room as a whole. Inches. */
export const roomFields = {
  /** Widths and heights were read with the tape's start at a burned mark. */
  burned: flag,
  burnedAt: length,
  /** They were read with the tape's own body inside the opening. */
  inside: flag,
  body: length,
  /** Between the two plumb lines. */
  apart: length,
  allowLeft: length,
  allowRight: length,
  ceilingGap: length,
  /** A case is carried in lying and stood up where it stays. */
  standsUp: flag,
  hand: length,
  /** From the wall the case stands against to the one that faces it. */
  deep: length,
  found: length,
  foundEdge: oneOf('left', 'right'),
  stud: length,
  spacing: length,
  cleatFrom: length,
  cleatTo: length,
  cleatEnd: length,
  keep: length,
};

const plane = oneOf('front', 'back');

/** One spot of the two walls, so high over the floor: the width across, and from each plumb line to its wall. */
export const acrossFields = { at: length, plane, wide: length, left: length, right: length, gone: flag };

/** One spot of floor and ceiling, so far from the left wall: the height, and down and up from the level line. */
export const uprightFields = { at: length, plane, high: length, drop: length, rise: length, gone: flag };

/** A corner by legs: along the back wall, along the side wall, and across. */
export const cornerFields = { back: length, side: length, across: length };

/**
 * A stretch of the wall where nothing may be fastened, and what is in it: from so high to so high over the floor at its
 * high point, at every height where that is not said.
 */
export const zoneFields = {
  what: text(80),
  from: length,
  to: length,
  low: length,
  high: length,
  gone: flag,
};

/** One thing a case meets on its way in. */
export const wayFields = {
  kind: oneOf('doorway', 'turn', 'stair'),
  name: text(80),
  width: length,
  height: length,
  leaf: length,
  beyond: length,
  from: length,
  into: length,
  headroom: length,
  going: length,
  rise: length,
  between: length,
  winders: flag,
  /** Where a door is in the room: the case stands against the back wall. */
  wall: oneOf('left', 'right', 'front', 'back'),
  /** Its place is measured from the left corner, or at the sides from the case's wall (first), or from the other. */
  corner: oneOf('first', 'second'),
  fromCorner: length,
  /** Its hinges are at the side nearer that corner, or at the other. */
  hung: oneOf('near', 'far'),
  swing: oneOf('in', 'out'),
  gone: flag,
};

/** How one case stands: what is under its feet, what wedges there are, what hangs over for a scribe. */
export const standFields = {
  footHow: oneOf('shims', 'screw'),
  /** Feet in a row, and whether there is a row between front and back. */
  across: few,
  middleRow: flag,
  footShort: length,
  footLong: length,
  footHigh: length,
  wedgeThin: length,
  wedgeThick: length,
  wedgeLong: length,
  hangLeft: length,
  hangRight: length,
};

/** From the level line down to the floor under one foot. */
export const footFields = { drop: length };

/** From an edge of a case to its wall, so high over the floor, the case plumb and level. */
export const gapFields = { side: oneOf('left', 'right'), at: length, gap: length, gone: flag };
