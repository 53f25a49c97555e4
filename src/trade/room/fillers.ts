import {
  add,
  equals,
  inches,
  isNegative,
  isPositive,
  type Length,
  less,
  negate,
  subtract,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { roundTo } from '../../length/round';
import type { Units } from '../../length/units';
import { given, plus, type Sum, sumOf } from '../sums/sum';
import type { Allowances } from './greatest-width';
import type { Plumb } from './plumb';
import { type AtSpot, greatestOf, leastOf, type Spot, spotOf } from './spot';

/** A strip is ripped so much wider than its widest place. Common practice, no source. Inches. */
const stripOver = inches(1n, 8n);
/** A filler under this breaks off, over the other looks wrong; none is ripped narrower. Common practice, no source. */
const leastFiller = inches(3n, 8n);
const mostFiller = inches(3n);

export type FillerWarning =
  /** The wall comes in further than the case leaves room: it does not go in there. */
  | { readonly code: 'binds'; readonly spot: Spot; readonly by: Length }
  | { readonly code: 'narrow'; readonly gap: Length; readonly least: Length; readonly by: Length }
  | { readonly code: 'wide'; readonly gap: Length; readonly most: Length; readonly by: Length };

/** One side of a case that stands between walls. Inches. */
export type SideFillers = {
  /** From case to wall at every spot, negative where it binds. */
  readonly gaps: readonly AtSpot[];
  /** The strip to rip, up to a mark, before it is scribed; none where the front has no gap. */
  readonly strip?: Length;
  /** How wide it must be, exactly. */
  readonly width?: Sum;
  /** What comes off the strip at every spot of the front: strip less gap. */
  readonly off: readonly AtSpot[];
  readonly warnings: readonly FillerWarning[];
};

export type Fillers = {
  readonly left: SideFillers;
  readonly right: SideFillers;
  /** Plumb width less allowances less case: negative, the case is so much too wide. */
  readonly spare: Length;
};

/** Gaps read down an edge that a strip closes: what is read beside the case goes before what the lines make it. */
export type GapsRead = { readonly left?: readonly AtSpot[]; readonly right?: readonly AtSpot[] };

type Reckoned = {
  readonly units: Units | undefined;
  readonly grain?: Length | undefined;
  readonly read?: readonly AtSpot[] | undefined;
};

/** As wide as the widest place and what is left for scribing; never so narrow that it breaks off. */
function ripOf(widest: Length, units: Units | undefined): Sum {
  const least = figureIn(units, leastFiller);
  const width = sumOf(plus('widest-gap', widest), plus('left-to-scribe', figureIn(units, stripOver)));
  return less(width.value, least) ? given('least-strip', least) : width;
}

const isAt = (a: Spot, b: Spot): boolean => a.plane === b.plane && equals(a.at, b.at);

function sideOf(lines: readonly AtSpot[], { units, grain, read = [] }: Reckoned): SideFillers {
  const gaps = [...lines, ...read];
  const front = gaps.filter(({ plane }) => plane === 'front');
  const [narrow, wide] = [leastOf(front)?.value, greatestOf(front)?.value];
  const [least, most] = [figureIn(units, leastFiller), figureIn(units, mostFiller)];
  const warnings: FillerWarning[] = gaps
    .filter(({ value }) => isNegative(value))
    .map((gap) => ({ code: 'binds', spot: spotOf(gap), by: negate(gap.value) }));
  if (narrow && !isNegative(narrow) && less(narrow, least))
    warnings.push({ code: 'narrow', gap: narrow, least, by: subtract(least, narrow) });
  if (wide && less(most, wide)) warnings.push({ code: 'wide', gap: wide, most, by: subtract(wide, most) });
  if (!wide || !isPositive(wide)) return { gaps, off: [], warnings };
  const width = ripOf(wide, units);
  const strip = grain ? roundTo(width.value, grain, 'ceil').value : width.value;
  const off = front
    .filter((gap) => read.includes(gap) || !read.some((spot) => isAt(spot, gap)))
    .map((gap) => ({ ...gap, value: subtract(strip, gap.value) }));
  return { gaps, strip, width, off, warnings };
}

/**
 * The gaps a case leaves at every spot, the strips that fill them, and what is planed off each. The case stands at its
 * left allowance, so what rounding left goes to the right. To shift it, give another left allowance.
 *
 * @param plumb what the walls are
 * @param at.width of the case, inches, > 0: any, also one too wide; @param at.allow inches
 * @param at.grain of the tape: a strip goes up to it; exact where it is not said; @param at.read beside the case
 * @param units of the job
 * @returns inches
 * @example fillersFor(plumb, { width: inches(46n), allow }).left.gaps // Example 2 of room: 1/2, 3/4, 1 1/8
 */
export function fillersFor(
  plumb: Plumb,
  at: {
    readonly width: Length;
    readonly allow: Allowances;
    readonly grain?: Length;
    readonly read?: GapsRead;
  },
  units?: Units,
): Fillers {
  const { lines, nearLeft } = plumb;
  // from the left plumb line, to the right
  const leftSide = subtract(at.allow.left, nearLeft);
  const rightSide = add(leftSide, at.width);
  const left = lines.left.map((l) => ({ ...l, value: add(leftSide, l.value) }));
  const right = lines.right.map((r) => ({ ...r, value: subtract(add(lines.apart, r.value), rightSide) }));
  const reckoned = { units, grain: at.grain };
  return {
    left: sideOf(left, { ...reckoned, read: at.read?.left }),
    right: sideOf(right, { ...reckoned, read: at.read?.right }),
    spare: subtract(subtract(subtract(plumb.width, at.allow.left), at.allow.right), at.width),
  };
}
