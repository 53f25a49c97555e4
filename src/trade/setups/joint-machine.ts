import type { Part } from '../carcass/part';
import type { Need } from '../machines/limits';
import { ownOf, type Taker, toolOf } from '../machines/own-machine';
import type { Shop, Tool } from '../machines/shop';
import { mayMake, takerOf } from '../machines/taker';
import type { Chosen } from '../machines/through';
import { toolAt } from '../machines/tool-at';
import { alongFarFence, lappedFromAbove, notchedFromAbove } from './lies';
import { isThrough, needOf } from './need';
import type { Operation } from './operation';
import { setupOf } from './setup';
import type { MachineAt } from './through-machine';

export type JointNeed = Need & { readonly cut: JointCut };

/** Joints cut beside the grooves of a board, by what they want of a machine, and under which name that is kept. */
const jointBy = {
  edge: 'edgeBy',
  along: 'edgeBy',
  stopped: 'edgeBy',
  shoulder: 'shoulderBy',
  bore: 'boreBy',
  slot: 'slotBy',
} as const satisfies Partial<Record<Need['cut'], keyof Chosen>>;

type JointCut = keyof typeof jointBy;
export type JointField = 'edgeBy' | 'alongBy' | 'shoulderBy' | 'boreBy' | 'slotBy';

/** Under which name it is kept what makes such operations of a part. */
export function jointFieldOf(op: Pick<Operation, 'what' | 'which'>): JointField | undefined {
  const { what } = op;
  if (what === 'along' && isThrough(op)) return 'alongBy';
  if (what === 'rabbet' || what === 'along') return 'edgeBy';
  if (what === 'notch' || what === 'lap') return 'shoulderBy';
  if (what === 'slot') return 'slotBy';
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
  const usual = toolAt(op.setup.machine);
  if (!need || !isJoint(need) || !usual) return op;
  const taker = chosenFor(part, need, at) ?? takerOf(need, usual, at.shop);
  if (taker === usual) return op;
  const own = typeof taker === 'string' ? {} : { own: { id: taker.id, name: taker.name, like: taker.like } };
  const there = toolOf(taker) === usual ? undefined : standsReady(op, part, toolOf(taker));
  return { ...op, ...there?.lies, setup: setupOf({ ...op.setup, ...there?.set, ...own }) };
}

/** What stands ready and how the piece lies where another kind of machine makes a joint than every shop's. */
function standsReady({ what, placing }: Operation, part: Part, tool: Tool) {
  if (tool === 'table')
    return {
      set: { machine: 'tablerouter', sets: 'bit-fence' },
      lies: placing && { placing: alongFarFence(placing) },
    } as const;
  if (what === 'notch')
    return { set: { machine: 'slidingnotch' }, lies: { placing: notchedFromAbove(part) } } as const;
  return { set: { machine: 'slidinglap' }, lies: { placing: lappedFromAbove(part) } } as const;
}

/** What was chosen for a part, where the shop has it and it makes such a cut; else nothing. */
export const chosenFor = (part: Part, { cut }: JointNeed, { shop, chosen }: MachineAt): Taker | undefined =>
  saidFor(cut, chosen?.(part.id) ?? {}, shop);

/**
 * The machine that is said of a part for a cut: of a groove that runs through a router table first, which is named for
 * it alone.
 */
export function saidFor(cut: JointCut, said: Chosen, shop: Pick<Shop, 'own'>): Taker | undefined {
  const table = cut === 'along' ? ownOf(shop, said.alongBy) : undefined;
  if (table?.like === 'table') return table;
  const by = said[jointBy[cut]];
  const [usual] = mayMake(cut);
  if (by === 'usual') return usual;
  if (by === 'sliding' && cut === 'shoulder') return by;
  const named = ownOf(shop, by);
  return named && mayMake(cut).includes(named.like) && !(cut === 'along' && named.like === 'table')
    ? named
    : undefined;
}
