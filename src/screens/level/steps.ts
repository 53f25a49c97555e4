import { footId } from '../../job/room';
import { isZero, type Length, zero } from '../../length/length';
import type { Rounded } from '../../length/round';
import { fineOf, markAt, type Tape } from '../../length/tape';
import { footStep } from '../../plan/feet-set';
import { footFigures, type LevelPlan, overOf } from '../../plan/level-plan';
import { installId } from '../../trade/setups/install-steps';
import { capital } from '../shared/capital';
import * as words from './words';

/** One foot to be set, or the look at the level both ways. */
export type LevelStep = {
  readonly id: string;
  readonly op: string;
  readonly title: string;
  readonly figure: Rounded | undefined;
  /** A shim or a foot goes there; else the plinth is scribed, or the level laid on. */
  readonly lifts: boolean;
  /** What the tick keeps. */
  readonly kept: Length;
  readonly says: string;
  /** Why it may not be set to that: such a step is not ticked. */
  readonly refused: readonly string[];
  /** What else is wrong with it. */
  readonly wrong: readonly string[];
};

/** The id of the last step in an address. */
const whole = 'whole';

/**
 * Foot by foot from the high point on, then the case as a whole; nothing while the feet do not work out.
 *
 * @param across feet in a row, for their names
 */
export function levelSteps(
  id: string,
  level: LevelPlan,
  at: { readonly tape: Tape; readonly across: number },
): readonly LevelStep[] {
  if (!level.found?.ok || footFigures(level).size === 0) return [];
  const { shims } = level.found.value;
  const figures = footFigures(level);
  const feet = shims.map((foot): LevelStep => {
    const key = footId(foot);
    const name = words.footName(foot, at.across);
    const set = level.sets?.ok === true;
    const wedge = level.wedges[key];
    const figure = figures.get(key) ?? foot.shim;
    const { scribed } = level;
    const high = isZero(foot.shim) && !set && !scribed;
    return {
      id: key,
      op: footStep(id, key),
      title: scribed ? words.plinthAt(name) : set ? words.setOf(name) : words.shimOf(name),
      figure: markAt(figure, fineOf(at.tape)),
      lifts: !scribed,
      kept: figure,
      says: high
        ? `${words.highPoint}.`
        : wedge?.ok
          ? `${capital(words.wedgeIn(wedge.value, at.tape))}. ${words.sameLine}`
          : words.sameLine,
      refused: refusedOf(level, key, name),
      wrong: wedge && !wedge.ok ? [`${capital(words.wedgeErrorText(wedge.error))}.`] : [],
    };
  });
  const nothing = feet.filter(({ kept }) => isZero(kept));
  const last: LevelStep = {
    id: whole,
    op: installId(id, 'level'),
    title: words.whole,
    figure: undefined,
    lifts: false,
    kept: zero,
    says: words.wholeSays,
    refused: [],
    wrong: [],
  };
  return [...nothing, ...feet.filter((step) => !nothing.includes(step)), last];
}

/** A shim over what is sound, or a foot past its travel: said as on the page of all feet. */
function refusedOf(level: LevelPlan, key: string, name: string): readonly string[] {
  const set = level.sets?.ok ? level.sets.value.feet.find((foot) => footId(foot) === key) : undefined;
  return [
    ...overOf(level)
      .filter((foot) => footId(foot) === key)
      .map(({ limit, by }) => words.over(name, limit, by)),
    ...(set?.past ? [words.past(name, set.past)] : []),
  ];
}
