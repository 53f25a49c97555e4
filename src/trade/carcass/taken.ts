import { add, half, type Length, less, subtract, zero } from '../../length/length';
import type { FastenerRow, ReferenceFace } from '../fasteners/row';
import { layOut } from '../grooves/lay-out';
import type { Face } from '../grooves/layout';
import { rowEdgeOf } from '../joints/edges';
import type { Side } from '../setups/on';
import type { Part } from './part';

export type Span = readonly [from: Length, to: Length];

/**
 * Wood that is taken out of a part: along it from its reference end, across it from the edge its rows stand off
 * (`rowEdgeOf`), and into it from its inner face, of a partition from its left one. Inches.
 */
export type Taken = { readonly along: Span; readonly across: Span; readonly into: Span };

/** What else takes wood out of a part. */
export type OtherCut = 'groove' | 'rabbet' | 'notch' | 'lap' | 'pin-hole' | 'fastener';

/** One cut of a part, by its id there. */
export type CutWood<Kind = OtherCut> = { readonly cut: Kind; readonly id: string; readonly taken: Taken };

/** So wide round a middle. */
export const around = (middle: Length, wide: Length): Span => [
  subtract(middle, half(wide)),
  add(middle, half(wide)),
];
/** Whether they share anything; what only touches does not. */
export const meet = ([a, b]: Span, [c, d]: Span): boolean => less(a, d) && less(c, b);

const span = (from: Length, long: Length): Span => [from, add(from, long)];

/** Faces that the grooves of a part are not cut in: they are reckoned from the other one. */
const far: readonly ReferenceFace[] = ['outside', 'under', 'upper'];

/** The wood a row takes that holds a butted joint. */
export function takenBy(part: Part, row: FastenerRow, thick: Length): readonly Taken[] {
  const { in: where, thick: dia, long = dia, deep, from, marks, slant } = row;
  const across = marks.map((mark) => around(mark, long));
  if (where.at === 'face') {
    const along = around(fromEnd(part, where.off, from), dia);
    return across.map((one) => ({ along, across: one, into: onFace(where.face, deep, thick) }));
  }
  const [near, deeper] = around(from, dia);
  // a slanted hole lies between its face and the middle of the end
  const off: Span = [slant ? zero : near, deeper];
  const into: Span = far.includes(where.off) ? [subtract(thick, off[1]), subtract(thick, off[0])] : off;
  return where.named.flatMap((end) =>
    across.map((one) => ({ along: atEnd(part, end, deep), across: one, into })),
  );
}

export const fromEnd = ({ end, length }: Part, off: string, x: Length): Length =>
  off === end ? x : subtract(length.sum.value, x);

/** So far in from an end. */
export const atEnd = (part: Part, named: string, deep: Length): Span =>
  named === part.end ? [zero, deep] : [fromEnd(part, named, deep), part.length.sum.value];

export const onFace = (face: Face | undefined, deep: Length, thick: Length): Span =>
  face === 'B' ? [subtract(thick, deep), thick] : [zero, deep];

/** From a long edge, so far off it and so wide: across the part as its rows are reckoned. */
function offEdge(part: Part, named: string, [from, to]: Span): Span {
  const wide = part.width.sum.value;
  return named === rowEdgeOf(part) ? [from, to] : [subtract(wide, to), subtract(wide, from)];
}

/** Everything cut across a part or in its face, and rabbets: all but the grooves along its edges. */
export function takenIn(part: Part, thick: Length): readonly CutWood[] {
  const wide = part.width.sum.value;
  const whole: Span = [zero, wide];
  const grooves = part.board ? layOut(part.board).grooves : [];
  const along = (part.along ?? []).filter(({ edge }) => edge.at === 'end');
  return [
    ...grooves.map(({ id, near, width, depth = zero, face, stopped = zero }): CutWood => {
      const taken = { along: span(near, width), across: [stopped, wide] as const };
      return { cut: 'groove', id, taken: { ...taken, into: onFace(face, depth, thick) } };
    }),
    ...along.map(({ id, edge, near, width, depth }): CutWood => {
      const [a, b] = [fromEnd(part, edge.named, near), fromEnd(part, edge.named, add(near, width))];
      const taken = { along: edge.named === part.end ? ([a, b] as const) : ([b, a] as const), across: whole };
      return { cut: 'groove', id, taken: { ...taken, into: [zero, depth] } };
    }),
    ...part.rabbets.map((rabbet): CutWood => {
      const taken = { ...besideSide(part, rabbet.along, rabbet), into: [zero, rabbet.depth] as const };
      return { cut: 'rabbet', id: rabbet.id, taken };
    }),
    ...shouldered(part, thick),
    ...(part.bores ?? []).flatMap(({ id, holes, off, dia, deep, face }) =>
      holes.map(({ at }): CutWood => {
        const taken = { along: around(at, dia), across: around(off, dia), into: onFace(face, deep, thick) };
        return { cut: 'pin-hole', id, taken };
      }),
    ),
  ];
}

/** Notches in the back edge, or the first of `edgesOf`, and laps. */
function shouldered(part: Part, thick: Length): readonly CutWood[] {
  const wide = part.width.sum.value;
  const fromFront = rowEdgeOf(part) === 'front';
  return [
    ...part.notches.map(({ id, near, long, deep }): CutWood => {
      const across: Span = fromFront ? [subtract(wide, deep), wide] : [zero, deep];
      return { cut: 'notch', id, taken: { along: span(near, long), across, into: [zero, thick] } };
    }),
    ...part.laps.map(({ id, near, long, deep }): CutWood => {
      return { cut: 'lap', id, taken: { along: span(near, long), across: [zero, wide], into: [zero, deep] } };
    }),
  ];
}

/** The grooves along the edges of a part, of either face. */
export const takenAlong = (part: Part, thick: Length): readonly CutWood[] =>
  (part.along ?? [])
    .filter(({ edge }) => edge.at === 'edge')
    .map(({ id, edge, near, width, depth, face, outside, from, to }) => ({
      cut: 'groove',
      id,
      taken: {
        along: [from ?? zero, to ?? part.length.sum.value],
        across: offEdge(part, edge.named, span(near, width)),
        into: onFace(outside ? 'B' : face, depth, thick),
      },
    }));

type Ends = { readonly width: Length; readonly from?: Length | undefined; readonly to?: Length | undefined };

/** So wide beside an end, or beside an edge from where it begins to where it stops. */
function besideSide(part: Part, { at, named }: Side, { width, from, to }: Ends): Omit<Taken, 'into'> {
  const { value: long } = part.length.sum;
  if (at === 'end') return { along: atEnd(part, named, width), across: [zero, part.width.sum.value] };
  return { along: [from ?? zero, to ?? long], across: offEdge(part, named, [zero, width]) };
}
