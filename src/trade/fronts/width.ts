import {
  equals,
  half,
  isNegative,
  isPositive,
  type Length,
  less,
  negate,
  subtract,
  times,
  zero,
} from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { minus, plus, type Sum, sumOf, type Term } from '../sums/sum';
import type { SideOf } from '../sums/term-code';

/** What a front meets at a side. Inches. */
export type Edge =
  | { readonly kind: 'inset'; readonly reveal: Length }
  /** It covers the case by so much; `edge` is how much there is to cover. */
  | { readonly kind: 'overlay'; readonly over: Length; readonly edge?: Length }
  /** Two fronts share a partition: each covers half of what the gap leaves of it. */
  | { readonly kind: 'shared'; readonly partition: Length; readonly gap: Length };

export type WidthError =
  | { readonly code: 'no-width'; readonly by: Length }
  /** A reveal or a gap of less than nothing: the front would be wider than what it goes into. */
  | { readonly code: 'side-negative'; readonly by: Length };
export type WidthWarning = {
  readonly code: 'past-the-edge';
  readonly side: 'left' | 'right';
  readonly over: Length;
  readonly edge: Length;
};

type Width = {
  readonly width: Sum;
  /** How far it covers the opening's edge at either side; negative: stands short of it. */
  readonly left: Length;
  readonly right: Length;
  readonly warnings: readonly WidthWarning[];
};

/**
 * How wide a front is: the opening less its reveals, or and what it covers; over a shared partition (t - g)/2.
 *
 * @param opening inches, > 0; @param left, right what it meets there, inches; reveals and gaps >= 0
 * @returns the width, inches, > 0, with its sum; a warning where it covers more than the edge there is; or `no-width`,
 *   `by` how much the reveals are over the opening, inches
 * @example frontWidth(inches(17n), inset, inset) // reveals 5/64: 16 27/32
 */
export function frontWidth(opening: Length, left: Edge, right: Edge): Result<Width, WidthError> {
  const below = [left, right].map(roomAt).find(isNegative);
  if (below) return err({ code: 'side-negative', by: negate(below) });
  const [l, r] = [covers(left), covers(right)];
  const width = sumOf(plus('opening', opening), ...terms(left, right));
  if (!isPositive(width.value)) return err({ code: 'no-width', by: negate(width.value) });
  return ok({ width, left: l, right: r, warnings: [...past('left', left), ...past('right', right)] });
}

/** What stays free beside the front: a reveal, half a gap's worth of air; where it covers, nothing is asked for. */
const roomAt = (edge: Edge): Length =>
  edge.kind === 'inset' ? edge.reveal : edge.kind === 'shared' ? edge.gap : zero;

function covers(edge: Edge): Length {
  if (edge.kind === 'inset') return negate(edge.reveal);
  return edge.kind === 'overlay' ? edge.over : half(subtract(edge.partition, edge.gap));
}

function terms(left: Edge, right: Edge): readonly Term[] {
  const [l, r] = [covers(left), covers(right)];
  if (left.kind === right.kind && equals(l, r)) return [line(left, 'both', times(l, 2n))];
  return [line(left, 'left', l), line(right, 'right', r)];
}

function line(edge: Edge, at: SideOf, x: Length): Term {
  if (edge.kind === 'inset') return minus({ code: 'reveal', at }, negate(x));
  if (edge.kind === 'shared')
    return isNegative(x)
      ? minus({ code: 'short-of-partition', at }, negate(x))
      : plus({ code: 'half-partition', at }, x);
  return plus({ code: 'cover', at }, x);
}

const past = (side: 'left' | 'right', edge: Edge): readonly WidthWarning[] =>
  edge.kind === 'overlay' && edge.edge && less(edge.edge, edge.over)
    ? [{ code: 'past-the-edge', side, over: edge.over, edge: edge.edge }]
    : [];
