import { amount, count, flag, length, oneOf, stockId, text } from './kinds';

/** What a stock is of, as far as its weight, its stiffness and its moving go by it. */
export const stuffFields = {
  stuff: oneOf('ply', 'hardwood', 'softwood', 'pressed'),
  /** Key of a table of species. */
  species: text(24),
  /** Sawn with its rings standing across its thickness. */
  quartersawn: flag,
  /** As weighed, pounds a square foot. */
  perFoot: amount,
  /** Modulus of elasticity, millions of pounds a square inch. */
  stiff: amount,
};

/** A thing goes into a drawer, or onto a shelf or a tray: a part, and which piece of it. */
export const placedFields = {
  wide: length,
  part: text(60),
  piece: count,
  /** Its middle from the left end of the shelf. */
  from: length,
  /** Where it lives now. */
  lives: text(120),
};

/** A shelf or a run of trays, by part. */
export const shelfFields = {
  /** Loaded for years. */
  years: flag,
  /** Its back is glued into the back of the case. */
  glued: flag,
  /** The strip stuck on its front edge: of what stock, and how tall. */
  strip: stockId,
  tall: length,
  use: oneOf('school', 'hospital', 'library', 'other'),
};

/** How a case is moved in, and one load of it lifted by one person. */
export const liftFields = {
  /** The case it stands on. */
  on: stockId,
  /** Hardware and the rest that is no part, pounds. */
  rest: amount,
  /** What is lifted: of the list of loads. */
  what: text(60),
  out: length,
  up: length,
  turn: amount,
  toOut: length,
  toUp: length,
  toTurn: amount,
  careful: flag,
  grip: oneOf('good', 'fair', 'poor'),
};

/** Solid wood, by part: a screw through a slot, so far from the line it is held on. */
export const solidFields = { reach: length, shank: length };

/** Of the job: moisture of wood and damp of air, percent; and what failed last time. */
export const yearFields = {
  failed: text(4000),
  woodNow: amount,
  woodLow: amount,
  woodHigh: amount,
  airLow: amount,
  airHigh: amount,
};
