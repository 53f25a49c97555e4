import { lacksOf, type Need, type Reach, type Way } from '../trade/machines/limits';
import type { Tool } from '../trade/machines/shop';
import { lengthAt, ripAt } from '../trade/machines/through';
import { toolAt } from '../trade/machines/tools';
import { needOf } from '../trade/setups/need';
import type { Operation } from '../trade/setups/operation';
import type { Plan } from './plan';

/** A tool that may rip or cut to length, and how it would make the cut. */
export type OnTool = { readonly tool: Tool; readonly way: Way };

type ThroughOn = {
  readonly need: Need;
  readonly tools: readonly OnTool[];
  /** The tool that was chosen; nothing where the first that can takes it. */
  readonly chosen: Tool | undefined;
};

/**
 * On what the pieces of a card may be ripped or cut to length; nothing for other cuts. What is said is said of the
 * first piece.
 *
 * @example throughOn(card.operations, plan, reach)?.tools.map((on) => on.tool) // ['fence', 'circular']
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
  const { ripOn, lengthOn } = plan.job.parts[part.id] ?? {};
  const own = op.what === 'rip' ? ripOn : lengthOn;
  const tools = Object.keys(op.what === 'rip' ? ripAt : lengthAt) as readonly Tool[];
  return {
    need,
    tools: tools.map((tool) => ({ tool, way: lacksOf(need, tool, reach) })),
    chosen: own && toolAt(own),
  };
}
