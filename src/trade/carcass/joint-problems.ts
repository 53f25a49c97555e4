import { add, inches, isPositive, less, subtract } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import type { Sum } from '../sums/sum';
import { backHow } from './back-how';
import type { Case, StockRole } from './case';
import { housedIn, jointAt, type Meets, meetingAt } from './meetings';
import { mitreProblems } from './mitres';
import { pastTopProblems } from './past-top';
import type { CaseProblem, CaseWarning } from './problems';
import { hugsAt } from './tongues';

type Joined = Meets & { readonly depth: Sum };

/** Joints that cannot be cut so deep, or not where they are said to be. */
export const jointProblems = (sizes: Joined): readonly CaseProblem[] => [
  ...through(sizes),
  ...noFeet(sizes.case),
  ...mitreProblems(sizes),
  ...pastTopProblems(sizes.case),
  ...tongues(sizes),
];

type Through = Extract<CaseProblem, { code: 'through' }>;

/** Joints that would come out at the other face, and a back rabbet that takes the whole depth. */
function through({ case: c, thick, joints, depth }: Joined): readonly CaseProblem[] {
  const all = housedIn(c).flatMap((meeting): readonly Through[] => {
    const { joint, depth: field, into } = meetingAt(c, meeting);
    const [cut, thickness] = [joints[field], thick(into)];
    return joint.goesThrough(cut, thickness) ? [{ code: 'through', field, depth: cut, thickness }] : [];
  });
  const found = all.filter((x, k) => all.findIndex(({ field }) => field === x.field) === k);
  const wide = joints.backWide;
  return backHow(c) === 'rabbet' && !less(wide, depth.value)
    ? [...found, { code: 'back-too-wide', wide, depth: depth.value }]
    : found;
}

/** A bottom at the lower ends of the sides lies on the floor, and the case with it. */
const noFeet = (c: Case): readonly CaseProblem[] => {
  if (!c.feet || !isPositive(c.feet)) return [];
  const joint = bottomJoints(c).find((at) => at === 'rabbet' || at === 'over' || at === 'mitre');
  return joint === 'rabbet' || joint === 'over' || joint === 'mitre'
    ? [{ joined: true, code: 'bottom-low', joint, by: c.feet }]
    : [];
};

const bottomJoints = (c: Case) => [jointAt(c, 'bottom'), jointAt(c, 'bottomRight')];

/** The stock of the parts that end in tongues. */
const tongued = (c: Case): readonly StockRole[] => {
  const of = {
    bottom: 'bottom',
    bottomRight: 'bottom',
    top: 'top',
    topRight: 'top',
    partition: 'partition',
    shelf: 'shelf',
    inPartition: 'shelf',
  } as const;
  return housedIn(c).flatMap((meeting) =>
    meeting !== 'back' && meeting !== 'cleat' && jointAt(c, meeting) === 'tongue' ? [of[meeting]] : [],
  );
};

/** A shorter tongue holds nothing. Our own. */
const leastLong = inches(1n, 32n);

/** Tongues that leave no shoulder, that have no length, and one with no wood under its groove. */
function tongues({ case: c, thick, joints }: Joined): readonly CaseProblem[] {
  const parts = [...new Set(tongued(c))];
  const part = parts.find((stock) => !less(joints.tongue, thick(stock)));
  const short = housedIn(c).find(
    (meeting) =>
      jointAt(c, meeting) === 'tongue' &&
      less(joints[meetingAt(c, meeting).depth], add(joints.tongueRoom, figureIn(c.units, leastLong))),
  );
  const most = short && subtract(joints[meetingAt(c, short).depth], figureIn(c.units, leastLong));
  const low = bottomJoints(c).includes('tongue') && hugsAt(c, 'bottom') === 'near';
  return [
    ...(part
      ? [{ joined: true, code: 'tongue-thick', part, tongue: joints.tongue, thickness: thick(part) } as const]
      : []),
    ...(most
      ? [{ code: 'too-much', field: 'tongueRoom', by: subtract(joints.tongueRoom, most), most } as const]
      : []),
    ...(low && !(c.feet && isPositive(c.feet)) ? [{ joined: true, code: 'tongue-low' } as const] : []),
  ];
}

/** Glue has nowhere to go under a tongue with less. Common practice, no source. */
const leastRoom = inches(1n, 64n);

/** Too little room under the tongues. */
export function tongueWarnings({ case: c, joints }: Joined): readonly CaseWarning[] {
  const least = figureIn(c.units, leastRoom);
  return tongued(c).length > 0 && less(joints.tongueRoom, least)
    ? [{ joined: true, code: 'tongue-room', room: joints.tongueRoom, least }]
    : [];
}
