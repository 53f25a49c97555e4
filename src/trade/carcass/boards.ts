import { add, half, isPositive, type Length, negate, subtract, sum, zero } from '../../length/length';
import type { Board, Run, Wide } from '../grooves/board';
import type { Case, Inside, Stock } from './case';
import { bayStart, type Sizes, stockOf, topSeat } from './sizes';
import { usual } from './usual';

/** How a part's grooves are cut, where that is not the usual way: the fields of a board that say so. */
export type Cutting = Partial<
  Pick<Board, 'machine' | 'against' | 'stopSide' | 'grows' | 'guide' | 'cutter' | 'end' | 'recuts'>
>;

const usualCutting = {
  machine: 'stop',
  against: 'reference',
  stopSide: 'left',
  grows: 'away',
  guide: 'reference',
} as const;

type Blank = Pick<Board, 'id' | 'name' | 'length' | 'thickness' | 'across' | 'end'>;

/** Grooves are laid out afresh from the case each time; only how they are cut is the board's own. */
const boardFrom = (blank: Blank, own: Partial<Board>, cutting: Cutting): Board => ({
  made: 'alike',
  copies: 1,
  mateName: 'partition',
  runs: [],
  wides: [],
  ...usualCutting,
  ...blank,
  ...own,
  ...cutting,
});

/** The dado for a part of this thickness: near edge of the groove from that of the part, inches. */
const dadoNear = (partNear: Length, part: Length, width: Length): Length =>
  subtract(partNear, half(subtract(width, part)));

const dadoWidth = ({ joints }: Sizes, part: Length): Length => add(part, joints.fit);

function dado(id: string, sizes: Sizes, cut: Omit<Wide, 'id' | 'width'> & { readonly part: Stock }): Wide {
  const { part, near = zero, ...rest } = cut;
  const thickness = sizes.thick(part);
  const width = dadoWidth(sizes, thickness);
  return {
    id,
    ...rest,
    width,
    near: dadoNear(near, thickness, width),
    fits: stockOf(sizes.case, part),
    called: part,
  };
}

/** What stands against a wall: the bay on one side of it. */
const against = (sizes: Sizes, bay: number, kind: Inside['kind']): readonly Inside[] =>
  sizes.case.inside.filter((i) => i.bay === bay && i.kind === kind);

/** Tray grooves of a bay as a run on one face: laid out from the case bottom, over the clear height. */
function trayRuns(sizes: Sizes, bay: number, face: 'A' | 'B'): readonly Run[] {
  return against(sizes, bay, 'trays').map((i) => ({
    id: face === 'A' ? i.id : `${i.id}b`,
    spacing: i.count === undefined ? 'fill' : 'pitch',
    face,
    point: 'near',
    centred: false,
    at: [],
    count: i.count,
    first: i.first,
    pitch: i.pitch,
    endRoom: i.endRoom,
    width: i.width,
    depth: i.depth,
    span: sizes.clearHeight.value,
    part: sizes.thick('tray'),
  }));
}

function shelfDadoes(
  sizes: Sizes,
  bay: number,
  cut: { readonly face: 'A' | 'B'; readonly depth: Length },
): readonly Wide[] {
  return against(sizes, bay, 'fixed').map((i) =>
    dado(cut.face === 'A' ? i.id : `${i.id}b`, sizes, {
      face: cut.face,
      depth: cut.depth,
      near: i.at ?? zero,
      part: 'shelf',
    }),
  );
}

/** A bottom flush with the ends of the sides lies in a rabbet: a dado there would have no wood under it. */
export const standsOnFloor = (c: Case): boolean => !c.feet || !isPositive(c.feet);

/** A side: the bottom's dado just under the datum, shelves and trays of the bay beside it above. */
export function sideBoard(
  sizes: Sizes,
  blank: Blank,
  cutting: Cutting & { readonly hand: 'left' | 'right' },
): Board {
  const { joints, thick, datum, case: c } = sizes;
  const bay = cutting.hand === 'left' ? 1 : c.partitions + 1;
  const bottom = dado('bottom', sizes, {
    face: 'A',
    depth: joints.dado,
    near: negate(thick('bottom')),
    part: 'bottom',
  });
  const runs = trayRuns(sizes, bay, 'A');
  const shared = c.partitions > 0 && runs.length > 0;
  return boardFrom(
    blank,
    {
      datum: datum.value,
      runs,
      wides: [
        ...(standsOnFloor(c) ? [] : [bottom]),
        ...shelfDadoes(sizes, bay, { face: 'A', depth: joints.dado }),
      ],
      ...(shared ? { mate: joints.partitionDado } : {}),
    },
    cutting,
  );
}

/** A partition, its left face A: housed into the bottom, so its own end is that much below the datum. */
export function partitionBoard(
  sizes: Sizes,
  k: number,
  at: { readonly blank: Blank; readonly cutting: Cutting },
): Board {
  const { joints } = sizes;
  const depth = joints.partitionDado;
  return boardFrom(
    at.blank,
    {
      made: 'partition',
      datum: depth,
      runs: [...trayRuns(sizes, k, 'A'), ...trayRuns(sizes, k + 1, 'B')],
      wides: [
        ...shelfDadoes(sizes, k, { face: 'A', depth }),
        ...shelfDadoes(sizes, k + 1, { face: 'B', depth }),
      ],
    },
    at.cutting,
  );
}

/** Bottom or top: a dado for each partition, from the panel's own left end. */
export function flatBoard(
  sizes: Sizes,
  which: 'bottom' | 'top',
  at: { readonly blank: Blank; readonly cutting: Cutting },
): Board {
  const { joints, case: c } = sizes;
  const beyond = which === 'bottom' ? joints.dado : joints.topRabbet;
  const wides = Array.from({ length: c.partitions }, (_, k) =>
    dado(`p${k + 1}`, sizes, {
      face: 'A',
      depth: joints.partitionDado,
      near: sum([beyond, partitionFace(sizes, k + 1)]),
      part: 'partition',
    }),
  );
  return boardFrom(at.blank, { wides }, at.cutting);
}

/**
 * Near face of a partition from the inner face of the left side, inches.
 * @example partitionFace(sizes, 1) // 18 7/64: Example 2 of carcass
 */
export const partitionFace = (sizes: Sizes, k: number): Length =>
  subtract(bayStart(sizes, k + 1), sizes.thick('partition'));

/**
 * Panel ends of the top stand this far outside the clear width.
 * @example topBeyond(sizes) // the depth of its rabbet
 */
export const topBeyond = (sizes: Sizes): Length => subtract(sizes.thick('side'), topSeat(sizes));

/** The slack of a run of trays, usual where none is said. Inches. */
export const slackOf = (i: Inside): Length => i.slack ?? usual.slack;
