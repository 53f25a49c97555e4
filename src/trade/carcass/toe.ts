import { zero } from '../../length/length';
import { minus, plus, sumOf } from '../sums/sum';
import { type Making, partOf } from './panels';
import { type Part, sizeAt } from './part';
import { isNotched } from './toe-notch';
import { usualOf } from './usual';

/** The toe board: between the sides, or in their notches over the whole width, a little clear of the floor. */
export function toePart(making: Making): Part {
  const { sizes, tape } = making;
  const { case: c, width, clearWidth } = sizes;
  const of = { role: 'toe', stock: 'toe', end: 'left', stage: 'after-dry-fit', fitted: 'length' } as const;
  const high = plus('floor-to-case', c.feet ?? zero);
  if (!isNotched(c))
    return partOf(making, {
      ...of,
      length: sumOf(plus('clear-width', clearWidth.value, clearWidth)),
      width: sumOf(high),
      enters: true,
      spans: { length: 'across' },
    });
  const wide = sumOf(high, minus('clear-of-floor', c.toeClear ?? usualOf(c).toeClear));
  const length = sumOf(plus('outside-width', width.value, width));
  const board = partOf(making, { ...of, length, width: wide });
  return { ...board, width: sizeAt(wide, tape, 'floor') };
}
