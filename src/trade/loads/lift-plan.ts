import { type Ratio, ratio } from '../../length/length';
import { err, ok, type Result } from '../../length/result';
import { isLess, isMore, minus, total } from './ratios';

/** A thing that is lifted by itself, pounds. */
type Load = { readonly id: string; readonly pounds: Ratio };

/** One case of a stack, from the floor up: what it weighs without what comes out of it, and what does. */
type Unit = Load & { readonly drawers: readonly Load[]; readonly loose: readonly Load[] };

/** `people`: one up to what one person may, two above it; by how much, pounds. */
type Lifted = Load & { readonly people: 1 | 2; readonly over?: Ratio };

/** What is done in order. A drawer goes back in only when its case is anchored. */
export type LiftStep =
  | ({ readonly code: 'drawer-out' | 'loose-out' | 'set' | 'drawer-in' | 'loose-in' } & Lifted)
  | { readonly code: 'level' | 'anchor'; readonly id: string };

type LiftError =
  | { readonly code: 'pounds-negative'; readonly id: string }
  | { readonly code: 'most-not-positive' }
  | { readonly code: 'no-units' };

/** One person's load until the shop says another. Common practice, no source. */
export const shopMost = ratio(50n);

/**
 * The order of moving a stack of cases in: what comes out comes out first; the lower case is set, levelled and anchored
 * before the one on it; nothing is put back before its case is anchored.
 *
 * @param units from the floor up, pounds; @param most what one person may, pounds, > 0
 * @returns steps in order, and what the heaviest weighs full, to be told against
 * @example liftPlan(units, ratio(50n)) // Example 3 of loads
 */
export function liftPlan(units: readonly Unit[], most: Ratio): Result<readonly LiftStep[], LiftError> {
  if (units.length === 0) return err({ code: 'no-units' });
  if (!isMore(most)) return err({ code: 'most-not-positive' });
  const bad = units.flatMap((unit) => [unit, ...unit.drawers, ...unit.loose]).find((x) => isLess(x.pounds));
  if (bad) return err({ code: 'pounds-negative', id: bad.id });
  const lifted = <C extends string>(code: C, { id, pounds }: Load) => {
    const over = minus(pounds, most);
    return { code, id, pounds, ...(isMore(over) ? { people: 2 as const, over } : { people: 1 as const }) };
  };
  const out = units.flatMap((unit) => [
    ...unit.drawers.map((x) => lifted('drawer-out', x)),
    ...unit.loose.map((x) => lifted('loose-out', x)),
  ]);
  const up = units.flatMap((unit, k): readonly LiftStep[] => [
    lifted('set', unit),
    ...(k === 0 ? [{ code: 'level', id: unit.id } as const] : []),
    { code: 'anchor', id: unit.id },
  ]);
  const back = units.flatMap((unit) => [
    ...unit.loose.map((x) => lifted('loose-in', x)),
    ...unit.drawers.map((x) => lifted('drawer-in', x)),
  ]);
  return ok([...out, ...up, ...back]);
}

/** What a case would weigh with all of it in, pounds: what taking out saves. @example fullWeight(unit) */
export const fullWeight = (unit: Unit): Ratio =>
  total([unit, ...unit.drawers, ...unit.loose].map(({ pounds }) => pounds));
