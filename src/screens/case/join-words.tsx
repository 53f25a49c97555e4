import type { ComponentChildren as Blank } from 'preact';
import { half } from '../../length/length';
import { assertNever } from '../../length/result';
import type { Case } from '../../trade/carcass/case';
import type { JoinProblem, JoinWarning } from '../../trade/carcass/join-problem';
import { asksDepth, endAt, jointAt, type jointsAt, mayRunPast } from '../../trade/carcass/meetings';
import { exactly as w } from '../shared/exact-words';
import { stockNames } from './words';

/** What is joined to what; each is a choice. */
export const joinTitles = {
  bottom: 'How the bottom meets the sides',
  top: 'How the top meets the sides',
  partition: 'How partitions meet bottom and top',
  shelf: 'How fixed shelves meet their walls',
} as const;

type Joins = {
  readonly [M in keyof typeof jointsAt]: {
    readonly [J in (typeof jointsAt)[M][number]]: { readonly label: string; readonly hint: string };
  };
};

/** Whether a case has what is joined there. */
function hasMeeting(c: Case, meeting: keyof typeof joinTitles): boolean {
  if (meeting === 'partition') return c.partitions > 0;
  if (meeting === 'shelf') return c.inside.some(({ kind }) => kind === 'fixed');
  return meeting === 'bottom' || c.hasTop;
}

const uncut = 'nothing is cut: screws or dowels hold it';

const mitred = '45° at both corners: no end shows';

/** A word for each joint a meeting may have. */
export const joins: Joins = {
  bottom: {
    dado: { label: 'in dadoes', hint: 'cut across the sides' },
    rabbet: { label: 'in rabbets', hint: 'at the lower ends of the sides' },
    butt: { label: 'butted between the sides', hint: uncut },
    tongue: { label: 'on tongues', hint: 'in grooves across the sides' },
    over: { label: 'under the sides', hint: `they stand on it; ${uncut}` },
    mitre: { label: 'mitred with the sides', hint: mitred },
  },
  top: {
    rabbet: { label: 'in rabbets', hint: 'at the upper ends of the sides' },
    dado: { label: 'in dadoes', hint: 'cut across the sides, which run past it' },
    butt: { label: 'butted between the sides', hint: uncut },
    tongue: { label: 'on tongues', hint: 'in grooves across the sides' },
    over: { label: 'over the sides', hint: `it lies on their ends; ${uncut}` },
    mitre: { label: 'mitred with the sides', hint: mitred },
  },
  partition: {
    dado: { label: 'in dadoes', hint: 'cut across bottom and top' },
    tongue: { label: 'on tongues', hint: 'in grooves across bottom and top' },
    butt: { label: 'butted', hint: uncut },
  },
  shelf: {
    dado: { label: 'in dadoes', hint: 'cut across their walls' },
    tongue: { label: 'on tongues', hint: 'in grooves across their walls' },
    butt: { label: 'butted', hint: uncut },
  },
};

/** At which face of a part its tongues lie, each a choice; a top, often with no wood over it, has but the under one. */
export const hugsTitles = {
  bottom: 'Where the tongues of the bottom lie',
  partition: 'Where the tongues of partitions lie',
  shelf: 'Where the tongues of fixed shelves lie',
} as const;

const flatFaces = {
  far: { label: 'at the upper face', hint: 'the shoulder is cut in the under face' },
  near: { label: 'at the under face', hint: 'the shoulder is cut in the upper face' },
};

export const hugsWords = {
  bottom: flatFaces,
  shelf: flatFaces,
  partition: {
    near: { label: 'at the left face', hint: 'the shoulder is cut in the right face' },
    far: { label: 'at the right face', hint: 'the shoulder is cut in the left face' },
  },
} as const;

/** The right end of a bottom or top, each a choice. */
export const rightTitles = {
  bottom: 'How the right end of the bottom meets its side',
  top: 'How the right end of the top meets its side',
} as const;

/** The choices that lay a bottom at the lower ends of the sides. */
export const lowTitles = {
  rabbet: [joinTitles.bottom, rightTitles.bottom],
  over: [joinTitles.bottom],
  mitre: [joinTitles.bottom],
} as const;

/** One end, by its joint; `as` where it is joined as the left one is. */
export const rightWords = {
  as: { label: 'as at the left' },
  dado: { label: 'in a dado', hint: 'cut across the right side' },
  rabbet: { label: 'in a rabbet', hint: 'at the end of the right side' },
  butt: { label: 'butted', hint: uncut },
  tongue: { label: 'on a tongue', hint: 'in a groove across the right side' },
} as const;

export const rightOtherwise = 'Right ends otherwise';

const past = (at: Blank) => <>, {at} past each</>;

const right = (at: Blank) => at && <>, its right end {at}</>;

/** How the parts of the case are joined. */
export const meets = (
  c: Case,
  at: Readonly<
    Record<keyof typeof joinTitles | 'bottomPast' | 'topPast' | 'sidePast', Blank> &
      Partial<Record<'bottomRight' | 'topRight', Blank>>
  >,
) => (
  <>
    The bottom {at.bottom}
    {jointAt(c, 'bottom') === 'over' && past(at.bottomPast)}
    {right(at.bottomRight)}
    {c.hasTop && <>, the top {at.top}</>}
    {c.hasTop && jointAt(c, 'top') === 'over' && past(at.topPast)}
    {c.hasTop && right(at.topRight)}
    {mayRunPast(c) && <>, the sides {at.sidePast} past its upper face</>}
    {hasMeeting(c, 'partition') && <>, partitions {at.partition}</>}
    {hasMeeting(c, 'shelf') && <>, fixed shelves {at.shelf}</>}.{' '}
  </>
);

