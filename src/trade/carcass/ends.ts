import { add, type Length, times, zero } from '../../length/length';
import { minus, plus, type Sum, sumOf, type Term } from '../sums/sum';
import type { PlainTerm } from '../sums/term-code';
import { backHow } from './back-how';
import type { Case } from './case';
import { endAt, type Flat, type Hand, jointAt, type Meets, pastOf, reachOf } from './meetings';

/** How far a bottom or top reaches past the inner faces of the sides, both ends together. */
export function reachTerms(sizes: Meets, flat: Flat): readonly Term[] {
  const both = times(reachOf(sizes, flat), 2n);
  if (jointAt(sizes.case, flat) !== jointAt(sizes.case, endAt(flat, 'right')))
    return [reachTerm(sizes, flat, 'left'), reachTerm(sizes, flat, 'right')];
  switch (jointAt(sizes.case, flat)) {
    case 'over':
      return [
        plus('two-sides', times(sizes.thick('side'), 2n)),
        plus('past-each-side', times(pastOf(sizes.case, flat), 2n)),
      ];
    case 'mitre':
      return [plus('two-sides', both)];
    case 'tongue':
      return [plus('two-tongues', both)];
    case 'rabbet':
      return [plus('two-rabbet-depths', both)];
    default:
      return [plus('two-dado-depths', both)];
  }
}

const ownTerms = {
  left: { tongue: 'left-tongue', rabbet: 'left-rabbet', dado: 'left-dado' },
  right: { tongue: 'right-tongue', rabbet: 'right-rabbet', dado: 'right-dado' },
} as const;

/** How far one end of a bottom or top reaches, where the other is joined otherwise. */
function reachTerm(sizes: Meets, flat: Flat, hand: Hand): Term {
  const meeting = endAt(flat, hand);
  const joint = jointAt(sizes.case, meeting);
  const what = ownTerms[hand][joint === 'tongue' || joint === 'rabbet' ? joint : 'dado'];
  return plus(what, reachOf(sizes, meeting));
}

/** A bottom or top added back to the outside: what of the sides lies beyond it, or how far it stands past them. */
export function beyondTerms(sizes: Meets, flat: Flat): readonly Term[] {
  if (jointAt(sizes.case, flat) === 'over')
    return [minus('past-each-side', times(pastOf(sizes.case, flat), 2n))];
  if (jointAt(sizes.case, flat) === 'mitre') return [];
  const reach = reachTerms(sizes, flat).map(({ what, value }) => minus(what, value));
  return [plus('two-sides', times(sizes.thick('side'), 2n)), ...reach];
}

/** How thick a bottom or top lies over the ends of the sides: so much shorter they are. Inches. */
export const overSides = ({ case: c, thick }: Meets, flat: Flat): Length =>
  (flat === 'bottom' || c.hasTop) && jointAt(c, flat) === 'over' ? thick(flat) : zero;

/**
 * A side: as high as the case, less what lies over its ends.
 *
 * @example sideLong(sizes).value // 64 1/4 where the top lies between or in the sides
 */
export const sideLong = (sizes: Meets & { readonly height: Sum }): Sum =>
  sumOf(
    ...sizes.height.terms,
    minus('top', overSides(sizes, 'top')),
    minus('bottom', overSides(sizes, 'bottom')),
  );

/** The datum as a side has it: over its own lower end. Inches. */
export const sideDatum = (sizes: Meets): Length =>
  jointAt(sizes.case, 'bottom') === 'over' ? zero : add(sizes.case.feet ?? zero, sizes.thick('bottom'));

/**
 * Bottom or top: as deep as the room before the back; one that lies over the sides, is mitred with them or grooved,
 * takes it all.
 */
export function flatWide(sizes: Meets & { readonly depth: Sum; readonly before: Sum }, flat: Flat): Sum {
  const isWhole = ['over', 'mitre'].includes(jointAt(sizes.case, flat));
  return isWhole || backHow(sizes.case) === 'groove' ? sizes.depth : sizes.before;
}

/** The tongues of a partition, where it ends in them, as its sum has them. */
export function tonguesTerm(c: Case): PlainTerm | undefined {
  if (jointAt(c, 'partition') !== 'tongue') return undefined;
  return c.hasTop ? 'two-tongues' : 'tongue';
}
