import {
  absolute,
  add,
  half,
  inches,
  isNegative,
  isPositive,
  isZero,
  type Length,
  less,
  over,
  subtract,
  times,
  zero,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';

/** Least of the stack inside the sacrificial fence. Common practice, no source. */
export const leastBuried = inches(1n, 16n);

/** A rabbet as decided. Inches. */
export type RabbetPlan = {
  /** The part it is cut in. */
  readonly thickness: Length;
  /** Thickness of what lies in it. */
  readonly lying: Length;
  /** Added to the width: room to scribe, or to plane flush; may be negative. 0 when not said. */
  readonly allowance?: Length;
  readonly depth: Length;
  /** Width of the stack. */
  readonly stack: Length;
};

type RabbetSetting = {
  /** Across the face. */
  readonly width: Length;
  /** Teeth standing out of the sacrificial fence: the width. */
  readonly exposed: Length;
  readonly buried: Length;
  /** What is left of the thickness. */
  readonly tongue: Length;
  readonly warnings: readonly ('little-buried' | 'thin-tongue')[];
};

type RabbetError =
  | { readonly code: 'not-positive'; readonly what: 'thickness' | 'lying' | 'width' | 'depth' | 'stack' }
  | { readonly code: 'depth-through'; readonly by: Length }
  /** A wider stack, or two passes. */
  | { readonly code: 'stack-too-narrow'; readonly by: Length };

/**
 * A rabbet cut with the stack partly inside a sacrificial fence.
 *
 * @param plan inches; all > 0 but the allowance, depth < thickness
 * @returns inches; warned: less than 1/16 buried, tongue under a third of the thickness
 * @example rabbetFor(plan) // exposed 23/32, buried 3/32, tongue 3/8: Example 2 of joints
 */
export function rabbetFor({
  thickness,
  lying,
  allowance = zero,
  depth,
  stack,
}: RabbetPlan): Result<RabbetSetting, RabbetError> {
  const width = add(lying, allowance);
  const sizes = [
    ['thickness', thickness],
    ['lying', lying],
    ['width', width],
    ['depth', depth],
    ['stack', stack],
  ] as const;
  const bad = sizes.find(([, x]) => !isPositive(x));
  if (bad) return err({ code: 'not-positive', what: bad[0] });
  const tongue = subtract(thickness, depth);
  if (!isPositive(tongue)) return err({ code: 'depth-through', by: subtract(zero, tongue) });
  const buried = subtract(stack, width);
  if (isNegative(buried)) return err({ code: 'stack-too-narrow', by: subtract(zero, buried) });
  const warnings = [
    ...(less(buried, leastBuried) ? (['little-buried'] as const) : []),
    // A third must stay. Common practice, no source.
    ...(less(tongue, over(thickness, 3n)) ? (['thin-tongue'] as const) : []),
  ];
  return ok({ width, exposed: width, buried, tongue, warnings });
}

/** A cleat let into the rabbets of both sides and notches in the partitions. Inches. */
export type CleatPlan = {
  /** The case, outside to outside. */
  readonly outside: Length;
  readonly side: Length;
  /** How deep the side rabbets go into the side. */
  readonly rabbetDepth: Length;
  /** The cleat as measured. */
  readonly width: Length;
  readonly thickness: Length;
  /** Room for the cleat along the notch; 0 or more. */
  readonly clearance: Length;
  /** The partition, front to back, where it is known. */
  readonly partition?: Length;
};

type Cleat = {
  readonly length: Length;
  /** Along the partition's edge, and into it. Cut with the partitions clamped as one, or at one stop pair. */
  readonly notch: { readonly long: Length; readonly deep: Length };
  /** The notch takes more than half of the partition. */
  readonly deepNotch: boolean;
};

type CleatError =
  | {
      readonly code: 'not-positive';
      readonly what: 'outside' | 'side' | 'rabbetDepth' | 'width' | 'thickness' | 'partition';
    }
  | { readonly code: 'clearance-negative' }
  | { readonly code: 'depth-through'; readonly by: Length }
  | { readonly code: 'no-length'; readonly by: Length }
  /** The notch goes through the partition. */
  | { readonly code: 'notch-through'; readonly by: Length };

/**
 * A cleat between the side rabbets, and its notch: length W - 2 (side - rabbet depth), notch width + clearance long and
 * as deep as the cleat is thick.
 *
 * @param plan inches; all > 0 but the clearance, >= 0
 * @returns inches, exact; warned: notch deeper than half the partition (common practice, no source)
 * @example cleatFor(plan) // 37 5/8, notch 2 13/16 × 23/32: Example 3 of joints
 */
export function cleatFor(plan: CleatPlan): Result<Cleat, CleatError> {
  const { outside, side, rabbetDepth, width, thickness, clearance, partition } = plan;
  const bad = notPositive(plan);
  if (bad) return err(bad);
  if (isNegative(clearance)) return err({ code: 'clearance-negative' });
  const left = subtract(side, rabbetDepth);
  if (!isPositive(left)) return err({ code: 'depth-through', by: subtract(zero, left) });
  const length = subtract(outside, times(left, 2n));
  if (!isPositive(length)) return err({ code: 'no-length', by: subtract(zero, length) });
  if (partition && !less(thickness, partition))
    return err({ code: 'notch-through', by: subtract(thickness, partition) });
  return ok({
    length,
    notch: { long: add(width, clearance), deep: thickness },
    deepNotch: partition !== undefined && less(half(partition), thickness),
  });
}

function notPositive({
  outside,
  side,
  rabbetDepth,
  width,
  thickness,
  partition,
}: CleatPlan): CleatError | undefined {
  const sizes = { outside, side, rabbetDepth, width, thickness, partition };
  for (const what of ['outside', 'side', 'rabbetDepth', 'width', 'thickness', 'partition'] as const) {
    const x = sizes[what];
    if (x && !isPositive(x)) return { code: 'not-positive', what };
  }
  return undefined;
}

/**
 * Where a cleat does not lie flush: which rabbet or notch (from 0), and by how much it stands proud or sunk, inches.
 */
type Mismatch = {
  readonly where: 'rabbet' | 'notch';
  readonly at: number;
  readonly stands: 'proud' | 'sunk';
  readonly by: Length;
};

/**
 * Whether a cleat lies flush everywhere: width of each rabbet that carries it = its thickness = depth of each notch.
 *
 * @param thickness of the cleat, inches; @param rabbets their widths; @param notches their depths
 * @returns every mismatch, rabbets first; none when all agree
 * @example cleatMismatches({ thickness, rabbets: [inches(11n, 16n)], notches: [] }) // proud by 1/32: Example 6 of joints
 */
export function cleatMismatches({
  thickness,
  rabbets,
  notches,
}: {
  readonly thickness: Length;
  readonly rabbets: readonly Length[];
  readonly notches: readonly Length[];
}): readonly Mismatch[] {
  const against = (where: Mismatch['where']) => (seat: Length, at: number) => {
    const off = subtract(thickness, seat);
    const stands = isNegative(off) ? 'sunk' : 'proud';
    return isZero(off) ? [] : [{ where, at, stands, by: absolute(off) } as const];
  };
  return [...rabbets.flatMap(against('rabbet')), ...notches.flatMap(against('notch'))];
}
