import { isPositive, type Length, less, sum, times } from '../../length/length';
import { anchorStrip } from '../install/anchor-strip';
import { given, plus, sumOf } from '../sums/sum';
import { nailersIn } from './back-how';
import { isLetIn, nailerCount, nailerDeep, nailerWide } from './nailer-places';
import { type Making, partOf } from './panels';
import type { Part } from './part';
import type { CaseProblem } from './problems';
import type { RoundWarning } from './round-problems';
import type { Sizes } from './sizes';

const wideOf = ({ case: c }: Sizes): Length => nailerWide(c);

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
      length: sumOf(
        plus('clear-width', clearWidth.value, clearWidth),
        plus('two-rabbet-depths', times(nailerDeep(sizes.case), 2n)),
      ),
      width: given('width-said', wideOf(sizes)),
      spans: { length: 'across' },
      end: 'left',
      stage: 'carcass',
    }),
  ];
}

/** Nailers that take more than the clear height, or all the depth; let in through the sides, or away from an edge. */
export function nailerProblems(sizes: Sizes): readonly CaseProblem[] {
  const all = times(wideOf(sizes), BigInt(nailerCount(sizes)));
  const by = sum([all, times(sizes.clearHeight.value, -1n)]);
  const { inner, case: c, joints, thick } = sizes;
  const [depth, thickness] = [nailerDeep(c), thick('side')];
  const isHoused = isPositive(depth) && nailerCount(sizes) > 0;
  return [
    ...(isHoused && !less(depth, thickness)
      ? [{ code: 'through', field: 'nailerDeep', depth, thickness } as const]
      : []),
    ...(isHoused && !isLetIn(sizes)
      ? [
          {
            round: 'back',
            code: 'nailers-no-edge',
            by: sum([thick('nailer'), times(joints.backLand, -1n)]),
            least: thick('nailer'),
          } as const,
        ]
      : []),
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
  const least = anchorStrip(c.units);
  const short = sum([own, times(joints.backLand, -1n)]);
  const inside = nailersIn(c, joints, own) === 'inside' && c.hasBack && c.backHow === 'groove';
  return [
    ...(less(own, least.thick)
      ? [{ round: 'back', code: 'nailer-thin', is: own, least: least.thick } as const]
      : []),
    ...(less(wide, least.wide)
      ? [{ round: 'back', code: 'nailer-narrow', is: wide, least: least.wide } as const]
      : []),
    ...(inside ? [{ round: 'back', code: 'nailers-inside', by: short, takes: own } as const] : []),
  ];
}
