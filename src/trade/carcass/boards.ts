import { add, isPositive, type Length, negate, subtract, zero } from '../../length/length';
import type { Board, Run } from '../grooves/board';
import { cutsFor, type Met, type Seat } from '../joints/joint';
import type { Case, Inside, StockRole } from './case';
import { sideDatum } from './ends';
import { endAt, type Hand, jointAt, type Meeting, meetingAt, pastTop, reachOf } from './meetings';
import type { Line } from './part';
import { bayStart, type Sizes, stockOf } from './sizes';
import { numberOf } from './stands-as';
import { hugsAt } from './tongues';
import { usualOf } from './usual';

/** How a part's grooves are cut, where that is not the usual way: the fields of a board that say so. */
export type Cutting = Partial<
  Pick<Board, 'machine' | 'by' | 'against' | 'stopSide' | 'grows' | 'guide' | 'cutter' | 'end' | 'recuts'>
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
export const boardFrom = (blank: Blank, own: Partial<Board>, cutting: Cutting): Board => ({
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
  seat: { readonly part: StockRole; readonly meeting: Meeting } & Pick<Seat, 'face' | 'near' | 'no'>,
): Met => {
  const { part, meeting, ...at } = seat;
  const { joint, depth } = meetingAt(c, meeting);
  return {
    joint,
    seat: {
      id,
      ...at,
      called: part,
      fits: stockOf(c, part),
      thick: thick(part),
      room: joints.fit,
      depth: joints[depth],
      ...(jointAt(c, meeting) === 'tongue'
        ? { tongue: { thick: joints.tongue, hugs: hugsAt(c, meeting) } }
        : {}),
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
const shelves = (sizes: Sizes, bay: number, face: 'A' | 'B', meeting: Meeting): readonly Met[] =>
  against(sizes, bay, 'fixed').map((i) =>
    housed(face === 'A' ? i.id : `${i.id}b`, sizes, {
      part: 'shelf',
      no: numberOf(sizes.case, i),
      meeting,
      face,
      near: i.at ?? zero,
    }),
  );

/** The bottom in a side: just under the datum, flush with the end of the side where the case stands on it. */
export function bottomIn(sizes: Sizes, hand: Hand): Met {
  const { feet } = sizes.case;
  const near = negate(sizes.thick('bottom'));
  const { joint, seat } = housed('bottom', sizes, {
    part: 'bottom',
    meeting: endAt('bottom', hand),
    near,
  });
  if ((feet && isPositive(feet)) || seat.tongue) return { joint, seat };
  return { joint, seat: { ...seat, room: zero, flush: { at: 'end', named: 'bottom' } } };
}

/** The top in a side: the clear height over the datum, flush with the end where the side does not run past it. */
export function topIn(sizes: Sizes, hand: Hand): readonly Met[] {
  const { case: c, clearHeight } = sizes;
  if (!c.hasTop) return [];
  const meeting = endAt('top', hand);
  const { joint, seat } = housed('top', sizes, { part: 'top', meeting, near: clearHeight.value });
  if (isPositive(pastTop(c)) || seat.tongue) return [{ joint, seat }];
  return [{ joint, seat: { ...seat, room: zero, flush: { at: 'end', named: 'top' } } }];
}

/** A side: the bottom's dado just under the datum, shelves and trays of the bay beside it above. */
export function sideBoard(sizes: Sizes, blank: Blank, cutting: Cutting & { readonly hand: Hand }): Board {
  const { case: c } = sizes;
  const bay = bayBeside(c, cutting.hand);
  const runs = trayRuns(sizes, bay, 'A');
  const shared = c.partitions > 0 && runs.length > 0;
  return boardFrom(
    blank,
    {
      datum: sideDatum(sizes),
      runs,
      wides: cutsFor([
        bottomIn(sizes, cutting.hand),
        ...topIn(sizes, cutting.hand),
        ...shelves(sizes, bay, 'A', 'shelf'),
      ]).wides,
      ...(shared ? { mate: reachOf(sizes, 'partition') } : {}),
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
  return boardFrom(
    at.blank,
    {
      made: 'partition',
      datum: reachOf(sizes, 'partition'),
      runs: [...trayRuns(sizes, k, 'A'), ...trayRuns(sizes, k + 1, 'B')],
      wides: cutsFor(inPartition(sizes, k)).wides,
    },
    at.cutting,
  );
}

/** The shelves on both faces of a partition. */
const inPartition = (sizes: Sizes, k: number): readonly Met[] => [
  ...shelves(sizes, k, 'A', 'inPartition'),
  ...shelves(sizes, k + 1, 'B', 'inPartition'),
];

/** What stands on a partition with nothing cut for it, from the partition's own lower end. */
export const partitionLines = (sizes: Sizes, k: number): readonly Line[] =>
  linesFrom(reachOf(sizes, 'partition'), inPartition(sizes, k));

/** What stands on a side with nothing cut for it, from the side's own lower end. */
export const sideLines = (sizes: Sizes, hand: Hand): readonly Line[] =>
  linesFrom(sideDatum(sizes), [
    bottomIn(sizes, hand),
    ...topIn(sizes, hand),
    ...shelves(sizes, bayBeside(sizes.case, hand), 'A', 'shelf'),
  ]);

const linesFrom = (datum: Length, met: readonly Met[]): readonly Line[] =>
  cutsFor(met).lines.map((line) => ({ ...line, near: add(line.near, datum) }));

const bayBeside = ({ partitions }: Case, hand: Hand): number => (hand === 'left' ? 1 : partitions + 1);

/** Bottom or top: a dado for each partition, from the panel's own left end. */
export function flatBoard(
  sizes: Sizes,
  which: 'bottom' | 'top',
  at: { readonly blank: Blank; readonly cutting: Cutting },
): Board {
  return boardFrom(at.blank, { wides: cutsFor(partitionsIn(sizes, which)).wides }, at.cutting);
}

/** The partitions on bottom or top, from its own left end. */
export const partitionsIn = (sizes: Sizes, which: 'bottom' | 'top'): readonly Met[] =>
  Array.from({ length: sizes.case.partitions }, (_, k) =>
    housed(`p${k + 1}`, sizes, {
      part: 'partition',
      meeting: 'partition',
      near: add(reachOf(sizes, which), partitionFace(sizes, k + 1)),
    }),
  );

/**
 * Near face of a partition from the inner face of the left side, inches.
 * @example partitionFace(sizes, 1) // 18 7/64: Example 2 of carcass
 */
export const partitionFace = (sizes: Sizes, k: number): Length =>
  subtract(bayStart(sizes, k + 1), sizes.thick('partition'));

/** The slack of a run of trays, usual where none is said. Inches. */
export const slackOf = (c: Case, i: Inside): Length => i.slack ?? usualOf(c).slack;
