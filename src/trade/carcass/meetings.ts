import { keeper } from '../../length/keeper';
import { isZero, type Length, zero } from '../../length/length';
import type { Joint } from '../joints/joint';
import { butt, dado, groove, mitre, over, rabbet, tongue } from '../joints/joints';
import { backHow } from './back-how';
import type { Case, CaseJoint, StockRole } from './case';
import type { Joints } from './usual';

/** Fields of a case that say how deep one part goes into another. */
export type JointField =
  | 'dado'
  | 'partitionDado'
  | 'bottomRabbet'
  | 'topRabbet'
  | 'backDeep'
  | 'backGroove'
  | 'cleatRabbet';

/**
 * Where parts of a case meet: the ends of what goes in, of bottom and top each its own; a shelf in a side, or in a
 * partition.
 */
export type Meeting =
  | 'bottom'
  | 'bottomRight'
  | 'top'
  | 'topRight'
  | 'partition'
  | 'shelf'
  | 'inPartition'
  | 'back'
  | 'cleat';

/** A bottom or top; its left end has the same name. */
export type Flat = 'bottom' | 'top';

/** Which side of a case. */
export type Hand = 'left' | 'right';

/** Where the end of a bottom or top meets the side at that hand. @example endAt('top', 'right') // 'topRight' */
export const endAt = (flat: Flat, hand: Hand) =>
  hand === 'left' ? flat : flat === 'bottom' ? 'bottomRight' : 'topRight';

/** How deep it is cut, where it is, and in what. */
const cuts: Readonly<Record<Meeting, { readonly depth: JointField; readonly into: StockRole }>> = {
  bottom: { depth: 'dado', into: 'side' },
  bottomRight: { depth: 'dado', into: 'side' },
  shelf: { depth: 'dado', into: 'side' },
  partition: { depth: 'partitionDado', into: 'bottom' },
  inPartition: { depth: 'partitionDado', into: 'partition' },
  top: { depth: 'topRabbet', into: 'side' },
  topRight: { depth: 'topRabbet', into: 'side' },
  back: { depth: 'backDeep', into: 'side' },
  cleat: { depth: 'cleatRabbet', into: 'side' },
};

const joints: Readonly<Record<CaseJoint, Joint>> = { dado, rabbet, butt, over, tongue, mitre };

/** The joints a meeting may have; the first stands where nothing else is said. */
export const jointsAt = {
  bottom: ['dado', 'rabbet', 'butt', 'over', 'tongue', 'mitre'],
  top: ['rabbet', 'dado', 'butt', 'over', 'tongue', 'mitre'],
  partition: ['dado', 'butt', 'tongue'],
  shelf: ['dado', 'butt', 'tongue'],
} as const satisfies Partial<Record<Meeting, readonly CaseJoint[]>>;

/** By which joint parts meet: as said, else the usual one. @example jointAt(newCase('c'), 'top') // 'rabbet' */
export const jointAt = (c: Case, meeting: Meeting): CaseJoint => meetsIn(c)[meeting].how;

function saidAt(c: Case, meeting: Meeting): CaseJoint {
  if (meeting === 'bottomRight' || meeting === 'topRight') return rightOf(c, meeting);
  const own = meeting === 'inPartition' ? 'shelf' : meeting;
  if (own === 'back' || own === 'cleat') return 'rabbet';
  const of: readonly CaseJoint[] = jointsAt[own];
  return of.find((joint) => joint === c[`${own}Joint`]) ?? jointsAt[own][0];
}

const flatOf = { bottomRight: 'bottom', topRight: 'top' } as const;

/** The right end is joined as the left one, or by another joint at the same height: over or mitred both, or neither. */
function rightOf(c: Case, meeting: keyof typeof flatOf): CaseJoint {
  const flat = flatOf[meeting];
  const own = rightJointsAt(c, flat).find((joint) => joint === c[`${meeting}Joint`]);
  return own ?? saidAt(c, flat);
}

/** It lies over both sides, or is mitred with both. */
const isWhole = (joint: CaseJoint): boolean => joint === 'over' || joint === 'mitre';

/** By which joints the right end of a bottom or top may meet its side, its left end being joined as it is. */
export const rightJointsAt = (c: Case, flat: Flat): readonly CaseJoint[] => {
  const left = saidAt(c, flat);
  const all: readonly CaseJoint[] = jointsAt[flat];
  return isWhole(left) ? [left] : all.filter((joint) => !isWhole(joint));
};

/** By which joint, how deep it is cut, and what in. */
export const meetingAt = (c: Case, meeting: Meeting): MeetsBy => meetsIn(c)[meeting];

const kept = keeper<Case, Readonly<Record<Meeting, MeetsBy>>>();

/** Every meeting of a case, which waits on nothing but the case. */
const meetsIn = (c: Case) =>
  kept(
    c,
    [],
    () =>
      Object.fromEntries((Object.keys(cuts) as Meeting[]).map((at) => [at, meetsBy(c, at)])) as Record<
        Meeting,
        MeetsBy
      >,
  );

