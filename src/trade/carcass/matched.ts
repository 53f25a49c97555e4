import { equals, subtract } from '../../length/length';
import { toStored } from '../../length/stored';
import type { Tape } from '../../length/tape';
import type { Sum } from '../sums/sum';
import { type Part, type Shares, type Size, sizeAt } from './part';
import { type Sizes, setBy } from './sizes';

/** What is said of a part: which way its grain lies, and whether it shares a mark with unlike parts. */
export type Said = {
  readonly lies?: string | undefined;
  readonly alike?: Shares | undefined;
  readonly alikeWide?: Shares | undefined;
};

/** Parts that must agree, one size of each: what it is of, and what was said of it. */
type Member = { readonly size: Size; readonly of: string; readonly said: Shares | undefined };
type Groups = ReadonlyMap<string, readonly Member[]>;

/**
 * Parts that must agree: equal exact lengths of one opening share one mark, whatever each would be rounded to alone.
 * One that sets the opening gives it, to the nearest, and the others enter the opening it makes; without one, any that
 * must enter sends all down. Equal after rounding only is not equal. Equals of unlike stock or grain share it until it
 * is said that they do not; where that makes a difference their size says that it is to be asked.
 *
 * @param parts of one case; @param sizes it was worked out from, with the marks of what sets it
 * @param said of each part by its id
 * @returns the same parts, grooved boards with the mark of their length
 * @example matched(parts, sizes, '1/32') // bottom and full shelf 42 23/32 scant .0111: Example 15 of carcass
 */
export function matched(
  parts: readonly Part[],
  sizes: Sizes,
  tape: Tape,
  said: (part: string) => Said = () => ({}),
): readonly Part[] {
  const membersOf = (part: Part): readonly [Member, Member] => {
    const { lies = 'along', alike, alikeWide } = said(part.id);
    const of = `${part.stuff} ${lies}`;
    return [
      { size: part.length, of, said: alike },
      { size: part.width, of, said: alikeWide },
    ];
  };
  const groups = new Map<string, Member[]>();
  for (const member of parts.flatMap(membersOf)) {
    const key = keyOf(member.size);
    if (key !== undefined) groups.set(key, [...(groups.get(key) ?? []), member]);
  }
  return parts.map((part) => {
    const [length, width] = membersOf(part).map((own) => setAt(own.size, sizes) ?? agreed(own, groups, tape));
    if (!length || !width) return part;
    const board = part.board && { ...part.board, lengthMark: length.mark };
    return { ...part, length, width, ...(board ? { board } : {}) };
  });
}

/** A size at the mark of its equals: of all of them, or of those of its own stock and grain alone. */
function agreed(own: Member, groups: Groups, tape: Tape): Size {
  const all = groups.get(keyOf(own.size) ?? '') ?? [own];
  const lead = all.find(({ size }) => size.spans?.sets) ?? all[0];
  const unlike = ({ of }: Member) => of !== lead?.of;
  const apart = (one: Member) => unlike(one) && one.said === 'apart';
  const at = (group: readonly Member[]) => sizeAt(own.size.sum, tape, modeOf(group.map(({ size }) => size)));
  const alone = all.filter(({ of }) => of === own.of);
  const likes = all.filter((one) => !unlike(one));
  const size = { ...own.size, ...at(apart(own) ? alone : all.filter((one) => !apart(one))) };
  if (!unlike(own)) return size;
  const together = at(all).mark.value;
  const same = equals(together, at(alone).mark.value) && equals(together, at(likes).mark.value);
  return same ? size : { ...size, unlike: own.said ?? 'asked' };
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
