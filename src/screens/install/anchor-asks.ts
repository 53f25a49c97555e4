import { editPutUp } from '../../job/edits';
import { usualIn } from '../../job/in-units';
import { mostFew } from '../../job/kinds';
import { type Length, zero } from '../../length/length';
import { putUpOf } from '../../plan/cleat-on';
import { usualCleat } from '../../plan/cleat-plan';
import type { Plan } from '../../plan/plan';
import { fixingsOf } from '../../plan/put-up-plan';
import type { Ask } from '../shared/ask';
import { lowerEdgeAsk, whereAsk } from '../shared/cleat-asks';
import { countRefused } from '../shared/refused-words';
import * as words from './anchor-words';
import { gauges } from './screw-words';

type LengthField = 'cleatThick' | 'cleatWide' | 'cover' | 'into';

/** Every blank of an anchor card. */
export function anchorAsks(plan: Plan, place: string) {
  const own = putUpOf(plan.job, place);
  const usual = usualCleat(plan, place);
  const many = fixingsOf(plan, place);
  const length = (title: string, field: LengthField, stands: Length | undefined): Ask => ({
    as: 'length',
    title,
    kind: field === 'cleatWide' ? 'place' : 'thickness',
    now: own[field],
    usual: stands,
    ...(field === 'cleatThick' || field === 'cleatWide' ? { word: 'as planned' } : {}),
    save: (value) => editPutUp(place, { [field]: value }),
  });
  const fixings: Ask = {
    as: 'count',
    title: words.fixings,
    now: own.fixings,
    refuse: countRefused(mostFew, words.ofFixings),
    ...(many === undefined ? {} : { word: `${many}` }),
    save: (value) => editPutUp(place, { fixings: value }),
  };
  return {
    ...choicesOf(plan, place),
    fixings,
    cover: length(words.cover, 'cover', zero),
    into: length(words.into, 'into', undefined),
    thick: length(words.thick, 'cleatThick', usual.thick),
    wide: length(words.wide, 'cleatWide', usual.wide),
    where: whereAsk(plan, place),
    at: lowerEdgeAsk(plan, place, ''),
  };
}

function choicesOf(plan: Plan, place: string) {
  const own = putUpOf(plan.job, place);
  const wall: Ask = {
    as: 'choice',
    title: words.wall,
    now: own.wall ?? 'framing',
    choices: Object.entries(words.walls).map(([value, said]) => ({ value, ...said })),
    save: (value) => editPutUp(place, { wall: value === 'sheathing' ? 'sheathing' : 'framing' }),
  };
  const washers: Ask = {
    as: 'choice',
    title: words.washers,
    now: own.washers === undefined ? 'unsaid' : own.washers ? 'yes' : 'no',
    choices: Object.entries(words.washerWords(usualIn(plan.job))).map(([value, said]) => ({
      value,
      ...said,
    })),
    save: (value) => editPutUp(place, { washers: value === 'unsaid' ? undefined : value === 'yes' }),
  };
  const gauge: Ask = {
    as: 'choice',
    title: words.gauge,
    now: own.gauge ?? '8',
    choices: Object.entries(gauges).map(([value, label]) => ({ value, label })),
    save: (value) => editPutUp(place, { gauge: value === '6' ? '6' : value === '10' ? '10' : '8' }),
  };
  return { wall, washers, gauge };
}