function meetsBy(c: Case, meeting: Meeting): MeetsBy {
  const how = saidAt(c, meeting);
  if (meeting === 'back' && backHow(c) === 'groove')
    return { how, joint: groove, depth: 'backGroove', into: 'side' };
  // at the ends of the sides the dado of a top has one wall: what lies in it is seen
  const isRabbet = how === 'dado' && (meeting === 'top' || meeting === 'topRight') && isZero(pastTop(c));
  return { how, ...cuts[meeting], ...deepAs(meeting, how), joint: isRabbet ? rabbet : joints[how] };
}

/** A bottom in rabbets, and a top in dadoes or on tongues, are cut as deep as another field says. */
function deepAs(meeting: Meeting, how: CaseJoint): { readonly depth?: JointField } {
  const flat = meeting === 'bottomRight' || meeting === 'topRight' ? flatOf[meeting] : meeting;
  if (flat === 'bottom' && how === 'rabbet') return { depth: 'bottomRabbet' };
  return flat === 'top' && (how === 'dado' || how === 'tongue') ? { depth: 'dado' } : {};
}

type MeetsBy = {
  readonly how: CaseJoint;
  readonly joint: Joint;
  readonly depth: JointField;
  readonly into: StockRole;
};

/** A joint that is cut so deep as a field says. */
const isHoused = (joint: CaseJoint): boolean => joint === 'dado' || joint === 'rabbet' || joint === 'tongue';

/** Whether a case has a fixed shelf that stands in a side, or in a partition. */
const hasShelf = ({ inside, partitions }: Case, walls: 'sides' | 'partitions'): boolean =>
  inside.some(({ kind, bay }) => {
    if (kind !== 'fixed') return false;
    return walls === 'sides' ? bay === 1 || bay === partitions + 1 : partitions > 0;
  });

/**
 * The meetings of a case that are cut so deep as a field says, in the order of the fields; a right end where it is
 * joined otherwise than the left.
 */
export const housedIn = (c: Case): readonly Meeting[] => {
  const has: Readonly<Record<Meeting, boolean>> = {
    bottom: true,
    bottomRight: jointAt(c, 'bottomRight') !== jointAt(c, 'bottom'),
    shelf: hasShelf(c, 'sides'),
    partition: c.partitions > 0,
    inPartition: hasShelf(c, 'partitions'),
    top: c.hasTop,
    topRight: c.hasTop && jointAt(c, 'topRight') !== jointAt(c, 'top'),
    back: c.hasBack && backHow(c) !== 'applied',
    cleat: c.cleats > 0,
  };
  return (Object.keys(cuts) as readonly Meeting[]).filter(
    (meeting) => has[meeting] && isHoused(jointAt(c, meeting)),
  );
};

/** Whether a case has a joint so deep as this field says. @example asksDepth({ ...c, hasTop: false }, 'topRabbet') // false */
export const asksDepth = (c: Case, field: JointField): boolean =>
  housedIn(c).some((meeting) => meetingAt(c, meeting).depth === field);

/** What tells how parts meet: the case, how thick each is, and how deep its joints are. */
export type Meets = {
  readonly case: Case;
  readonly thick: (stock: StockRole) => Length;
  readonly joints: Joints;
};

/** How far bottom or top stands past the outer face of each side. Inches; nothing where it does not lie over them. */
export const pastOf = (c: Case, meeting: Meeting): Length => {
  const past = meeting === 'bottom' ? c.bottomPast : meeting === 'top' ? c.topPast : undefined;
  return jointAt(c, meeting) === 'over' ? (past ?? zero) : zero;
};

/** Whether the sides of a case may run past its top: it lies neither at their ends in rabbets nor over them. */
export const mayRunPast = (c: Case): boolean =>
  c.hasTop && ['dado', 'butt', 'tongue'].includes(saidAt(c, 'top'));

/**
 * How far the sides run past the upper face of the top. Inches; nothing where it lies at their ends.
 *
 * @example pastTop({ ...c, topJoint: 'dado', sidePast: inches(2n) }) // 2
 */
export const pastTop = (c: Case): Length => (mayRunPast(c) ? (c.sidePast ?? zero) : zero);

/**
 * How far a part reaches past the face of the one it meets, inches: so much longer it is at that end than the opening
 * is clear.
 *
 * @example reachOf(sizes, 'bottom') // 9/32 where the dado is that deep
 */
export function reachOf({ case: c, thick, joints: deep }: Meets, meeting: Meeting): Length {
  const { joint, depth, into } = meetingAt(c, meeting);
  return joint.reach(deep[depth], {
    thick: thick(into),
    past: pastOf(c, meeting),
    room: deep.tongueRoom,
  });
}

/** As much of that as is seen from the front, inches. @example seenOf(sizes, 'bottom') // 0: a dado hides it */
export const seenOf = (sizes: Meets, meeting: Meeting): Length =>
  meetingAt(sizes.case, meeting).joint.seen ? reachOf(sizes, meeting) : zero;
