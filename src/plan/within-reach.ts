import { compare } from '../length/length';
import { type Tape, unitsOf } from '../length/tape';
import type { Part } from '../trade/carcass/part';
import { type TooSmall, tooSmallFor } from '../trade/machines/least-sizes';
import { isClear, type Need, type Reach, type Way } from '../trade/machines/limits';
import { overhangOf } from '../trade/machines/overhang';
import { ownOf, shopAt } from '../trade/machines/own-machine';
import { type Remedy, remediesFor } from '../trade/machines/remedies';
import { passedOver, waysFor } from '../trade/machines/taker';
import { toolAt } from '../trade/machines/tool-at';
import { needOf } from '../trade/setups/need';
import type { Operation } from '../trade/setups/operation';

/** Whether the machine of an operation can take it; where not, what can, or what would do. */
type WithinReach = {
  readonly need: Need;
  readonly own: Way;
  /** What is tried before the machine that takes it, or in vain, with what each lacks. */
  readonly passed: readonly Way[];
  readonly can?: Way | undefined;
  readonly remedies: readonly Remedy[];
  readonly small: readonly TooSmall[];
  readonly hangs?: ReturnType<typeof overhangOf>['hangs'];
};

/** The parts of a plan, and the marks of its job. */
type Cut = { readonly parts: readonly Part[]; readonly job: { readonly tape: Tape } };

/**
 * What the shop's figures say to an operation: nothing for steps at the bench and cuts no figure limits.
 *
 * @param plan that it is of; @param reach the shop's figures and what its arbor carries
 * @example withinReach(rip, plan, reach)?.own.lacks // the fence is 4 short
 */
export function withinReach(op: Operation, { parts, job }: Cut, reach: Reach): WithinReach | undefined {
  const part = parts.find((p) => p.id === op.part);
  const planned = ownOf(reach, op.setup.own?.id) ?? toolAt(op.setup.machine);
  const need = part && needOf(op, part, unitsOf(job.tape));
  if (!need || !planned) return undefined;
  const [found, ...others] = waysFor(need, planned, reach);
  if (!found) return undefined;
  const at = shopAt(reach, found.own);
  const { hangs, asks } = overhangOf(need, found, at);
  const own = asks ? { ...found, asks: [...found.asks, asks] } : found;
  const said = { need, own, small: tooSmallFor(need, own, at), ...(hangs ? { hangs } : {}) };
  if (own.lacks.length === 0) return { ...said, passed: passedOver(need, planned, reach), remedies: [] };
  const can = others.find(isClear);
  const before = can ? others.slice(0, others.indexOf(can)) : others;
  const passed = before.filter(({ lacks }) => lacks.length > 0);
  return { ...said, passed, can, remedies: can ? [] : remediesFor(need, reach) };
}

/** Of several pieces the one that falls short of each least size by most. */
export function worst(small: readonly TooSmall[]): readonly TooSmall[] {
  const byCode = new Map<TooSmall['code'], TooSmall>();
  for (const one of small) {
    const had = byCode.get(one.code);
    if (!had || compare(one.by, had.by) > 0) byCode.set(one.code, one);
  }
  return [...byCode.values()];
}
