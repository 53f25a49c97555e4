import { editPutUp } from '../../job/edits';
import { roomIn } from '../../job/room';
import type { Length } from '../../length/length';
import { putUpOf } from '../../plan/cleat-on';
import { cleatAt, type WithCases } from '../../plan/cleat-plan';
import { cleatWrong } from '../../trade/install/cleat-height';
import type { Ask } from './ask';
import * as words from './cleat-words';
import { lengthRefused } from './refused-words';

/** How high the cleat of a case stands: the same blank wherever it is asked. @param name where there are several */
export function lowerEdgeAsk(on: WithCases, place: string, name: string): Ask {
  const cleat = cleatAt(on, place);
  const { height } = cleat;
  return {
    as: 'length',
    title: words.lowerEdge(name),
    kind: 'place',
    now: putUpOf(on.job, place).cleatAt,
    usual: height?.by === 'case' ? height.low : undefined,
    word: 'as in the case',
    refuse: (x) => {
      const wrong = cleatWrong({ ...cleat.plan, inCase: undefined }, x);
      return wrong ? words.wrongText(wrong, cleat.on) : lengthRefused(x);
    },
    save: (value) => editPutUp(place, { cleatAt: value }),
  };
}

/** Where the cleat of one case of several begins and ends along the wall. */
export function stretchAsks(on: WithCases, place: string, name: string) {
  const own = putUpOf(on.job, place);
  const room = roomIn(on.job);
  const ask = (title: string, field: 'cleatFrom' | 'cleatTo', usual: Length | undefined): Ask => ({
    as: 'length',
    title,
    kind: 'place',
    now: own[field],
    usual,
    word: 'as for all',
    save: (value) => editPutUp(place, { [field]: value }),
  });
  return {
    from: ask(words.begins(name), 'cleatFrom', room.cleatFrom),
    to: ask(words.ends(name), 'cleatTo', room.cleatTo),
  };
}

export function whereAsk(on: WithCases, place: string): Ask {
  return {
    as: 'choice',
    title: words.where,
    now: cleatAt(on, place).on,
    choices: Object.entries(words.wheres).map(([value, said]) => ({ value, ...said })),
    save: (to) => editPutUp(place, { cleatOn: to === 'wall' ? 'wall' : 'case' }),
  };
}
