import { ownGone } from '../../plan/own-gone';
import type { Plan } from '../../plan/plan';
import { withinReach, worst } from '../../plan/within-reach';
import type { Reach } from '../../trade/machines/limits';
import { shopAt } from '../../trade/machines/own-machine';
import { plateAt } from '../../trade/machines/plate';
import type { Operation } from '../../trade/setups/operation';
import { goneText } from './gone-text';
import { hangsText, insteadText, lacksText, plateText, remedyText, tooSmallText } from './limit-words';

/** What the shop's figures say to the cuts of a setting: what its machine cannot take, and what can. */
export function reachFound(operations: readonly Operation[], plan: Plan, reach: Reach) {
  const each = operations.flatMap((op) => {
    const found = withinReach(op, plan, reach);
    return found ? [{ op, ...found }] : [];
  });
  const short = each.filter(({ own }) => own.lacks.length > 0);
  const found = short[0] ?? each.find(({ passed }) => passed.length > 0) ?? each[0];
  if (!found) return undefined;
  const { tape } = plan.job;
  const { need, own, passed, can, remedies } = found;
  const hangs = each.find((one) => one.hangs)?.hangs;
  const says = [
    ...[own, ...passed].map((way) => lacksText(way, tape)),
    ...remedies.map((remedy) => remedyText(remedy, tape)),
    ...each.flatMap(({ need: cut, own: way }) =>
      cut.cut === 'slot' && cut.in === 'face'
        ? [plateText(plateAt(cut.off, shopAt(reach, way.own)), tape)]
        : [],
    ),
    ...worst(each.flatMap(({ small }) => small)).map((one) => tooSmallText(one, tape)),
  ];
  return {
    own,
    can,
    lacking: short.map(({ op }) => op),
    says: [...new Set(says)].filter(Boolean),
    hangs: hangs && hangsText(hangs, tape),
    instead: can && insteadText(can, need, tape),
  };
}

/** What is said of machines these cuts were put on that the shop has not. */
export const goneSays = (operations: readonly Operation[], { job }: Plan, reach: Reach): readonly string[] =>
  ownGone(operations, job, reach).map(({ name }) => goneText(name));

/** All of it as sentences, where nothing can be tapped. */
export function reachSays(operations: readonly Operation[], plan: Plan, reach: Reach): readonly string[] {
  const found = reachFound(operations, plan, reach);
  const within = found ? [...found.says, found.hangs, found.instead] : [];
  return [...goneSays(operations, plan, reach), ...within].flatMap((line) => (line ? [line] : []));
}