/** How deep what is cut for a joint is. */
export const deep = (
  c: Case,
  at: Readonly<Record<'dado' | 'partition' | 'fit' | 'bottom' | 'top', Blank>>,
) => {
  const own = tonguedOf(c).length > 0 ? 'what goes in' : 'its sheet';
  const [inSides, inFlats] = [asksDepth(c, 'dado'), asksDepth(c, 'partitionDado')];
  return (
    <>
      {inSides && <>Dadoes {at.dado} deep in the sides</>}
      {inFlats &&
        (inSides ? <>, {at.partition} for partitions</> : <>Dadoes {at.partition} deep for partitions</>)}
      {(inSides || inFlats) && (
        <>
          , each {at.fit} wider than {own}.{' '}
        </>
      )}
      {asksDepth(c, 'bottomRabbet') && <>The rabbet for the bottom {at.bottom} deep. </>}
      {asksDepth(c, 'topRabbet') && <>The rabbet for the top {at.top} deep.</>}
    </>
  );
};

/** The parts that end in tongues. */
const tonguedOf = (c: Case): readonly (keyof typeof joinTitles)[] =>
  (['bottom', 'top', 'partition', 'shelf'] as const).filter(
    (meeting) =>
      hasMeeting(c, meeting) &&
      (jointAt(c, meeting) === 'tongue' ||
        ((meeting === 'bottom' || meeting === 'top') && jointAt(c, endAt(meeting, 'right')) === 'tongue')),
  );

/** How thick tongues are, the room under them, and at which face of their parts they lie. */
export function tongues(
  c: Case,
  at: Readonly<Record<'thick' | 'room' | keyof typeof hugsTitles, Blank>>,
): Blank {
  const of = tonguedOf(c);
  if (of.length === 0) return null;
  return (
    <>
      {' '}
      Tongues {at.thick} thick, {at.room} room under them
      {of.includes('bottom') && <>; of the bottom {at.bottom}</>}
      {of.includes('top') && <>; of the top at the under face</>}
      {of.includes('partition') && <>; of partitions {at.partition}</>}
      {of.includes('shelf') && <>; of fixed shelves {at.shelf}</>}.
    </>
  );
}

const lowest = 'or put the bottom in dadoes, or butt it between the sides.';

/** A bottom that lies at the lower ends of the sides has nothing of them under it. */
const bottomLow = {
  rabbet: (by: string): string =>
    `A bottom in rabbets lies at the lower ends of the sides, so the case cannot stand ${by} off the floor. Make that 0, ${lowest}`,
  over: (by: string): string =>
    `The sides stand on the bottom, so the case cannot stand ${by} off the floor. Make that 0, ${lowest}`,
  mitre: (by: string): string =>
    `A bottom mitred with the sides lies at their lower ends, so the case cannot stand ${by} off the floor. Make that 0, ${lowest}`,
} as const;

/** What lies on the upper ends of the sides, or goes round them, has the top right under it. */
const onTop = {
  loose: (by: string): string =>
    `A loose top lies on the ends of the sides, ${by} over the top of the case: no screw holds it from under. Make that 0, or have no loose top.`,
  edging: (by: string): string =>
    `Edging goes round the upper end of the case, and its top lies ${by} lower. Make that 0, or have no edging.`,
} as const;

/** What keeps parts from being joined as said, by how much, and what would fit. */
export function joinProblemText(problem: JoinProblem): string {
  switch (problem.code) {
    case 'bottom-low':
      return bottomLow[problem.joint](w(problem.by));
    case 'tongue-thick': {
      const { part, tongue, thickness } = problem;
      return `Tongues ${w(tongue)} thick leave no shoulder: ${stockNames[part]} ${w(thickness)} thick. Half of that would do, ${w(half(thickness))}.`;
    }
    case 'mitre-unlike': {
      const { part, own, side, by } = problem;
      return `A mitre of 45° meets where both are one thickness: the ${part} is ${w(own)} thick, the sides are ${w(side)}, ${w(by)} off. Take both out of one sheet, or join them otherwise.`;
    }
    case 'top-low':
      return `The right end of the top lies in a rabbet at the end of its side, so the sides cannot run ${w(problem.by)} past it. Make that 0, or join both ends of the top alike.`;
    case 'no-top-under':
      return onTop[problem.on](w(problem.by));
    case 'tongue-low':
      return 'Nothing of the sides is under a bottom at their lower ends, so its tongues lie at the upper face.';
    default:
      return assertNever(problem);
  }
}

/** What is worth a look in how parts are joined. Limits are common practice. */
export const joinWarningText = (warning: JoinWarning): string =>
  warning.code === 'tongue-room'
    ? `Only ${w(warning.room)} is left under the tongues: glue has nowhere to go. Keep ${w(warning.least)}.`
    : `Only ${w(warning.over)} of the sides is left over the dadoes for the top: it may break out. Keep ${w(warning.least)}.`;
