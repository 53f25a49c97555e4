import {
  add,
  atMost,
  half,
  isPositive,
  type Length,
  longest,
  shortest,
  subtract,
  times,
  zero,
} from '../../length/length';
import type { Part } from '../carcass/part';
import { layOut } from '../grooves/lay-out';
import type { Bore } from '../shelves/bore';

/** A row of holes added by hand in a face of a part, off its front edge. Inches. */
export type HandHoles = Pick<Bore, 'id' | 'face' | 'off' | 'dia' | 'deep' | 'pitch'> & {
  /** The middle of the first from the reference end. */
  readonly first: Length;
  /** A whole number, 1 or more. */
  readonly count: number;
};

/**
 * Why a row is not bored: its holes run into each other; a hole runs off the part, by so much; or into a groove or a
 * hole that is there already, which it is clear of once it is moved by so much.
 */
export type HolesFault =
  | { readonly code: 'holes-meet'; readonly dia: Length }
  | { readonly code: 'hole-off'; readonly over: 'first' | 'last' | 'front' | 'back'; readonly by: Length }
  | { readonly code: 'hole-in-cut'; readonly no: number; readonly by: Length };

/** From where to where. */
type Span = readonly [Length, Length];

const round = (middle: Length, dia: Length): Span => [subtract(middle, half(dia)), add(middle, half(dia))];
/** How far one moves until it is clear of the other, at least; over 0 where they share anything. */
const clears = (a: Span, b: Span): Length => shortest(subtract(a[1], b[0]), subtract(b[1], a[0]));

const middles = ({ first, pitch, count }: HandHoles): readonly Length[] =>
  Array.from({ length: count }, (_, k) => add(first, times(pitch, BigInt(k))));

/**
 * Whether rows of holes are offered: its front edge is what they stand off, and their faces have names.
 *
 * @example takesHoles(side) // true; not the side of a drawer
 */
export const takesHoles = ({ name }: Pick<Part, 'name'>): boolean =>
  (['left', 'right', 'partition', 'bottom', 'top', 'board'] as const).some((role) => role === name.role);

/** What keeps a row from being bored, itself left out of what is there. */
export function holesFault(part: Part, row: HandHoles): HolesFault | undefined {
  const { first, off, pitch, dia, count } = row;
  if (count > 1 && atMost(pitch, dia)) return { code: 'holes-meet', dia };
  const [, far] = round(add(first, times(pitch, BigInt(count - 1))), dia);
  const overs = {
    first: subtract(half(dia), first),
    last: subtract(far, part.length.sum.value),
    front: subtract(half(dia), off),
    back: subtract(add(off, half(dia)), part.width.sum.value),
  };
  for (const over of ['first', 'last', 'front', 'back'] as const)
    if (isPositive(overs[over])) return { code: 'hole-off', over, by: overs[over] };
  return inCut(part, row);
}

/** The first hole that runs into a groove of its face or another hole. */
function inCut(part: Part, row: HandHoles): HolesFault | undefined {
  const { dia, off, face, id } = row;
  const grooves = part.board ? layOut(part.board).grooves.filter((groove) => groove.face === face) : [];
  const bores = (part.bores ?? []).filter((bore) => bore.id !== id && bore.face === face);
  const beside = bores.filter((bore) => isPositive(clears(round(bore.off, bore.dia), round(off, dia))));
  const cuts: readonly Span[] = [
    ...grooves.map(({ near, width }): Span => [near, add(near, width)]),
    ...beside.flatMap((bore) => bore.holes.map(({ at }) => round(at, bore.dia))),
  ];
  for (const [k, middle] of middles(row).entries()) {
    const by = cuts.reduce((most, cut) => longest(most, clears(cut, round(middle, dia))), zero);
    if (isPositive(by)) return { code: 'hole-in-cut', no: k + 1, by };
  }
  return undefined;
}

/** A part with the row among those it has, bored with what those are. */
export function withHoles(part: Part, row: HandHoles): Part {
  const { first: _, count: __, ...own } = row;
  const bores = part.bores ?? [];
  const bore: Bore = {
    ...own,
    inside: '',
    row: 'own',
    metric: false,
    holes: middles(row).map((at, k) => ({ no: k + 1, at })),
    leftOut: [],
    by: bores[0]?.by ?? 'template',
    ...(part.end === 'bottom' ? {} : { end: part.end }),
  };
  return { ...part, bores: [...bores, bore] };
}
