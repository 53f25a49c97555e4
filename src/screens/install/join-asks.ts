import { editJoin } from '../../job/edits';
import type { Join } from '../../job/install';
import { mostFew } from '../../job/kinds';
import { half, type Length } from '../../length/length';
import type { JoinPlace } from '../../plan/join-place';
import type { Ask } from '../shared/ask';
import { countRefused, lengthRefused } from '../shared/refused-words';
import * as words from './join-words';

type Lengths =
  | 'part'
  | 'mate'
  | 'run'
  | 'end'
  | 'most'
  | 'from'
  | 'thick'
  | 'long'
  | 'leave'
  | 'seat'
  | 'head';

function usualFor(field: Lengths, { usual, join, is }: JoinPlace): Length | undefined {
  const part = join.part ?? usual.part;
  const size = is?.by === 'dowel' && is.found.ok ? is.found.value.size : undefined;
  if (field === 'from') return part && half(part);
  if (field === 'thick' || field === 'long') return size?.[field];
  return field === 'seat' || field === 'head' ? undefined : usual[field];
}

const length = (place: JoinPlace, field: Lengths): Ask => ({
  as: 'length',
  title: words.ask(place.join, field),
  kind: field === 'run' ? 'length' : field === 'part' || field === 'mate' ? 'thickness' : 'place',
  now: place.join[field],
  usual: usualFor(field, place),
  ...(field === 'part' || field === 'mate' || field === 'run' ? { word: 'as planned' } : {}),
  refuse: lengthRefused,
  save: (value) => editJoin(place.join.id, { [field]: value }),
});

/** Every blank of a join, by its name. */
export function joinAsks(place: JoinPlace): Readonly<Record<keyof typeof words.asks, Ask>> {
  const { join } = place;
  const own = (field: Lengths) => length(place, field);
  return {
    name: {
      as: 'text',
      title: words.ask(join, 'name'),
      now: words.nameOf(join),
      save: (name) => editJoin(join.id, { name: name || undefined }),
    },
    part: own('part'),
    mate: own('mate'),
    run: own('run'),
    end: own('end'),
    most: own('most'),
    from: own('from'),
    thick: own('thick'),
    long: own('long'),
    leave: own('leave'),
    seat: own('seat'),
    head: own('head'),
    flush: lying(join),
    many: {
      as: 'count',
      title: words.ask(join, 'many'),
      now: join.many,
      word: '1',
      refuse: countRefused(mostFew, words.ofJoints),
      save: (many) => editJoin(join.id, { many }),
    },
  };
}

const lying = (join: Join): Ask => ({
  as: 'choice',
  title: words.ask(join, 'flush'),
  now: join.flush ? 'plane' : 'corner',
  choices: Object.entries(words.lies).map(([value, label]) => ({ value, label })),
  save: (value) => editJoin(join.id, { flush: value === 'plane' }),
});
