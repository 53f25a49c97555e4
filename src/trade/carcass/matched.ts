import { equals, subtract } from '../../length/length';
import { toStored } from '../../length/stored';
import type { Tape } from '../../length/tape';
import type { Sum } from '../sums/sum';
import { type Part, type Size, sizeAt } from './part';
import { type Sizes, setBy } from './sizes';

/**
 * Parts that must agree: equal exact lengths of one opening share one mark, whatever each would be rounded to alone.
 * One that sets the opening gives it, to the nearest, and the others enter the opening it makes; without one, any that
 * must enter sends all down. Equal after rounding only is not equal.
 *
 * @param parts of one case; @param sizes it was worked out from, with the marks of what sets it
 * @returns the same parts, grooved boards with the mark of their length
 * @example matched(parts, sizes, '1/32') // bottom and full shelf 42 23/32 scant .0111: Example 14 of carcass
 */
export function matched(parts: readonly Part[], sizes: Sizes, tape: Tape): readonly Part[] {
  const groups = new Map<string, Size[]>();
  for (const size of parts.flatMap((part) => [part.length, part.width])) {
    const key = keyOf(size);
    if (key === undefined) continue;
    const group = groups.get(key);
    if (group) group.push(size);
    else groups.set(key, [size]);
  }
  const agreed = (size: Size): Size => {
    const group = groups.get(keyOf(size) ?? '') ?? [size];
    return setAt(size, sizes) ?? { ...size, ...sizeAt(size.sum, tape, modeOf(group)) };
  };
  return parts.map((part) => {
    const [length, width] = [agreed(part.length), agreed(part.width)];
    const board = part.board && { ...part.board, lengthMark: length.mark };
    return { ...part, length, width, ...(board ? { board } : {}) };
  });
}

const keyOf = ({ spans, sum }: Size): string | undefined =>
  spans && `${spans.opening} ${toStored(sum.value)} ${follows(sum)}`;

/** Whether a length is reckoned from a mark, not by the drawing: what equals the drawing then does so by chance. */
const follows = ({ terms }: Sum): boolean =>
  terms.some(({ what, from }) => what === 'bottom-mark' || what === 'side-mark' || (from && follows(from)));

const modeOf = (group: readonly Size[]): Size['mode'] => {
  if (group.some((size) => size.spans?.sets)) return 'halfExpand';
  return group.some((size) => size.mode === 'floor') ? 'floor' : 'halfExpand';
};

/** As long as what sets the case across or up: cut to its mark. */
function setAt(size: Size, sizes: Sizes): Size | undefined {
  const way = size.spans?.opening;
  if (way !== 'across' && way !== 'up') return undefined;
  const { exact, mark } = setBy(sizes, way);
  if (!equals(size.sum.value, exact) || follows(size.sum)) return undefined;
  return { ...size, mode: 'halfExpand', mark: { value: mark, rest: subtract(exact, mark) } };
}
