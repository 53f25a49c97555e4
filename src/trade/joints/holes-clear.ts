import {
  absolute,
  atMost,
  isPositive,
  type Length,
  less,
  shortest,
  subtract,
  zero,
} from '../../length/length';
import type { DowelRow } from '../boxes/dowel-rows';
import type { Part } from '../carcass/part';
import {
  around,
  atEnd,
  type CutWood,
  fromEnd,
  meet,
  type OtherCut,
  onFace,
  type Span,
  takenAlong,
  takenBy,
  takenIn,
} from '../carcass/taken';
import type { Face } from '../grooves/layout';
import type { Side } from '../setups/on';
import { clearMove } from './clear-move';
import { movedToward, otherEnd } from './edges';

/** What a hole may run into. */
export type HoleMeets = OtherCut | 'end-joint' | 'tongue' | 'mitre' | 'corner';

/**
 * A hole that runs into a cut of its part: the first, by its number, and what fits. So far moved it is clear of all
 * that is there, or less deep than that; nothing where neither helps.
 */
export type InCut = {
  readonly no: number;
  readonly cut: HoleMeets;
  readonly fits?:
    | { readonly toward: Side; readonly by: Length }
    | { readonly lessThan: Length; readonly by: Length };
};

type Wood = CutWood<HoleMeets>;

/** Holes along a part, all as far across it and as deep into a face. */
type Row = {
  readonly id: string;
  readonly face: Face;
  readonly deep: Length;
  readonly holes: readonly Span[];
  readonly across: Span;
};

/** Everything that a row must be clear of, itself left out: a lap is a joint all the way through. */
export function cutsBeside(part: Part, { id, deep }: Pick<Row, 'id' | 'deep'>): readonly Wood[] {
  const thick = part.thickness ?? deep;
  const through: Span = [zero, thick];
  const cut: readonly Wood[] = [...takenIn(part, thick), ...takenAlong(part, thick)];
  return [
    ...cut
      .filter((wood) => wood.id !== id)
      .map((wood) => (wood.cut === 'lap' ? { ...wood, taken: { ...wood.taken, into: through } } : wood)),
    ...atEnds(part).map(({ cut: kind, end, long }): Wood => {
      const taken = { along: atEnd(part, end, long), across: acrossAll(part), into: through };
      return { cut: kind, id: end, taken };
    }),
    ...cornerIn(part, thick),
    ...(part.dowels ?? []).flatMap((row) => dowelled(part, row, thick)),
    ...(part.fasteners ?? []).flatMap((row) =>
      takenBy(part, row, thick).map((taken): Wood => ({ cut: 'fastener', id: row.id, taken })),
    ),
  ];
}

const acrossAll = ({ width }: Part): Span => [zero, width.sum.value];

type AtEnd = { readonly cut: HoleMeets; readonly end: string; readonly long: Length };

/** What is cut at its ends all the way across: fingers and dovetails, tongues, mitres as far as they slope. */
function atEnds({ name, end, endCut, tongues = [], mitres = [], thickness }: Part): readonly AtEnd[] {
  const jointed = name.role === 'side' ? ['front'] : [end, otherEnd({ end })];
  return [
    ...(endCut ? jointed.map((at): AtEnd => ({ cut: 'end-joint', end: at, long: endCut.along })) : []),
    ...tongues.map(({ end: at, long }): AtEnd => ({ cut: 'tongue', end: at, long })),
    ...(thickness ? mitres.map((at): AtEnd => ({ cut: 'mitre', end: at, long: thickness })) : []),
  ];
}

/** The notch of an upright over a toe board: at its lower end, out of its front edge. */
const cornerIn = (part: Part, thick: Length): readonly Wood[] =>
  part.corner
    ? [
        {
          cut: 'corner',
          id: part.corner.id,
          taken: {
            along: atEnd(part, 'bottom', part.corner.high),
            across: [zero, part.corner.deep],
            into: [zero, thick],
          },
        },
      ]
    : [];

/** Holes for the dowels of a drawer: marked from its top edge, where its rows stand off the bottom one. */
function dowelled(part: Part, row: DowelRow, thick: Length): readonly Wood[] {
  const ends = row.both ? [part.end, otherEnd(part)] : [row.at];
  const into =
    row.in === 'face' ? onFace('A', row.deep, thick) : around(subtract(thick, row.from), row.thick);
  return ends.flatMap((end) =>
    row.marks.map((mark): Wood => {
      const along =
        row.in === 'face' ? around(fromEnd(part, end, row.from), row.thick) : atEnd(part, end, row.deep);
      const across = around(subtract(part.width.sum.value, mark), row.thick);
      return { cut: 'fastener', id: row.at, taken: { along, across, into } };
    }),
  );
}

/** The first hole that runs into one of the cuts, and what fits; nothing where all are clear. */
export function inCut(part: Part, row: Row, cuts: readonly Wood[]): InCut | undefined {
  const thick = part.thickness ?? row.deep;
  /** How far into the face of the row wood is left over a cut: none where it is cut in that face. */
  const over = ({ taken: { into } }: Wood): Length => (row.face === 'B' ? subtract(thick, into[1]) : into[0]);
  const near = cuts.filter((cut) => !isPositive(over(cut)) || atMost(over(cut), row.deep));
  const beside = near.filter(({ taken }) => meet(taken.across, row.across));
  for (const [k, hole] of row.holes.entries()) {
    const met = beside.find(({ taken }) => meet(taken.along, hole));
    if (met) return { no: k + 1, cut: met.cut, ...fitting(part, row, { near, beside, over }) };
  }
  return undefined;
}

type Among = {
  readonly near: readonly Wood[];
  readonly beside: readonly Wood[];
  readonly over: (cut: Wood) => Length;
};

/** The shortest way out: along the part, across it, or less deep. */
function fitting(part: Part, row: Row, { near, beside, over }: Among): Pick<InCut, 'fits'> {
  const along = clearMove(
    row.holes,
    beside.map(({ taken }) => taken.along),
    part.length.sum.value,
  );
  const level = (cut: Wood) => row.holes.some((hole) => meet(cut.taken.along, hole));
  const across = clearMove(
    [row.across],
    near.filter(level).map(({ taken }) => taken.across),
    part.width.sum.value,
  );
  const first = shortestOf(beside.filter(level).map(over));
  const ways: readonly NonNullable<InCut['fits']>[] = [
    ...(along ? [{ toward: movedToward(part, 'along', along), by: absolute(along) }] : []),
    ...(across ? [{ toward: movedToward(part, 'across', across), by: absolute(across) }] : []),
    ...(first && isPositive(first) ? [{ lessThan: first, by: subtract(row.deep, first) }] : []),
  ];
  const [one, ...more] = ways;
  return one ? { fits: more.reduce((best, way) => (less(way.by, best.by) ? way : best), one) } : {};
}

const shortestOf = ([one, ...more]: readonly Length[]): Length | undefined => one && shortest(one, ...more);
