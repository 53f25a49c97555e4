import { inches, isPositive, type Length, less, subtract } from '../../../length/length';
import { figureIn } from '../../../length/metric-figures';
import { markAt, unitsOf } from '../../../length/tape';
import type { Units } from '../../../length/units';
import type { Bank } from '../../fronts/bank';
import { usualBank } from '../../fronts/usual-bank';
import { minus, plus, sumOf } from '../../sums/sum';
import { tailsFor } from '../tail-choice';
import { templateHeights } from '../tails';
import type { DrawerJoint } from './joint';

/** A lap under this is thin, 1/8 or 3 mm. Common practice, no source. Inches. */
export const leastLap = (units: Units): Length => figureIn(units, inches(1n, 8n));

const byTemplate = ({ tailsHow }: Bank): boolean => tailsHow === 'template';

/** Half-blind dovetails: tails on the sides, pins on the front, which laps over the ends of the tails. */
export const halfBlind: DrawerJoint = {
  side: ({ depth, lap }) => sumOf(plus('box-depth', depth), minus('front-lap', lap)),
  front: (_, { width }) => sumOf(width),
  ownFront: () => 'flush',
  reach: ({ front, lap }) => subtract(front, lap),
  fault: ({ front, lap }) => (less(lap, front) ? undefined : { code: 'lap-too-deep', lap, front }),
  warnings: ({ lap, tape }) => (less(lap, leastLap(unitsOf(tape))) ? [{ code: 'lap-thin', lap }] : []),
  problems: (bank) =>
    byTemplate(bank) && bank.pitch && !isPositive(bank.pitch) ? [{ code: 'pitch-not-positive' }] : [],
  // a template goes into a side in whole pitches, where at least one goes
  height: (bank, most) =>
    (byTemplate(bank) && templateHeights(most, bank.pitch ?? usualBank(bank).pitch).below) || most,
  layOut: (bank, end) => ({ kind: 'tails', ...tailsFor(bank, end) }),
  cuts: (bank, { reach, side, plan }) => {
    const by = byTemplate(bank) ? 'template' : 'laid-out';
    const on = { at: 'tails', by, long: markAt(reach, '1/64').value } as const;
    const end = { machine: 'dovetail', height: reach, on } as const;
    return {
      side: { what: 'tails', ...end, along: reach },
      front: { what: 'pins', ...end, along: plan.side, markedFrom: side },
    };
  },
};
