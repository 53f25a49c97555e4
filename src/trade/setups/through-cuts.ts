import type { Rounded } from '../../length/round';
import { markAt, type Tape, unitsOf } from '../../length/tape';
import type { Part } from '../carcass/part';
import { throughOf } from '../machines/blade-height';
import { shopAt } from '../machines/own-machine';
import type { OwnMachine } from '../machines/shop';
import { crosscut, crosscutGuided, type GuideOn, rippedOn } from './lies-through';
import type { On } from './on';
import type { Operation } from './operation';
import type { Placing } from './placing';
import { setupOf } from './setup';
import { guideFor, lengthMachine, type MachineAt, ripMachine } from './through-machine';

/** The shop's figures, the marks of the job, and on what a part was said to be cut. */
export type ThroughAt = MachineAt & { readonly tape: Tape };

type Cut = Pick<Operation, 'setup' | 'figure' | 'placing' | 'cannot' | 'asks'>;

/**
 * A part ripped to width, on the machine that takes it.
 *
 * @example ripTo(side, { shop, tape }).setup.machine // 'rip', or 'saw' where the fence does not reach
 */
export function ripTo(part: Part, at: ThroughAt): Cut {
  const { mark } = part.width;
  const { machine, own } = ripMachine(part, at);
  if (machine === 'saw') {
    const on = { at: 'edge', named: 'true' } as const;
    return guided(part, mark, { ...at, own, on, lies: (guide) => rippedOn('saw', guide) });
  }
  const on = { at: part.strip ? 'strip' : 'true-edge' } as const;
  const setup = setupOf({ machine, own, sets: 'rip-fence', figure: mark, on });
  return { setup, figure: mark.value, placing: rippedOn('rip') };
}

/** A part cut to length, on the machine that takes it. @example cutToLength(side, { shop, tape }).figure // its length */
export function cutToLength(part: Part, at: ThroughAt): Cut {
  const { mark } = part.length;
  const { machine, own } = lengthMachine(part, at);
  if (machine === 'saw') {
    const on = { at: 'end', named: 'squared' } as const;
    return guided(part, mark, { ...at, own, on, lies: crosscutGuided });
  }
  const setup = setupOf({ machine, own, sets: 'length-stop', figure: mark, on: { at: 'squared-end' } });
  const placing = crosscut(part, machine === 'slidingcut' ? 'far' : 'near');
  return { setup, figure: mark.value, placing };
}

type Guiding = ThroughAt & {
  readonly own: OwnMachine | undefined;
  readonly on: Extract<On, { readonly at: 'end' | 'edge' }>;
  readonly lies: (guide: GuideOn) => Placing;
};

/** Along a guide, the saw as deep as parts the piece. A tick keeps the piece's own figure; without a shoe it asks. */
function guided({ thickness }: Part, mark: Rounded, { shop, tape, own, on, lies }: Guiding): Cut {
  const deep = throughOf({ thickness, units: unitsOf(tape) });
  const height = deep && markAt(deep, tape, 'ceil').value;
  const guide = guideFor(mark.value, shopAt(shop, own));
  if (!('on' in guide)) {
    const setup = setupOf({ machine: 'saw', own, height, on });
    return { setup, figure: mark.value, cannot: true, asks: guide.asks };
  }
  const setup = setupOf({
    machine: 'saw',
    own,
    height,
    sets: 'guide-edge',
    figure: markAt(guide.figure, tape),
    on: { ...on, guide: guide.on },
  });
  return { setup, figure: mark.value, placing: lies(guide.on) };
}
