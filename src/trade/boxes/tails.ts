import {
  add,
  atMost,
  half,
  howMany,
  inches,
  isNegative,
  isPositive,
  type Length,
  less,
  negate,
  numerator,
  over,
  type Ratio,
  subtract,
  sum,
  times,
  zero,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { err, ok, type Result } from '../../length/result';
import { wholePart } from '../../length/round';
import type { Units } from '../../length/units';

/** Dovetails on the front end of a drawer side, as decided. Inches. */
export type TailPlan = {
  readonly height: Length;
  readonly tails: number;
  /** At the end line, where tails are widest. */
  readonly halfPin: Length;
  readonly pin: Length;
  /** 1 in so many. */
  readonly slope: Ratio;
  /** How far the tails reach, end line to baseline. */
  readonly long: Length;
  readonly groove?: { readonly up: Length; readonly wide: Length };
  /** The narrowest that must go between pins. */
  readonly cutter?: Length;
};

/** One tail, heights up from the lower edge of the side. Inches. */
type Tail = {
  readonly no: number;
  readonly near: Length;
  readonly far: Length;
  /** At the baseline, where it is narrowest. */
  readonly baseNear: Length;
  readonly baseFar: Length;
};

type GrooveIn = {
  readonly inside: boolean;
  /** The tail it runs out in. */
  readonly tail?: number;
  readonly cuts: 'none' | 'half-pin' | 'pin' | 'edge';
};

export type Tails = {
  readonly tails: readonly Tail[];
  readonly tail: Length;
  readonly baseTail: Length;
  readonly basePin: Length;
  readonly baseHalfPin: Length;
  /** A tail stands on the centre line. */
  readonly centred: boolean;
  readonly groove?: GrooveIn;
};

export type TailsError =
  | { readonly code: 'count-not-whole' }
  | { readonly code: 'too-many'; readonly most: number }
  | { readonly code: 'slope-not-positive' }
  | { readonly code: 'not-positive'; readonly field: 'height' | 'long' }
  /** Tails run into each other, or past the edge: as where a template's pitch is larger than the side is high. */
  | { readonly code: 'pin-negative'; readonly which: 'half-pin' | 'pin'; readonly by: Length }
  /** Nothing is left of a tail at the baseline. */
  | { readonly code: 'pins-eat-tails'; readonly by: Length };

/** More are a slip of the keys. Common practice, no source. */
const mostTails = 40;

/**
 * Tails equal, half pins at both edges; the groove for the bottom must lie wholly inside one tail at its narrowest.
 *
 * @param plan inches, height and long > 0, pins >= 0; tails whole, 1 to 40; slope > 0
 * @returns inches up from the lower edge of the side, or why it cannot be laid out
 * @example tailsOf(plan).value.tail // Example 3 of boxes: 15/16
 */
export function tailsOf(plan: TailPlan): Result<Tails, TailsError> {
  const wrong = faultOf(plan);
  if (wrong) return err(wrong);
  const { tails: n, pin, halfPin } = plan;
  const pins = add(times(halfPin, 2n), times(pin, BigInt(n - 1)));
  const tail = over(subtract(plan.height, pins), BigInt(n));
  const lean = over(plan.long, plan.slope);
  const baseTail = subtract(tail, times(lean, 2n));
  if (!isPositive(baseTail)) return err({ code: 'pins-eat-tails', by: negate(baseTail) });
  const tails = Array.from({ length: n }, (_, k): Tail => {
    const near = add(halfPin, times(add(tail, pin), BigInt(k)));
    const far = add(near, tail);
    return { no: k + 1, near, far, baseNear: add(near, lean), baseFar: subtract(far, lean) };
  });
  return ok({
    tails,
    tail,
    baseTail,
    basePin: add(pin, times(lean, 2n)),
    baseHalfPin: add(halfPin, lean),
    centred: n % 2 === 1,
    ...(plan.groove ? { groove: grooveIn(tails, plan.groove, plan.height) } : {}),
  });
}

function faultOf({ tails, slope, height, long, halfPin, pin }: TailPlan): TailsError | undefined {
  if (!Number.isInteger(tails) || tails < 1) return { code: 'count-not-whole' };
  if (tails > mostTails) return { code: 'too-many', most: mostTails };
  if (numerator(slope) <= 0n) return { code: 'slope-not-positive' };
  if (!isPositive(height)) return { code: 'not-positive', field: 'height' };
  if (!isPositive(long)) return { code: 'not-positive', field: 'long' };
  if (isNegative(halfPin)) return { code: 'pin-negative', which: 'half-pin', by: negate(halfPin) };
  return isNegative(pin) ? { code: 'pin-negative', which: 'pin', by: negate(pin) } : undefined;
}

function grooveIn(
  tails: readonly Tail[],
  { up, wide }: { readonly up: Length; readonly wide: Length },
  height: Length,
): GrooveIn {
  const top = add(up, wide);
  const own = tails.find((t) => atMost(t.baseNear, up) && atMost(top, t.baseFar));
  if (own) return { inside: true, tail: own.no, cuts: 'none' };
  if (less(up, zero) || less(height, top)) return { inside: false, cuts: 'edge' };
  const first = tails[0];
  const last = tails[tails.length - 1];
  const inHalf = (first && less(up, first.baseNear)) || (last && less(last.baseFar, top));
  return { inside: false, cuts: inHalf ? 'half-pin' : 'pin' };
}

/**
 * Where the groove could go so that it lies in a tail: the nearest place lower and the nearest higher than where it is.
 *
 * @param tails laid out, inches; @param groove its lower edge up from that of the side, and its width, inches
 * @returns its lower edge up from that of the side, inches; nothing where no tail takes it that way
 * @example grooveRoom(tails, groove) // Example 4 of boxes, five tails: lower 89/256, higher 1 23/256
 */
export function grooveRoom(
  tails: Tails,
  groove: { readonly up: Length; readonly wide: Length },
): { readonly lower: Length | undefined; readonly higher: Length | undefined } {
  const wideEnough = tails.tails.filter((t) => atMost(groove.wide, subtract(t.baseFar, t.baseNear)));
  const lower = wideEnough.map((t) => subtract(t.baseFar, groove.wide)).filter((x) => less(x, groove.up));
  const higher = wideEnough.map((t) => t.baseNear).filter((x) => less(groove.up, x));
  return { lower: lower[lower.length - 1], higher: higher[0] };
}

/** A half pin under this is weak. Common practice, no source. Inches. */
const leastHalfPin = inches(3n, 16n);

type TailsWarning =
  | { readonly code: 'half-pin-thin'; readonly halfPin: Length; readonly least: Length }
  | { readonly code: 'tail-under-cutter'; readonly tail: Length; readonly cutter: Length };

/**
 * What is worth a look in a layout that can be cut: half pins under 3/16 or 5 mm, tails the cutter does not leave.
 *
 * @param plan inches; a plan that cannot be laid out has no warnings
 * @example tailsWarnings(plan) // half pins of 1/8: half-pin-thin, least 3/16
 */
export function tailsWarnings(plan: TailPlan, units?: Units): readonly TailsWarning[] {
  const made = tailsOf(plan);
  if (!made.ok) return [];
  const least = figureIn(units, leastHalfPin);
  const thin: readonly TailsWarning[] = less(plan.halfPin, least)
    ? [{ code: 'half-pin-thin', halfPin: plan.halfPin, least }]
    : [];
  const { baseTail } = made.value;
  const under: readonly TailsWarning[] =
    plan.cutter && less(baseTail, plan.cutter)
      ? [{ code: 'tail-under-cutter', tail: baseTail, cutter: plan.cutter }]
      : [];
  return [...thin, ...under];
}

/**
 * Heights in whole pitches of a template, below and above one that is wanted.
 *
 * @param height inches, > 0; @param pitch inches, > 0
 * @returns inches; `tails` as many as go in; one pitch is the least, so nothing is below a height under it
 * @throws RangeError if the pitch is 0
 * @example templateHeights(inches(4n), inches(7n, 8n)) // below 3 1/2, above 4 3/8
 */
export function templateHeights(
  height: Length,
  pitch: Length,
): {
  readonly below: Length | undefined;
  readonly above: Length;
  readonly fits: boolean;
  readonly tails: number;
} {
  const n = wholePart(howMany(height, pitch));
  const below = times(pitch, n);
  const fits = !less(below, height);
  return {
    below: n > 0n ? below : undefined,
    above: fits ? below : add(below, pitch),
    fits,
    tails: Number(n),
  };
}

/**
 * The layout a template makes: its pitch is fixed, so many tails as go into the height, at least one; half pins are
 * what is left at both edges. Under a pitch they can come out negative: `tailsOf` refuses that.
 *
 * @param at.pitch centre to centre, inches, > 0; at.pin at the end line, less than the pitch
 * @returns a plan, inches
 * @throws RangeError if the pitch is 0
 * @example templateTails({ ...plan, pitch: inches(7n, 8n) }) // 4 1/8 high, pin 1/4: four tails, half pins 7/16
 */
export function templateTails(
  at: Omit<TailPlan, 'tails' | 'halfPin'> & { readonly pitch: Length },
): TailPlan {
  const { pitch, ...rest } = at;
  const n = Math.max(1, Number(wholePart(howMany(at.height, pitch))));
  const taken = sum([times(pitch, BigInt(n)), negate(at.pin)]);
  return { ...rest, tails: n, halfPin: half(subtract(at.height, taken)) };
}
