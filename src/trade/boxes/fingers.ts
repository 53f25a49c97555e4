import {
  add,
  atMost,
  half,
  howMany,
  inches,
  type Length,
  less,
  subtract,
  times,
  zero,
} from '../../length/length';
import { wholePart } from '../../length/round';
import type { FingersHow } from '../fronts/corner';

/** A finger or a slot of a side, up from its lower edge. Inches. */
export type Span = { readonly near: Length; readonly far: Length };

/** Fingers and slots of the front end of a side; its slots take the fingers of the front. Inches. */
export type Fingers = {
  readonly wide: Length;
  readonly how: FingersHow;
  /** How high it is cut, and what comes off the top edge for that. */
  readonly height: Length;
  readonly trim: Length;
  /** Of `equal`, what lies between the two ends; else all of the height. */
  readonly divisions: number;
  /** The finger at the lower edge: the first slot starts at it. */
  readonly end: Length;
  readonly fingers: readonly Span[];
  readonly slots: readonly Span[];
};

const odd = (n: bigint): bigint => (n % 2n === 0n ? n - 1n : n);

/** The least height: a finger at both edges and a slot between. @example leastFor(inches(1n, 2n)) // 1 1/2 */
export const leastFor = (wide: Length): Length => times(wide, 3n);

/** More are a slip of the keys. Common practice, no source. */
const mostCut = 200;

/** The most fingers anybody cuts, where so wide ones would be more. */
export const mostFingers = (height: Length, wide: Length): number | undefined =>
  wholePart(howMany(height, wide)) > BigInt(mostCut) ? mostCut : undefined;

/** How many divisions go into a height of three fingers or more. */
function divisionsOf(height: Length, wide: Length, how: FingersHow): bigint {
  const whole = wholePart(howMany(height, wide));
  if (how === 'any') return whole;
  // each end keeps at least half a finger
  return how === 'full' ? odd(whole) : odd(wholePart(howMany(subtract(height, wide), wide)));
}

/**
 * The height a side is cut to for its fingers: whole fingers, or all of it where its ends are equal.
 *
 * @param height inches, at least three fingers; @param wide of a finger, inches, > 0
 * @example heightFor(inches(41n, 8n), { wide: inches(1n, 2n), how: 'full' }) // Example 12 of boxes: 4 1/2
 */
export const heightFor = (
  height: Length,
  { wide, how }: { readonly wide: Length; readonly how: FingersHow },
): Length => (how === 'equal' ? height : times(wide, divisionsOf(height, wide, how)));

/**
 * Fingers as wide as their cutter, slots as wide between them, from the lower edge of a side.
 *
 * @param at.height before anything is trimmed, inches, at least three fingers; @param at.wide inches, > 0
 * @returns inches up from the lower edge
 * @example fingersOf({ height: inches(41n, 8n), wide: inches(1n, 2n), how: 'equal' }).end // Example 12 of boxes: 5/16
 */
export function fingersOf(at: {
  readonly height: Length;
  readonly wide: Length;
  readonly how: FingersHow;
}): Fingers {
  const { wide, how } = at;
  const divisions = divisionsOf(at.height, wide, how);
  const height = heightFor(at.height, at);
  const end = how === 'equal' ? half(subtract(height, times(wide, divisions))) : wide;
  const inner = Number(divisions) + (how === 'equal' ? 1 : 0);
  const edges = [
    zero,
    ...Array.from({ length: how === 'equal' ? inner : inner - 1 }, (_, k) =>
      add(end, times(wide, BigInt(k))),
    ),
    height,
  ];
  const spans = edges.slice(1).map((far, k): Span => ({ near: edges[k] ?? zero, far }));
  return {
    wide,
    how,
    height,
    trim: subtract(at.height, height),
    divisions: Number(divisions),
    end,
    fingers: spans.filter((_, k) => k % 2 === 0),
    slots: spans.filter((_, k) => k % 2 === 1),
  };
}

/** Less wood under a bottom breaks out. Common practice, no source. Inches. */
const leastUnder = inches(1n, 4n);

/** Where the groove for the bottom runs out: in a finger of the side, in one of the front, or over a line between. */
export type GrooveAmong = {
  readonly in: 'side' | 'front' | 'both';
  /** The nearest places for its lower edge where a finger of the side covers it, lower and higher; 1/4 up at least. */
  readonly lower: Length | undefined;
  readonly higher: Length | undefined;
};

/**
 * The groove among the fingers. Cut through, it comes out at the end of each finger it runs in: of a side's on the
 * face of the box front, of the front's on the outside of a side.
 *
 * @param groove its lower edge up from that of the side, and its width, inches
 * @example grooveAmong(fingers, groove).in // Example 13 of boxes: 'front'
 */
export function grooveAmong(
  { fingers, slots }: Fingers,
  { up, wide }: { readonly up: Length; readonly wide: Length },
): GrooveAmong {
  const top = add(up, wide);
  const holds = ({ near, far }: Span) => atMost(near, up) && atMost(top, far);
  const fit = fingers.filter(({ near, far }) => atMost(wide, subtract(far, near)));
  const lower = fit.map(({ far }) => subtract(far, wide)).filter((x) => less(x, up) && !less(x, leastUnder));
  const higher = fit.map(({ near }) => near).filter((x) => less(up, x));
  return {
    in: fingers.some(holds) ? 'side' : slots.some(holds) ? 'front' : 'both',
    lower: lower[lower.length - 1],
    higher: higher[0],
  };
}

/** What the sled makes of a step of its pin. Inches. */
export type FingerFit = {
  readonly finger: Length;
  /** A finger in its slot; under 0 it is too wide by so much. */
  readonly loose: Length;
  /** How far to move the pin: under 0 toward the blade. */
  readonly move: Length;
};

/**
 * Fingers as a sled cuts them that steps so far on its pin, and how far to move the pin for a fit that is wanted.
 *
 * @param at.wide the cutter in a test slot; at.step from slot to slot as measured; at.play wanted; inches, > 0
 * @example fingerFit({ wide, step, play }).move // Example 14 of boxes: -.006, toward the blade
 */
export function fingerFit(at: {
  readonly wide: Length;
  readonly step: Length;
  readonly play: Length;
}): FingerFit {
  const two = times(at.wide, 2n);
  return {
    finger: subtract(at.step, at.wide),
    loose: subtract(two, at.step),
    move: subtract(subtract(two, at.play), at.step),
  };
}

/**
 * How far a slot comes off its place by then, each step being off by the same. Mates cut off one pin share it, so they
 * still go together: only the last finger is wider or narrower by it.
 *
 * @param no of the slot, from the lower edge, 1 the first
 * @example slotOff({ wide, step }, 5) // Example 14 of boxes: .012
 */
export const slotOff = ({ wide, step }: { readonly wide: Length; readonly step: Length }, no: number) =>
  times(subtract(step, times(wide, 2n)), BigInt(no - 1));
