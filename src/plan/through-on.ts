import { lacksOf, type Need, type Reach, type Way } from '../trade/machines/limits';
import { ownOf, type Taker, toolOf } from '../trade/machines/own-machine';
import { lengthAt, ripAt } from '../trade/machines/through';
import { toolAt } from '../trade/machines/tool-at';
import { needOf } from '../trade/setups/need';
import type { Operation } from '../trade/setups/operation';
import type { Plan } from './plan';

/** A machine that may rip or cut to length, and how it would make the cut. */
export type OnTool = { readonly taker: Taker; readonly way: Way };

type ThroughOn = {
  readonly need: Need;
  readonly tools: readonly OnTool[];
  /** The machine that was chosen; nothing where the first that can takes it. */
  readonly chosen: Taker | undefined;
};

/**
 * On what the pieces of a card may be ripped or cut to length; nothing for other cuts. What is said is said of the
 * first piece.
 *
 * @example throughOn(card.operations, plan, reach)?.tools.map((on) => on.taker) // ['fence', 'circular']
 */
export function throughOn(
  operations: readonly Operation[],
  plan: Pick<Plan, 'job' | 'parts'>,
  reach: Reach,
): ThroughOn | undefined {
  const op = operations.find(({ what }) => what === 'rip' || what === 'length');
  const part = op && plan.parts.find((p) => p.id === op.part);
  const need = part && needOf(op, part);
  if (!need) return undefined;
  const { ripOn, ripBy, lengthOn, lengthBy } = plan.job.parts[part.id] ?? {};
  const [on, by, at] = op.what === 'rip' ? [ripOn, ripBy, ripAt] : ([lengthOn, lengthBy, lengthAt] as const);
  const usual = Object.keys(at) as readonly Taker[];
  const takers = [...usual, ...(reach.own ?? []).filter((own) => toolOf(own) in at)];
  const own = ownOf(reach, by);
  return {
    need,
    tools: takers.map((taker) => ({ taker, way: lacksOf(need, taker, reach) })),
    chosen: by && !own ? undefined : on && (own && at[own.like] === on ? own : toolAt(on)),
  };
}
