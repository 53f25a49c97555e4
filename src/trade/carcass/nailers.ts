import { inches, isPositive, type Length, less, sum, times } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { given, plus, sumOf } from '../sums/sum';
import { nailersIn } from './back-how';
import { type Making, partOf } from './panels';
import type { Part } from './part';
import type { RoundProblem, RoundWarning } from './round-problems';
import type { Sizes } from './sizes';
import { usualOf } from './usual';

/** A case higher than this has a nailer between. Architectural Woodwork Standards, 1 Oct 2009, 4.4.18. Inches. */
const highest = inches(60n);

/** The least a nailer may be, thick and wide. Architectural Woodwork Standards, 1 Oct 2009, 4.4.18. Inches. */
const least = { thick: inches(1n, 2n), wide: inches(5n, 2n) } as const;

/** How many nailers a case has: as said, else one at the top, one at the bottom, and in a high one another between. */
export function nailerCount({ case: c, height, plinth }: Pick<Sizes, 'case' | 'height' | 'plinth'>): number {
  if (!c.hasNailers) return 0;
  const high = sum([height.value, plinth]);
  return c.nailers ?? (less(figureIn(c.units, highest), high) ? 3 : 2);
}

const wideOf = ({ case: c }: Sizes): Length => c.nailerWide ?? usualOf(c).nailerWide;

/** Strips across the case, glued and fastened between the sides, that it is screwed to the wall through. */
export function nailerParts(making: Making): readonly Part[] {
  const { sizes } = making;
  const copies = nailerCount(sizes);
  if (copies === 0) return [];
  const { clearWidth } = sizes;
  return [
    partOf(making, {
      role: 'nailer',
      stock: 'nailer',
      copies,
      length: sumOf(plus('clear-width', clearWidth.value, clearWidth)),
      width: given('width-said', wideOf(sizes)),
      spans: { length: 'across' },
      end: 'left',
      stage: 'carcass',
    }),
  ];
}

/** How far nailers begin from the upper face of the bottom, the lowest first; evenly from bottom to top. Inches. */
export function nailerPlaces(sizes: Sizes): readonly Length[] {
  const count = nailerCount(sizes);
  const room = sizes.clearHeight.value.sub(wideOf(sizes)) as Length;
  return Array.from({ length: count }, (_, k) =>
    count === 1 ? room : (times(room, BigInt(k)).div(inches(BigInt(count - 1))) as Length),
  );
}

/** Nailers that take more than the clear height, or all the depth. */
export function nailerProblems(sizes: Sizes): readonly RoundProblem[] {
  const all = times(wideOf(sizes), BigInt(nailerCount(sizes)));
  const by = sum([all, times(sizes.clearHeight.value, -1n)]);
  const { inner, case: c } = sizes;
  return [
    ...(c.hasNailers && c.cleats > 0 ? [{ round: 'back', code: 'nailers-and-cleats' } as const] : []),
    ...(isPositive(by) ? [{ round: 'back', code: 'nailers-full', by } as const] : []),
    ...(c.hasNailers && !isPositive(inner.value)
      ? [{ round: 'back', code: 'nailers-deep', by: times(inner.value, -1n) } as const]
      : []),
  ];
}

/** Nailers thinner or narrower than they may be, or that take depth for want of land behind the back. */
export function nailerWarnings(sizes: Sizes): readonly RoundWarning[] {
  const { case: c, thick, joints } = sizes;
  if (nailerCount(sizes) === 0) return [];
  const [own, wide] = [thick('nailer'), wideOf(sizes)];
  const [thin, narrow] = [figureIn(c.units, least.thick), figureIn(c.units, least.wide)];
  const short = sum([own, times(joints.backLand, -1n)]);
  const inside = nailersIn(c, joints, own) === 'inside' && c.hasBack && c.backHow === 'groove';
  return [
    ...(less(own, thin) ? [{ round: 'back', code: 'nailer-thin', is: own, least: thin } as const] : []),
    ...(less(wide, narrow)
      ? [{ round: 'back', code: 'nailer-narrow', is: wide, least: narrow } as const]
      : []),
    ...(inside ? [{ round: 'back', code: 'nailers-inside', by: short, takes: own } as const] : []),
  ];
}
