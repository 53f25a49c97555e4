import { add, isPositive, type Length, negate, subtract, zero } from '../../length/length';
import type { Board, Run } from '../grooves/board';
import { cutsFor, type Met, type Seat } from '../joints/joint';
import type { Case, Inside, StockRole } from './case';
import { type JointField, meetings, reachOf } from './meetings';
import { bayStart, type Sizes, stockOf } from './sizes';
import { numberOf } from './stands-as';
import { usualOf } from './usual';

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

type Blank = Pick<Board, 'id' | 'units' | 'part' | 'length' | 'thickness' | 'across' | 'end'>;

/** Grooves are laid out afresh from the case each time; only how they are cut is the board's own. */
const boardFrom = (blank: Blank, own: Partial<Board>, cutting: Cutting): Board => ({
  name: '',
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

/** A part let in across another, centred in its dado. */
const housed = (
  id: string,
  { thick, joints, case: c }: Sizes,
  seat: { readonly part: StockRole; readonly field: JointField } & Pick<Seat, 'face' | 'near' | 'no'>,
): Met => {
  const { part, field, ...at } = seat;
  return {
    joint: meetings[field].joint,
    seat: {
      id,
      ...at,
      called: part,
      fits: stockOf(c, part),
      thick: thick(part),
      room: joints.fit,
      depth: joints[field],
    },
  };
};

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

/** Shelves fixed in a bay, in the wall that says how deep. */
const shelves = (sizes: Sizes, bay: number, face: 'A' | 'B', field: JointField): readonly Met[] =>
  against(sizes, bay, 'fixed').map((i) =>
    housed(face === 'A' ? i.id : `${i.id}b`, sizes, {
      part: 'shelf',
      no: numberOf(sizes.case, i),
      field,
      face,
      near: i.at ?? zero,
    }),
  );

/** The bottom in a side: just under the datum, flush with the end of the side where the case stands on it. */
export function bottomIn(sizes: Sizes): Met {
  const { feet } = sizes.case;
  const near = negate(sizes.thick('bottom'));
  const { joint, seat } = housed('bottom', sizes, { part: 'bottom', field: 'dado', near });
  if (feet && isPositive(feet)) return { joint, seat };
  return { joint, seat: { ...seat, flush: { at: 'end', named: 'bottom' } } };
}

/** A side: the bottom's dado just under the datum, shelves and trays of the bay beside it above. */
export function sideBoard(
  sizes: Sizes,
  blank: Blank,
  cutting: Cutting & { readonly hand: 'left' | 'right' },
): Board {
  const { datum, case: c } = sizes;
  const bay = cutting.hand === 'left' ? 1 : c.partitions + 1;
  const runs = trayRuns(sizes, bay, 'A');
  const shared = c.partitions > 0 && runs.length > 0;
  return boardFrom(
    blank,
    {
      datum: datum.value,
      runs,
      wides: cutsFor([bottomIn(sizes), ...shelves(sizes, bay, 'A', 'dado')]).wides,
      ...(shared ? { mate: reachOf(sizes, 'partitionDado') } : {}),
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
  const seats = [...shelves(sizes, k, 'A', 'partitionDado'), ...shelves(sizes, k + 1, 'B', 'partitionDado')];
  return boardFrom(
    at.blank,
    {
      made: 'partition',
      datum: reachOf(sizes, 'partitionDado'),
      runs: [...trayRuns(sizes, k, 'A'), ...trayRuns(sizes, k + 1, 'B')],
      wides: cutsFor(seats).wides,
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
  const beyond = reachOf(sizes, which === 'bottom' ? 'dado' : 'topRabbet');
  const seats = Array.from({ length: sizes.case.partitions }, (_, k) =>
    housed(`p${k + 1}`, sizes, {
      part: 'partition',
      field: 'partitionDado',
      near: add(beyond, partitionFace(sizes, k + 1)),
    }),
  );
  return boardFrom(at.blank, { wides: cutsFor(seats).wides }, at.cutting);
}

/**
 * Near face of a partition from the inner face of the left side, inches.
 * @example partitionFace(sizes, 1) // 18 7/64: Example 2 of carcass
 */
export const partitionFace = (sizes: Sizes, k: number): Length =>
  subtract(bayStart(sizes, k + 1), sizes.thick('partition'));

/** The slack of a run of trays, usual where none is said. Inches. */
export const slackOf = (c: Case, i: Inside): Length => i.slack ?? usualOf(c).slack;
