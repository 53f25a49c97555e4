import type { ComponentChildren as Blank } from 'preact';
import { inches, isZero, type Length, less, negate } from '../../length/length';
import type { driftOf } from '../../trade/shelves/template';
import { counted } from '../shared/counted';
import { closely, exactly as w } from '../shared/exact-words';

type At = Readonly<Record<'long' | 'first' | 'holes' | 'error' | 'play', Blank>>;

export const template = ({ long, first, holes, error, play }: At) => (
  <>
    The template is {long} long, its first hole {first} from its end, {holes} holes in all; a hole {error} out
    at most and {play} loose on its pin.
  </>
);

export const short = (by: Length): string => `The template is ${w(by)} too short for its own holes.`;

/** What turning it end for end does. */
export function turned(off: Length, safe: Length): string {
  if (isZero(off)) return 'The template may be turned end for end: both ends are alike.';
  const where = less(off, inches(0n)) ? `${w(negate(off))} too low` : `${w(off)} too high`;
  return `Turned end for end on the other wall every hole comes ${where}: turn it face for face, or make it ${w(safe)} long.`;
}

/** Over this the last hole is said to be off. Common practice, no source. */
const most = inches(1n, 64n);

/** The most the last hole can be off, three ways. */
export function drift({ hops, stepped, byHole, marked }: ReturnType<typeof driftOf>, holes: number): string {
  const off = (x: Length) => `${closely(x)}${less(most, x) ? ' (too much)' : ''}`;
  const again =
    hops === 0 ? 'in one go' : `pinned again ${hops === 1 ? 'once' : `${hops} times`} in its last hole`;
  return `The last hole may be off: off a template of ${counted(holes, 'hole', 'holes')}, ${again}, by ${off(stepped)}; pinned anew in every hole by ${off(byHole)}; each hole at its own mark by ${off(marked)}.`;
}
