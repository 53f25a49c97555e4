import { add, half, isPositive, type Length, shortest, subtract, zero } from '../../length/length';
import type { FastenerRow, ReferenceFace } from '../fasteners/row';
import { layOut } from '../grooves/lay-out';
import type { Face } from '../grooves/layout';
import type { Side } from '../setups/on';
import type { Part } from './part';

type Span = readonly [from: Length, to: Length];

/**
 * Wood that is taken out of a part: along it from its reference end, across it from its front edge, and into it from
 * its inner face, of a partition from its left one. Inches.
 */
type Taken = { readonly along: Span; readonly across: Span; readonly into: Span };

/** What else takes wood out of a part. */
export type OtherCut = 'groove' | 'rabbet' | 'notch' | 'lap' | 'pin-hole' | 'fastener';

/**
 * A row comes into another cut of its part: so much less deep, or moved so far along the part or along the joint, it
 * clears it. Inches, > 0.
 */
export type Clash = { readonly cut: OtherCut; readonly way: keyof Taken; readonly by: Length };

/**
 * What the rows of a part come into: whatever else is cut in it, and rows that hold another joint. A round hole is
 * taken as the square round it. Grooves along its edges are told apart, by the run of the joint.
 *
 * @param part with its cuts; @param rows that are to be cut in it; @param others rows that are cut already
 * @example clashesOf(side, [row], [])[0]?.by // by how much the first of them comes into a dado
 */
export function clashesOf(
  part: Part,
  rows: readonly FastenerRow[],
  others: readonly FastenerRow[],
): readonly Clash[] {
  const { thickness } = part;
  if (!thickness || rows.length === 0) return [];
  const own = rows.flatMap((row) => takenBy(part, row, thickness));
  return [
    ...cutsIn(part, thickness),
    ...others.flatMap((row) => takenBy(part, row, thickness).map((taken) => ['fastener', taken] as const)),
  ].flatMap(([cut, other]) => own.flatMap((taken) => clashOf(cut, taken, other) ?? []));
}

/** How far one must move to clear the other, the way that is shortest; nothing where they are clear. */
function clashOf(cut: OtherCut, a: Taken, b: Taken): Clash | undefined {
  const ways = (['along', 'across', 'into'] as const).map((way) => ({
    cut,
    way,
    by: clears(a[way], b[way]),
  }));
  if (!ways.every(({ by }) => isPositive(by))) return undefined;
  return ways.reduce((best, way) => (way.by.compare(best.by) < 0 ? way : best));
}

const clears = ([a, b]: Span, [c, d]: Span): Length => shortest(subtract(b, c), subtract(d, a));

/** Faces that the grooves of a part are not cut in: they are reckoned from the other one. */
const far: readonly ReferenceFace[] = ['outside', 'under', 'upper'];

function takenBy(part: Part, row: FastenerRow, thick: Length): readonly Taken[] {
  const { in: where, thick: dia, long = dia, deep, from, marks, slant } = row;
  const round = (middle: Length, wide: Length): Span => [
    subtract(middle, half(wide)),
    add(middle, half(wide)),
  ];
  const across = marks.map((mark) => round(mark, long));
  if (where.at === 'face') {
    const along = round(fromEnd(part, where.off, from), dia);
    return across.map((one) => ({ along, across: one, into: onFace(where.face, deep, thick) }));
  }
  const [near, deeper] = round(from, dia);
  // a slanted hole lies between its face and the middle of the end
  const off: Span = [slant ? zero : near, deeper];
  const into: Span = far.includes(where.off) ? [subtract(thick, off[1]), subtract(thick, off[0])] : off;
  return where.named.flatMap((end) =>
    across.map((one) => ({ along: atEnd(part, end, deep), across: one, into })),
  );
}

const fromEnd = ({ end, length }: Part, off: string, x: Length): Length =>
  off === end ? x : subtract(length.sum.value, x);

const atEnd = (part: Part, named: string, deep: Length): Span =>
  named === part.end ? [zero, deep] : [fromEnd(part, named, deep), part.length.sum.value];

const onFace = (face: Face | undefined, deep: Length, thick: Length): Span =>
  face === 'B' ? [subtract(thick, deep), thick] : [zero, deep];

type Other = readonly [cut: OtherCut, taken: Taken];

/** Everything cut in a part but the grooves along its edges. */
function cutsIn(part: Part, thick: Length): readonly Other[] {
  const wide = part.width.sum.value;
  const whole: Span = [zero, wide];
  const grooves = part.board ? layOut(part.board).grooves : [];
  const along = (part.along ?? []).filter(({ edge }) => edge.at === 'end');
  const span = (from: Length, long: Length): Span => [from, add(from, long)];
  return [
    ...grooves.map(({ near, width, depth = zero, face, stopped = zero }): Other => {
      return [
        'groove',
        { along: span(near, width), across: [stopped, wide], into: onFace(face, depth, thick) },
      ];
    }),
    ...along.map(({ edge, near, width, depth }): Other => {
      const [a, b] = [fromEnd(part, edge.named, near), fromEnd(part, edge.named, add(near, width))];
      return [
        'groove',
        { along: edge.named === part.end ? [a, b] : [b, a], across: whole, into: [zero, depth] },
      ];
    }),
    ...part.rabbets.map((rabbet): Other => {
      return ['rabbet', { ...besideSide(part, rabbet.along, rabbet), into: [zero, rabbet.depth] }];
    }),
    ...part.notches.map(({ near, long, deep }): Other => {
      return [
        'notch',
        { along: span(near, long), across: [subtract(wide, deep), wide], into: [zero, thick] },
      ];
    }),
    ...part.laps.map(({ near, long, deep }): Other => {
      return ['lap', { along: span(near, long), across: whole, into: [zero, deep] }];
    }),
    ...(part.bores ?? []).flatMap(({ holes, off, dia, deep, face }) =>
      holes.map(({ at }): Other => {
        const round = (x: Length) => span(subtract(x, half(dia)), dia);
        return ['pin-hole', { along: round(at), across: round(off), into: onFace(face, deep, thick) }];
      }),
    ),
  ];
}

type Ends = { readonly width: Length; readonly from?: Length | undefined; readonly to?: Length | undefined };

/** So wide beside an end, or beside an edge from where it begins to where it stops. */
function besideSide(part: Part, { at, named }: Side, { width, from, to }: Ends): Omit<Taken, 'into'> {
  const [long, wide] = [part.length.sum.value, part.width.sum.value];
  if (at === 'end') return { along: atEnd(part, named, width), across: [zero, wide] };
  const across: Span = named === 'front' ? [zero, width] : [subtract(wide, width), wide];
  return { along: [from ?? zero, to ?? long], across };
}
