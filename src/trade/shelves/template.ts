import { add, half, inches, type Length, less, subtract, times, zero } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Units } from '../../length/units';

/** A template with a row of holes: how long it is, its first hole from its end, how many, hole to hole. Inches. */
type Template = {
  readonly long: Length;
  readonly first: Length;
  readonly pitch: Length;
  /** Whole, >= 1. */
  readonly holes: number;
};

const reach = ({ pitch, holes }: Pick<Template, 'pitch' | 'holes'>): Length =>
  times(pitch, BigInt(Math.max(0, holes - 1)));

/**
 * How long a template is that may be turned end for end: as much past its last hole as before its first. Inches.
 * @example safeLength({ first, pitch, holes: 23 }) // 36 1/4: Example 6 of shelves
 */
export const safeLength = (of: Omit<Template, 'long'>): Length => add(times(of.first, 2n), reach(of));

/**
 * How far every hole is off when the template is turned end for end on the other wall: > 0 higher. Inches.
 * @example turnedOff({ long, first, pitch, holes: 23 }) // 1/4 low: Example 6 of shelves
 */
export const turnedOff = ({ long, ...of }: Template): Length => subtract(long, safeLength(of));

/** By how much a template is too short for its own row; 0 where it holds it. Inches. */
export function tooShort({ long, first, ...of }: Template, dia: Length): Length {
  const wants = add(add(first, reach(of)), half(dia));
  return less(long, wants) ? subtract(wants, long) : zero;
}

type DriftAt = {
  /** Holes of the row, and of the template: whole, >= 1. */
  readonly holes: number;
  readonly template: number;
  /** How far a hole of the template is out, and how loose it sits on its pin. Inches, >= 0. */
  readonly error: Length;
  readonly play: Length;
  /** Of the tape: the distance between two marks. */
  readonly grain: Length;
};

/**
 * The most the last hole of a row can be off, by how the row is bored: the template pinned again in its last hole each
 * time it is through, pinned anew in every hole, or each hole at its own mark. Inches.
 *
 * @returns `hops`: how often the template is pinned again; `stepped` where it has a single hole is as hole by hole
 * @example driftOf({ holes: 35, template: 12, error, play, grain }).stepped // .043: Example 6 of shelves
 */
export function driftOf({ holes, template, error, play, grain }: DriftAt) {
  const byHole = times(add(error, play), BigInt(holes - 1));
  const hops = template < 2 ? holes - 1 : Math.max(0, Math.ceil((holes - template) / (template - 1)));
  const stepped = add(times(error, BigInt(holes - 1)), times(play, BigInt(hops)));
  return { hops, stepped, byHole, marked: half(grain) };
}

/**
 * The gap under the fourth pin of a shelf that is stiff: how far the four are from one plane. Inches, by where each
 * pin stands over the bottom.
 *
 * @example rockOf({ frontLeft, frontRight, backLeft, backRight }) // 1/16: Example 7 of shelves
 */
export const rockOf = (at: {
  readonly frontLeft: Length;
  readonly frontRight: Length;
  readonly backLeft: Length;
  readonly backRight: Length;
}): Length => subtract(add(at.frontLeft, at.backRight), add(at.frontRight, at.backLeft)).abs() as Length;

/** A shelf rocks where more is under its fourth pin. Common practice, no source. */
const leastRock = inches(1n, 32n);

/** By how much a rock is over 1/32, in a metric shop .8 mm; 0 where it is not. Inches. */
export function rockOver(rock: Length, units?: Units): Length {
  const most = figureIn(units, leastRock);
  return less(most, rock) ? subtract(rock, most) : zero;
}
