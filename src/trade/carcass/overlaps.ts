import {
  add,
  isNegative,
  isPositive,
  type Length,
  less,
  longest,
  shortest,
  subtract,
} from '../../length/length';
import type { Inside } from './case';
import { frameOf } from './frame';
import type { CaseProblem } from './problems';
import type { Sizes } from './sizes';
import { stopWide } from './stops';
import { usualOf } from './usual';

/** How high what stands across a bay is itself: a shelf its thickness, a rail or a stop strip its width. Inches. */
export function acrossOf(sizes: Sizes, i: Inside): Length {
  if (i.kind === 'stop') return stopWide(sizes.case, i);
  return i.kind === 'rail' ? (i.wide ?? usualOf(sizes.case).rail) : sizes.thick('shelf');
}

/** Whether two things of a bay take the same room: a stop strip stands where a fixed shelf would. */
const meets = (one: Inside, other: Inside): boolean =>
  one.kind === other.kind || [one, other].every(({ kind }) => kind === 'stop' || kind === 'fixed');

/**
 * Shelves and stop strips of a bay that stand in each other, and rails: each named by the one said last.
 *
 * @returns by how much, and where its lower face would clear the other, inches
 */
export function overlaps(sizes: Sizes): readonly CaseProblem[] {
  const { inside } = sizes.case;
  return inside.flatMap((own, k) =>
    inside
      .slice(0, k)
      .filter((other) => meets(own, other) && other.bay === own.bay)
      .flatMap((other) => overlap(sizes, own, other)),
  );
}

function overlap(sizes: Sizes, own: Inside, other: Inside): readonly CaseProblem[] {
  if (own.at === undefined || other.at === undefined) return [];
  const [high, otherHigh] = [acrossOf(sizes, own), acrossOf(sizes, other)];
  const [top, otherTop] = [add(own.at, high), add(other.at, otherHigh)];
  const by = subtract(shortest(top, otherTop), longest(own.at, other.at));
  if (!isPositive(by)) return [];
  const under = subtract(other.at, high);
  const room = own.kind === 'rail' ? frameOf(sizes).middles.value : sizes.clearHeight.value;
  return [
    {
      code: 'overlap',
      in: own.id,
      with: other.id,
      by,
      ...(isNegative(under) ? {} : { under }),
      ...(less(room, add(otherTop, high)) ? {} : { over: otherTop }),
    },
  ];
}
