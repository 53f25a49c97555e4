import {
  add,
  atMost,
  equals,
  half,
  howMany,
  isPositive,
  isZero,
  type Length,
  subtract,
  times,
  zero,
} from '../../length/length';
import { wholePart } from '../../length/round';
import type { Part } from '../carcass/part';
import { around, type Span } from '../carcass/taken';
import type { Bore } from '../shelves/bore';
import { rowEdgeOf } from './edges';
import { cutsBeside, type InCut, inCut } from './holes-clear';

/** A row of holes added by hand in a face of a part, off the edge its rows stand off (`rowEdgeOf`). Inches. */
export type HandHoles = Pick<Bore, 'id' | 'face' | 'off' | 'dia' | 'deep' | 'pitch'> & {
  /** The middle of the first from the reference end. */
  readonly first: Length;
  /** A whole number, 1 or more. */
  readonly count: number;
};

/**
 * Why a row is not bored: its holes run into each other; a hole runs off the part, by so much, `near` and `far` over
 * the edge it stands off and the other; or one runs into a cut that is there already.
 */
export type HolesFault =
  | { readonly code: 'holes-meet'; readonly dia: Length }
  | {
      readonly code: 'hole-off';
      readonly over: 'first' | 'last' | 'near' | 'far';
      readonly by: Length;
      readonly fits: OnPart;
    }
  | ({ readonly code: 'hole-in-cut' } & InCut);

/**
 * What of a row stays on its part: all of it, moved in; so many holes, with the first where it is or moved in to the
 * end; or holes so wide at most.
 */
type OnPart =
  | 'moved'
  | { readonly holes: number; readonly first: 'there' | 'moved' }
  | { readonly wide: Length };

const middles = ({ first, pitch, count }: HandHoles): readonly Length[] =>
  Array.from({ length: count }, (_, k) => add(first, times(pitch, BigInt(k))));

/** What keeps a row from being bored, itself left out of what is there. */
export function holesFault(part: Part, row: HandHoles): HolesFault | undefined {
  const { first, off, pitch, dia, count } = row;
  if (count > 1 && atMost(pitch, dia)) return { code: 'holes-meet', dia };
  const [, last] = around(add(first, times(pitch, BigInt(count - 1))), dia);
  const overs = {
    first: subtract(half(dia), first),
    last: subtract(last, part.length.sum.value),
    near: subtract(half(dia), off),
    // a board laid out by hand may have no width yet
    far: isZero(part.width.sum.value) ? zero : subtract(add(off, half(dia)), part.width.sum.value),
  };
  for (const over of ['first', 'last', 'near', 'far'] as const)
    if (isPositive(overs[over]))
      return { code: 'hole-off', over, by: overs[over], fits: onPart(part, row, over) };
  const holes: readonly Span[] = middles(row).map((middle) => around(middle, dia));
  const found = inCut(part, { ...row, holes, across: around(off, dia) }, cutsBeside(part, row));
  return found && { code: 'hole-in-cut', ...found };
}

function onPart(part: Part, row: HandHoles, over: 'first' | 'last' | 'near' | 'far'): OnPart {
  const { first, pitch, dia, count } = row;
  const along = over === 'first' || over === 'last';
  const has = (along ? part.length : part.width).sum.value;
  if (!atMost(dia, has)) return { wide: has };
  const long = along ? add(times(pitch, BigInt(count - 1)), dia) : dia;
  if (atMost(long, has)) return 'moved';
  const before = subtract(first, half(dia));
  const holesFrom = (edge: Length) =>
    Number(wholePart(howMany(subtract(subtract(has, dia), edge), pitch))) + 1;
  const there = over === 'last' ? holesFrom(before) : 0;
  return there > 0 ? { holes: there, first: 'there' } : { holes: holesFrom(zero), first: 'moved' };
}

/**
 * A part with the row among those it has, bored with what those are.
 *
 * @param others rows of other parts: of a part without any it is bored with what one as wide is, else any of them
 */
export function withHoles(part: Part, row: HandHoles, others: readonly Bore[] = []): Part {
  const { first: _, count: __, ...own } = row;
  const bores = part.bores ?? [];
  const like = bores[0] ?? others.find(({ dia }) => equals(dia, row.dia)) ?? others[0];
  const edge = rowEdgeOf(part);
  const bore: Bore = {
    ...own,
    inside: '',
    row: 'own',
    metric: false,
    holes: middles(row).map((at, k) => ({ no: k + 1, at })),
    leftOut: [],
    by: like?.by ?? 'template',
    ...(part.end === 'bottom' ? {} : { end: part.end }),
    ...(edge === 'front' ? {} : { edge }),
  };
  return { ...part, bores: [...bores, bore] };
}
