import { unitsOf } from '../length/tape';
import { lacksOf, type Need, type Reach, type Way } from '../trade/machines/limits';
import { ownOf, type Taker, toolOf } from '../trade/machines/own-machine';
import type { Tool } from '../trade/machines/shop';
import { mayMake } from '../trade/machines/taker';
import { type Chosen, lengthAt, ripAt } from '../trade/machines/through';
import { toolAt } from '../trade/machines/tool-at';
import { hasTool, isOwnAlone } from '../trade/machines/tools';
import { isJoint, type JointNeed, saidFor } from '../trade/setups/joint-machine';
import { needOf } from '../trade/setups/need';
import type { Operation } from '../trade/setups/operation';
import type { Plan } from './plan';

/** A machine that may make a cut, and how it would. */
export type OnTool = { readonly taker: Taker; readonly way: Way };

type ThroughOn = {
  readonly need: Need;
  readonly tools: readonly OnTool[];
  /** The machine that was chosen; nothing where the first that can takes it. */
  readonly chosen: Taker | undefined;
};

/**
 * On what the pieces of a card may be ripped, cut to length or joined; nothing for grooves, which go with their layout.
 * What is said is said of the first piece.
 *
 * @example throughOn(card.operations, plan, reach)?.tools.map((on) => on.taker) // ['fence', 'circular']
 */
export function throughOn(
  operations: readonly Operation[],
  plan: Pick<Plan, 'job' | 'parts'>,
  reach: Reach,
): ThroughOn | undefined {
  // a test cut in scrap, of no part, may come before the first
  const op = operations.find((one) => plan.parts.some((p) => p.id === one.part));
  const part = op && plan.parts.find((p) => p.id === op.part);
  const need = part && needOf(op, part, unitsOf(plan.job.tape));
  if (!need || need.cut === 'groove') return undefined;
  if (isJoint(need)) return jointOn(need, plan.job.parts[part.id], reach);
  if (op.what !== 'rip' && op.what !== 'length') return undefined;
  const { ripOn, ripBy, lengthOn, lengthBy } = plan.job.parts[part.id] ?? {};
  const [on, by, at] = op.what === 'rip' ? [ripOn, ripBy, ripAt] : ([lengthOn, lengthBy, lengthAt] as const);
  const usual = (Object.keys(at) as readonly Tool[]).filter((tool) => !isOwnAlone(tool));
  const takers: readonly Taker[] = [...usual, ...(reach.own ?? []).filter((own) => toolOf(own) in at)];
  const own = ownOf(reach, by);
  return {
    need,
    tools: takers.map((taker) => ({ taker, way: lacksOf(need, taker, reach) })),
    chosen: by && !own ? undefined : on && (own && at[own.like] === on ? own : toolAt(on)),
  };
}

/** Joints go to the other machines that make them, those of every shop where it has them, and back to the usual one. */
function jointOn(need: JointNeed, chosen: Chosen = {}, reach: Reach): ThroughOn {
  const may = mayMake(need.cut);
  const ofShop = may.filter((tool, k) => k === 0 || (!isOwnAlone(tool) && hasTool(reach, tool)));
  const takers: readonly Taker[] = [...ofShop, ...(reach.own ?? []).filter(({ like }) => may.includes(like))];
  return {
    need,
    tools: takers.map((taker) => ({ taker, way: lacksOf(need, taker, reach) })),
    chosen: saidFor(need.cut, chosen, reach),
  };
}
