import type { Length } from '../../length/length';
import type { Rounded } from '../../length/round';
import { fineOf, markAt } from '../../length/tape';
import { type JoinPlace, joinPlace, joinsOf, middlesOf } from '../../plan/join-place';
import type { Plan } from '../../plan/plan';
import { opId } from '../../trade/setups/operation';
import type { FigureStep } from '../shared/figure-by-figure';
import * as words from './join-words';

/**
 * Joint by joint: how deep, how far from the face, and every middle along it; none where nothing holds it. What is of
 * a meeting of the case is bored in Cuts.
 */
export const joinSteps = (plan: Plan, of: string, lengths: readonly Length[]): readonly FigureStep[] =>
  joinsOf(plan.job, of)
    .filter(({ at }) => !at)
    .flatMap((join) => stepsOf(plan, of, joinPlace(plan, join, lengths)));

type Deep = readonly [own: string, title: string, figure: Length, says: string];

function stepsOf({ job: { tape } }: Plan, of: string, { join, is }: JoinPlace): readonly FigureStep[] {
  if (!is?.found.ok) return [];
  const step = (own: string, title: string, figure: Rounded, says: string): FigureStep => ({
    id: `${join.id}~${own}`,
    op: opId(`${of}~bench`, `joins~${join.id}~${own}`, '1'),
    title: `${words.nameOf(join)}: ${title}`,
    figure,
    kept: figure.value,
    says,
  });
  const marks = middlesOf(is);
  return [
    ...deepOf(is).map(([own, title, figure, says]) => step(own, title, markAt(figure, fineOf(tape)), says)),
    ...marks.map((x, k) =>
      step(`mark${k + 1}`, words.oneMark(k + 1, marks.length), markAt(x, tape), words.oneMarkSays),
    ),
  ];
}

function deepOf(is: NonNullable<JoinPlace['is']>): readonly Deep[] {
  if (!is.found.ok) return [];
  if (is.by === 'dowel') {
    const { inFace, inEdge, from } = is.found.value;
    return [
      ['face', words.oneFace, inFace, words.oneDeepSays],
      ['edge', words.oneEdge, inEdge, words.oneDeepSays],
      ['from', words.oneFrom, from, words.oneFromSays],
    ];
  }
  if (is.by === 'biscuit') {
    const { slotDeep, from } = is.found.value;
    return [
      ['slot', words.oneSlot, slotDeep, words.oneDeepSays],
      ['from', words.oneFrom, from, words.oneFromSays],
    ];
  }
  return [['long', words.oneLong, is.found.value.long, words.oneLongSays]];
}
