import { keeper } from '../length/keeper';
import type { Operation } from '../trade/setups/operation';
import type { Plan } from './plan';

const byPart = keeper<Plan, ReadonlyMap<string, readonly Operation[]>>();

/** The operations of one part, in the order of the plan; none for a part that has none. */
export const workOn = (plan: Plan, part: string): readonly Operation[] =>
  byPart(plan, [], () => sorted(plan)).get(part) ?? [];

function sorted({ operations }: Plan): ReadonlyMap<string, readonly Operation[]> {
  const parts = new Map<string, Operation[]>();
  for (const op of operations) {
    const own = parts.get(op.part);
    if (own) own.push(op);
    else parts.set(op.part, [op]);
  }
  return parts;
}
