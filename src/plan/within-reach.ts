import type { Part } from '../trade/carcass/part';
import { type TooSmall, tooSmallFor } from '../trade/machines/least-sizes';
import {
  isClear,
  type Need,
  type Reach,
  type Remedy,
  remediesFor,
  type Way,
  waysFor,
} from '../trade/machines/limits';
import { toolAt } from '../trade/machines/tools';
import { needOf } from '../trade/setups/need';
import type { Operation } from '../trade/setups/operation';

/** Whether the machine of an operation can take it; where not, what can, or what would do. */
type WithinReach = {
  readonly need: Need;
  readonly own: Way;
  readonly can?: Way | undefined;
  readonly remedies: readonly Remedy[];
  readonly small: readonly TooSmall[];
};

/**
 * What the shop's figures say to an operation: nothing for steps at the bench and cuts no figure limits.
 *
 * @param parts of the plan; @param reach the shop's figures and what its arbor carries
 * @example withinReach(rip, parts, reach)?.own.lacks // the fence is 4 short
 */
export function withinReach(op: Operation, parts: readonly Part[], reach: Reach): WithinReach | undefined {
  const part = parts.find((p) => p.id === op.part);
  const planned = toolAt(op.setup.machine);
  const need = part && needOf(op, part);
  if (!need || !planned) return undefined;
  const [own, ...others] = waysFor(need, planned, reach);
  if (!own) return undefined;
  const small = tooSmallFor(need, own, reach);
  if (own.lacks.length === 0) return { need, own, remedies: [], small };
  const can = others.find(isClear);
  return { need, own, can, remedies: can ? [] : remediesFor(need, reach), small };
}
