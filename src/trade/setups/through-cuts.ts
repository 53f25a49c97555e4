import { isNegative, type Length, zero } from '../../length/length';
import type { Rounded } from '../../length/round';
import { markAt, type Tape } from '../../length/tape';
import type { Part } from '../carcass/part';
import { throughOf } from '../machines/limits';
import type { Shop, ShopField } from '../machines/shop';
import { takerOf } from '../machines/taker';
import { type Chosen, type LengthMachine, lengthAt, type RipMachine, ripAt } from '../machines/through';
import { guidePlaces } from '../sheets/guide';
import { crosscut, crosscutGuided, type GuideOn, rippedOn } from './lies-through';
import { lengthNeed, ripNeed } from './need';
import type { On } from './on';
import type { Operation } from './operation';
import type { Placing } from './placing';
import { setupOf } from './setup';

/** The shop's figures, the marks of the job, and on what a part was said to be cut. */
export type ThroughAt = {
  readonly shop: Shop;
  readonly tape: Tape;
  readonly chosen?: (part: string) => Chosen;
};

type Cut = Pick<Operation, 'setup' | 'figure' | 'placing' | 'cannot' | 'asks'>;

/** What rips a part: what was chosen for it, else the first of the shop's machines that can. */
function ripMachine(part: Part, { shop, chosen }: ThroughAt): RipMachine {
  const own = chosen?.(part.id).ripOn;
  if (own) return own;
  const first = ripAt[takerOf(ripNeed(part), 'fence', shop)] ?? 'rip';
  return first === 'saw' && !('on' in guideFor(part.width.mark.value, shop)) ? 'rip' : first;
}

function lengthMachine(part: Part, { shop, chosen }: ThroughAt): LengthMachine {
  const own = chosen?.(part.id).lengthOn;
  if (own) return own;
  const first = lengthAt[takerOf(lengthNeed(part), 'sled', shop)] ?? 'crosscut';
  return first === 'saw' && !('on' in guideFor(part.length.mark.value, shop)) ? 'crosscut' : first;
}

/**
 * A part ripped to width, on the machine that takes it.
 *
 * @example ripTo(side, { shop, tape }).setup.machine // 'rip', or 'saw' where the fence does not reach
 */
export function ripTo(part: Part, at: ThroughAt): Cut {
  const { mark } = part.width;
  if (ripMachine(part, at) === 'saw') {
    const on = { at: 'edge', named: 'true' } as const;
    return guided(part, mark, { ...at, on, lies: (guide) => rippedOn('saw', guide) });
  }
  const on = { at: part.strip ? 'strip' : 'true-edge' } as const;
  const setup = setupOf({ machine: 'rip', sets: 'rip-fence', figure: mark, on });
  return { setup, figure: mark.value, placing: rippedOn('rip') };
}

/** A part cut to length, on the machine that takes it. @example cutToLength(side, { shop, tape }).figure // its length */
export function cutToLength(part: Part, at: ThroughAt): Cut {
  const { mark } = part.length;
  const machine = lengthMachine(part, at);
  if (machine === 'saw') {
    const on = { at: 'end', named: 'squared' } as const;
    return guided(part, mark, { ...at, on, lies: crosscutGuided });
  }
  const setup = setupOf({ machine, sets: 'length-stop', figure: mark, on: { at: 'squared-end' } });
  const placing = crosscut(part, machine === 'slidingcut' ? 'far' : 'near');
  return { setup, figure: mark.value, placing };
}

type Guiding = ThroughAt & {
  readonly on: Extract<On, { readonly at: 'end' | 'edge' }>;
  readonly lies: (guide: GuideOn) => Placing;
};

/** Along a guide, the saw as deep as parts the piece. A tick keeps the piece's own figure; without a shoe it asks. */
function guided({ thickness }: Part, mark: Rounded, { shop, tape, on, lies }: Guiding): Cut {
  const deep = throughOf(thickness);
  const height = deep && markAt(deep, tape, 'ceil').value;
  const guide = guideFor(mark.value, shop);
  if (!('on' in guide)) {
    const setup = setupOf({ machine: 'saw', height, on });
    return { setup, figure: mark.value, cannot: true, asks: guide.asks };
  }
  const setup = setupOf({
    machine: 'saw',
    height,
    sets: 'guide-edge',
    figure: markAt(guide.figure, tape),
    on: { ...on, guide: guide.on },
  });
  return { setup, figure: mark.value, placing: lies(guide.on) };
}

type Guide = { readonly on: GuideOn; readonly figure: Length } | { readonly asks: ShopField };

/** On what is kept, so that the kept side is covered; where it would lie off the piece, on the waste. */
function guideFor(line: Length, shop: Shop): Guide {
  const { kerf } = shop;
  const { onKeep, onWaste } = guidePlaces(line, { keep: 'near', kerf: kerf ?? zero, shop });
  if (onKeep && !isNegative(onKeep)) return { on: 'reference', figure: onKeep };
  if (onWaste && kerf) return { on: 'far', figure: onWaste };
  return { asks: onWaste ? 'kerf' : onKeep ? 'shoeWaste' : 'shoeKeep' };
}
