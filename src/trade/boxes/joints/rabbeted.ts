import { half, isPositive, type Length, less, over, subtract, times } from '../../../length/length';
import { cutterTape, markAt, type Tape } from '../../../length/tape';
import type { Rabbet } from '../../carcass/part';
import type { Bank } from '../../fronts/bank';
import { minus, plus, sumOf } from '../../sums/sum';
import type { BoxPlan, BoxWarning } from '../box-plan';
import type { DrawerJoint, JointAt } from './joint';

/** The rabbet of a front where none is said: half of its thickness, on a mark. Inches. */
export const usualRabbet = (front: Length, tape: Tape): Length =>
  markAt(half(front), cutterTape(tape), 'ceil').value;

const deepOf = ({ front, lap }: BoxPlan): Length => subtract(front, lap);

/** One half to two thirds of the front: what is printed of a rabbet in three quarters (Fine Woodworking, 2007). */
function warningsOf(plan: BoxPlan): readonly BoxWarning[] {
  const { front, groove } = plan;
  const deep = deepOf(plan);
  const [least, most] = [half(front), over(times(front, 2n), 3n)];
  const limits: readonly BoxWarning[] = less(deep, least)
    ? [{ code: 'rabbet-shallow', deep, limit: least }]
    : less(most, deep)
      ? [{ code: 'rabbet-deep', deep, limit: most }]
      : [];
  const by = subtract(groove.deep, deep);
  return isPositive(by) ? [...limits, { code: 'groove-past-rabbet', by }] : limits;
}

/** A rabbet across an end of the front, as wide as the side that lies in it. */
const rabbetAt = (named: string, { plan, reach, sideStock }: JointAt): Rabbet => ({
  id: named,
  takes: { part: 'side' },
  along: { at: 'end', named },
  fits: sideStock,
  width: plan.side,
  depth: reach,
});

/** The sides stand in rabbets of the front: as wide as a side is thick. */
export const rabbeted: DrawerJoint = {
  planned: ({ frontRabbet }: Bank, plan) => ({
    ...plan,
    lap: subtract(plan.front, frontRabbet ?? usualRabbet(plan.front, plan.tape)),
  }),
  dadoFrom: 'front',
  side: (plan) =>
    sumOf(plus('box-depth', plan.depth), minus('front', plan.front), plus('front-rabbet', deepOf(plan))),
  front: (_, { width }) => sumOf(width),
  ownFront: () => 'past',
  reach: deepOf,
  fault: (plan) => {
    const { front, lap } = plan;
    const deep = deepOf(plan);
    if (!isPositive(deep)) return { code: 'not-positive', field: 'front-rabbet' };
    return isPositive(lap) ? undefined : { code: 'rabbet-through', deep, front, over: subtract(deep, front) };
  },
  warnings: warningsOf,
  problems: () => [],
  height: (_, most) => most,
  layOut: () => ({ kind: 'corner' }),
  cuts: (_, at) => ({ rabbets: ['left', 'right'].map((named) => rabbetAt(named, at)) }),
};
