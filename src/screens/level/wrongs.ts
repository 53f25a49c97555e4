import type { Job } from '../../job/job';
import { footId, footOf, standIn } from '../../job/room';
import { feetAcross } from '../../plan/feet-places';
import { levelPlanOf, overOf } from '../../plan/level-plan';
import * as words from './words';

/** All that is wrong with the feet of a case, by how much. */
export function wrongsOf(job: Job, id: string): readonly string[] {
  const level = levelPlanOf(job, id);
  const { found, sets, wedges } = level;
  const across = feetAcross(standIn(job, id));
  const name = (foot: string): string => words.footName(footOf(foot), across);
  return [
    ...(found && !found.ok ? [words.feetErrorText(found.error, across)] : []),
    ...overOf(level).map((foot) => words.over(name(footId(foot)), foot.limit, foot.by)),
    ...(sets && !sets.ok ? [words.travelErrorText(sets.error)] : []),
    ...(sets?.ok
      ? sets.value.feet.flatMap((foot) => (foot.past ? [words.past(name(footId(foot)), foot.past)] : []))
      : []),
    ...(sets?.ok && sets.value.fallsMore ? [words.fallsMore(sets.value.fallsMore)] : []),
    ...Object.entries(wedges).flatMap(([foot, wedge]) =>
      wedge.ok ? [] : [`${name(foot)}: ${words.wedgeErrorText(wedge.error)}.`],
    ),
  ];
}
