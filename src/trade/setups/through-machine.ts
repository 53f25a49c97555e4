import { isNegative, type Length, zero } from '../../length/length';
import { type Tape, unitsOf } from '../../length/tape';
import type { Units } from '../../length/units';
import type { Part } from '../carcass/part';
import type { Need } from '../machines/limits';
import { ownOf, shopAt, toolOf } from '../machines/own-machine';
import type { OwnMachine, Shop, ShopField, Tool } from '../machines/shop';
import { takerOf } from '../machines/taker';
import { type Chosen, type LengthMachine, lengthAt, type RipMachine, ripAt } from '../machines/through';
import { guidePlaces } from '../sheets/guide';
import type { GuideOn } from './lies-through';
import { lengthNeed, ripNeed } from './need';

/** The shop's figures, and on what a part was said to be cut. */
export type MachineAt = {
  readonly shop: Shop;
  readonly tape?: Tape;
  readonly chosen?: (part: string) => Chosen;
};

const unitsAt = ({ tape }: MachineAt): Units | undefined => tape && unitsOf(tape);

/** What parts a piece: the machine as it stands ready, and which of the shop's own it is where it is one. */
type PartsIt<M> = { readonly machine: M; readonly own?: OwnMachine | undefined };

/** How one of the two cuts is given its machine. */
type Cut<M> = {
  readonly need: Need;
  readonly line: Length;
  readonly at: Readonly<Partial<Record<Tool, M>>>;
  readonly usual: Tool;
  readonly first: M;
  /** What was chosen for the part, and which machine of the shop's own. */
  readonly on: M | undefined;
  readonly by: string | undefined;
};

/** What rips a part: what was chosen for it, else the first of the shop's machines that can. */
export function ripMachine(part: Part, at: MachineAt): PartsIt<RipMachine> {
  const { shop, chosen } = at;
  const { ripOn: on, ripBy: by } = chosen?.(part.id) ?? {};
  const line = part.width.mark.value;
  const need = ripNeed(part, unitsAt(at));
  return machineFor({ need, line, at: ripAt, usual: 'fence', first: 'rip', on, by }, shop);
}

/** What cuts a part to length. */
export function lengthMachine(part: Part, at: MachineAt): PartsIt<LengthMachine> {
  const { shop, chosen } = at;
  const { lengthOn: on, lengthBy: by } = chosen?.(part.id) ?? {};
  const line = part.length.mark.value;
  const need = lengthNeed(part, unitsAt(at));
  return machineFor({ need, line, at: lengthAt, usual: 'sled', first: 'crosscut', on, by }, shop);
}

function machineFor<M extends string>(
  { need, line, at, usual, first, on, by }: Cut<M>,
  shop: Shop,
): PartsIt<M> {
  const chosen = ownOf(shop, by);
  // what was put on a machine that this shop has not goes where it would go had nothing been said
  if (on && (chosen || !by))
    return chosen && at[chosen.like] === on ? { machine: on, own: chosen } : { machine: on };
  const taker = takerOf(need, usual, shop);
  const own = typeof taker === 'string' ? undefined : taker;
  const machine = at[toolOf(taker)] ?? first;
  const noGuide = machine === 'saw' && !('on' in guideFor(line, shopAt(shop, own)));
  return noGuide ? { machine: first } : { machine, own };
}

type Guide = { readonly on: GuideOn; readonly figure: Length } | { readonly asks: ShopField };

/** On what is kept, so that the kept side is covered; where it would lie off the piece, on the waste. */
export function guideFor(line: Length, shop: Shop): Guide {
  const { kerf } = shop;
  const { onKeep, onWaste } = guidePlaces(line, { keep: 'near', kerf: kerf ?? zero, shop });
  if (onKeep && !isNegative(onKeep)) return { on: 'reference', figure: onKeep };
  if (onWaste && kerf) return { on: 'far', figure: onWaste };
  return { asks: onWaste ? 'kerf' : onKeep ? 'shoeWaste' : 'shoeKeep' };
}
