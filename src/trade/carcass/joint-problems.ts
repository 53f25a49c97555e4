import { isPositive, less } from '../../length/length';
import type { Sum } from '../sums/sum';
import { backHow } from './back-how';
import type { Case } from './case';
import { housedIn, jointAt, type Meets, meetingAt } from './meetings';
import type { CaseProblem } from './problems';

type Joined = Meets & { readonly depth: Sum };

/** Joints that cannot be cut so deep, or not where they are said to be. */
export const jointProblems = (sizes: Joined): readonly CaseProblem[] => [
  ...through(sizes),
  ...noFeet(sizes.case),
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
  const joint = jointAt(c, 'bottom');
  const isLow = joint === 'rabbet' || joint === 'over';
  return isLow && c.feet && isPositive(c.feet) ? [{ code: 'bottom-low', joint, by: c.feet }] : [];
};
