import { add, inches, isPositive, type Length, less, zero } from '../../../length/length';
import { figureIn } from '../../../length/metric-figures';
import { unitsOf } from '../../../length/tape';
import type { EndCut } from '../../carcass/part';
import type { Bank } from '../../fronts/bank';
import { usualBank } from '../../fronts/usual-bank';
import { plus, sumOf } from '../../sums/sum';
import type { BoxError, BoxPlan } from '../box-plan';
import { fingersOf, grooveAmong, heightFor, leastFor, mostFingers } from '../fingers';
import type { DrawerJoint, JointAt } from './joint';

/** Fingers of a bank as said, else as is usual. */
const fingersSaid = (bank: Bank): NonNullable<BoxPlan['fingers']> => ({
  wide: bank.finger ?? usualBank(bank).finger,
  how: bank.fingers ?? 'full',
});

/** Under three fingers, or so many that a figure was mistyped. */
function faultOf({ height, fingers }: BoxPlan): BoxError | undefined {
  if (!fingers) return undefined;
  const { wide } = fingers;
  if (!isPositive(wide)) return { code: 'finger-not-positive' };
  const least = leastFor(wide);
  if (less(height, least)) return { code: 'too-low-for-fingers', height, least };
  const most = mostFingers(height, wide);
  return most === undefined ? undefined : { code: 'fingers-too-many', most };
}

/** Cut so much deeper than the mate is thick that its ends stand proud, and are sanded flush. */
const proudOf = ({ tape }: BoxPlan): Length => figureIn(unitsOf(tape), inches(1n, 64n));

/** Off one pin at one height: the side begins with a finger, what meets it with a slot. */
function cutAt(begins: 'finger' | 'slot', mate: Length, { plan, layout }: JointAt): EndCut {
  const first = layout.kind === 'fingers' ? layout.fingers.end : plan.height;
  return {
    what: 'fingers',
    machine: 'finger',
    height: add(mate, plan.proud ?? zero),
    along: add(mate, plan.proud ?? zero),
    cutter: plan.fingers?.wide,
    sets: begins === 'finger' ? 'first-slot' : 'edge-slot',
    figure: first,
    on: { at: 'fingers', begins },
  };
}

/** Fingers all the way up, as wide as their cutter; each piece fills the slots of the other. */
export const boxJoint: DrawerJoint = {
  planned: (bank, plan) => ({
    ...plan,
    lap: zero,
    proud: proudOf(plan),
    fingers: fingersSaid(bank),
  }),
  dadoFrom: 'front',
  side: ({ depth }) => sumOf(plus('box-depth', depth)),
  front: (_, { width }) => sumOf(width),
  reach: ({ front }) => front,
  fault: faultOf,
  warnings: () => [],
  problems: () => [],
  height: (bank, most) => {
    const { wide, how } = fingersSaid(bank);
    // what is wrong with it is said by `fault`
    if (!isPositive(wide) || less(most, leastFor(wide))) return most;
    return heightFor(most, { wide, how });
  },
  trims: true,
  layOut: (bank, { height, groove }) => {
    const fingers = fingersOf({ height, ...fingersSaid(bank) });
    return { kind: 'fingers', fingers, groove: grooveAmong(fingers, groove) };
  },
  cuts: (_, at) => ({
    side: cutAt('finger', at.plan.front, at),
    front: { ...cutAt('slot', at.plan.side, at), markedFrom: at.side },
  }),
};
