import type { Part } from '../carcass/part';
import type { Need } from '../machines/limits';
import { ownOf, type Taker } from '../machines/own-machine';
import type { OwnMachine } from '../machines/shop';
import { makes, takerOf } from '../machines/taker';
import type { Chosen } from '../machines/through';
import { toolAt } from '../machines/tool-at';
import { needOf } from './need';
import type { Operation } from './operation';
import { setupOf } from './setup';
import type { MachineAt } from './through-machine';

export type JointNeed = Need & { readonly cut: JointCut };

/** Joints cut beside the grooves of a board, by what they want of a machine, and under which name that is kept. */
export const jointBy = {
  edge: 'edgeBy',
  stopped: 'edgeBy',
  shoulder: 'shoulderBy',
  bore: 'boreBy',
} as const satisfies Partial<Record<Need['cut'], keyof Chosen>>;

type JointCut = keyof typeof jointBy;
/** Under which name it is kept what makes such operations of a part. */
export function jointFieldOf(what: Operation['what']): 'edgeBy' | 'shoulderBy' | 'boreBy' | undefined {
  if (what === 'rabbet' || what === 'along') return 'edgeBy';
  if (what === 'notch' || what === 'lap') return 'shoulderBy';
  return what === 'bore' ? 'boreBy' : undefined;
}
export const isJoint = (need: Need): need is JointNeed => need.cut in jointBy;

/**
 * A rabbet, notch, lap, groove along an edge or row of holes on the machine that takes it: one of the shop's own that
 * was chosen for its part, else, once an order is said, the first that lacks nothing.
 *
 * @param op as it is on the machine of every shop
 * @returns the same where that takes it, or where nothing limits it
 * @example onJointMachine(rabbet, side, { shop, chosen }).setup.own?.name // 'Old saw'
 */
export function onJointMachine(op: Operation, part: Part, at: MachineAt): Operation {
  const need = needOf(op, part);
  const own = need && isJoint(need) ? jointMachine(op, need, { ...at, part }) : undefined;
  return own
    ? { ...op, setup: setupOf({ ...op.setup, own: { id: own.id, name: own.name, like: own.like } }) }
    : op;
}

function jointMachine(
  { setup }: Operation,
  need: JointNeed,
  { part, ...at }: MachineAt & { readonly part: Part },
): OwnMachine | undefined {
  const usual = toolAt(setup.machine);
  const taker = usual && (chosenFor(part, need, at) ?? takerOf(need, usual, at.shop));
  return typeof taker === 'string' ? undefined : taker;
}

/** What was chosen for a part, where the shop has it and it makes such a cut; else nothing. */
export function chosenFor(part: Part, { cut }: JointNeed, { shop, chosen }: MachineAt): Taker | undefined {
  const by = chosen?.(part.id)[jointBy[cut]];
  const [usual] = makes[cut];
  if (by === 'usual') return usual;
  const named = ownOf(shop, by);
  return named && makes[cut].includes(named.like) ? named : undefined;
}
