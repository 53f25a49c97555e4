import {
  inches,
  isPositive,
  type Length,
  less,
  longest,
  negate,
  subtract,
  times,
  zero,
} from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { minus, plus, type Sum, sumOf, type Term } from '../sums/sum';
import { backHow } from './back-how';
import type { BackHow } from './case';
import { overSides } from './ends';
import { reachOf } from './meetings';
import { behindMitred } from './mitres';
import { type Making, partOf, rabbetToRabbet } from './panels';
import type { Part } from './part';
import type { CaseField, CaseProblem, CaseWarning } from './problems';
import { lengthIn, type Sizes } from './sizes';

/** What a back is cut to enter or to cover, before its room is taken off. Inches. */
type BackOpening = { readonly across: Sum; readonly up: Sum };

/**
 * What the back of a case goes into: from rabbet to rabbet, from groove floor to groove floor, or all it is laid on.
 *
 * @returns inches, as planned
 * @example backOpening(sizes).across.value // 42 11/16 in grooves 1/4 deep, 42 3/16 clear: Example 16 of carcass
 */
export function backOpening(sizes: Sizes): BackOpening {
  const { case: c, width, height, clearWidth, clearHeight } = sizes;
  const over = sumOf(plus('outside-height', height.value, height), minus('floor-to-case', c.feet ?? zero));
  const between = sumOf(
    ...over.terms,
    minus('top', overSides(sizes, 'top')),
    minus('bottom', overSides(sizes, 'bottom')),
    minus('left-of-top', behindMitred(sizes, 'top') ?? zero),
    minus('left-of-bottom', behindMitred(sizes, 'bottom') ?? zero),
  );
  switch (backHow(c)) {
    case 'groove': {
      const deep = reachOf(sizes, 'back');
      return {
        across: sumOf(
          plus('clear-width', clearWidth.value, clearWidth),
          plus('two-groove-depths', times(deep, 2n)),
        ),
        up: sumOf(
          plus('clear-height', clearHeight.value, clearHeight),
          c.hasTop ? plus('two-groove-depths', times(deep, 2n)) : plus('groove-depth', deep),
        ),
      };
    }
    case 'applied':
      return { across: sumOf(plus('outside-width', width.value, width)), up: over };
    default:
      return { across: rabbetToRabbet(sizes, 'back'), up: between };
  }
}

/** What its opening as built is kept under, and called in the sum: a measure of one opening is not that of another. */
export const asBuilt = {
  rabbet: {
    across: { key: 'backw', what: 'back-width-as-built' },
    up: { key: 'backh', what: 'back-height-as-built' },
  },
  groove: {
    across: { key: 'backgw', what: 'groove-floors-as-built' },
    up: { key: 'backgh', what: 'groove-floors-as-built' },
  },
  applied: {
    across: { key: 'backcw', what: 'width-to-cover-as-built' },
    up: { key: 'backch', what: 'back-height-as-built' },
  },
} as const satisfies Record<BackHow, unknown>;

/** What a back is cut less than its opening: room to go in, or how far in from the outside it ends. */
const lessThan = ({ case: c, joints }: Sizes): Term =>
  backHow(c) === 'applied' ? minus('two-insets', times(joints.backInset, 2n)) : minus('room', joints.ease);

/** Covers the case from bottom to top, in its rabbets but for what lies over the sides, or stands in grooves. */
export function backPart(making: Making): Part {
  const { sizes } = making;
  const { built } = sizes.case;
  const as = asBuilt[backHow(sizes.case) ?? 'rabbet'];
  const [wide, high] = [built[as.across.key]?.used, built[as.up.key]?.used];
  const room = lessThan(sizes);
  const width = wide
    ? sumOf(plus(as.across.what, wide), room)
    : lengthIn(sizes, 'across', (by) => sumOf(...backOpening(by).across.terms, room));
  const length = high ? sumOf(plus(as.up.what, high), room) : sumOf(...backOpening(sizes).up.terms, room);
  return partOf(making, {
    role: 'back',
    stock: 'back',
    length,
    width,
    enters: true,
    spans: { length: 'up', width: 'across' },
    end: 'bottom',
    stage: 'after-dry-fit',
    fitted: 'both',
  });
}

/** A groove or an inset that cannot be. */
export function backProblems(sizes: Sizes): readonly CaseProblem[] {
  const { case: c, joints, thick, inner } = sizes;
  switch (backHow(c)) {
    case 'groove': {
      const by = subtract(thick('back'), joints.backGrooveWide);
      const closed = isPositive(inner.value)
        ? []
        : [{ round: 'back', code: 'no-depth', by: negate(inner.value) } as const];
      return [
        ...(isPositive(by)
          ? [{ round: 'back', code: 'back-too-thick', by, groove: joints.backGrooveWide } as const]
          : []),
        ...closed,
        ...grooveThrough(sizes),
        ...tooMuch('ease', joints.ease, joints.backGroove),
        ...cleatsBehind(sizes),
      ];
    }
    case 'applied':
      return tooMuch('backInset', joints.backInset, thick('side'));
    default:
      return [];
  }
}

const tooMuch = (field: CaseField, value: Length, most: Length): readonly CaseProblem[] =>
  less(most, value) ? [{ code: 'too-much', field, by: subtract(value, most), most }] : [];

/** Bottom and top are grooved for it like the sides, and may be thinner. */
function grooveThrough({ case: c, joints, thick }: Sizes): readonly CaseProblem[] {
  const depth = joints.backGroove;
  const thinnest = [thick('bottom'), ...(c.hasTop ? [thick('top')] : [])].find(
    (thickness) => !less(depth, thickness) && less(depth, thick('side')),
  );
  return thinnest ? [{ code: 'through', field: 'backGroove', depth, thickness: thinnest }] : [];
}

/** Cleats lie behind a back in a groove: what is left there must take them. */
function cleatsBehind({ case: c, joints, thick }: Sizes): readonly CaseProblem[] {
  const least = c.cleatRabbetWide ?? thick('cleat');
  const by = subtract(least, joints.backLand);
  return c.cleats > 0 && isPositive(by) ? [{ round: 'back', code: 'cleats-behind', by, least }] : [];
}

/** Wood behind a groove that breaks out. Common practice, no source. */
const leastLand = inches(3n, 8n);

/** Too little left behind the groove for the back. */
export function backWarnings({ case: c, joints }: Sizes): readonly CaseWarning[] {
  if (backHow(c) !== 'groove') return [];
  const least = longest(figureIn(c.units, leastLand), joints.backGroove);
  return less(joints.backLand, least)
    ? [{ round: 'back', code: 'thin-land', land: joints.backLand, least }]
    : [];
}
