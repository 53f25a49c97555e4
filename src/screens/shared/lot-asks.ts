import { editThing } from '../../job/edits';
import type { Job } from '../../job/job';
import type { Lot } from '../../job/loads';
import type { Length } from '../../length/length';
import type { Part } from '../../trade/carcass/part';
import type { Ask } from './ask';
import * as words from './lot-words';
import { partWord } from './part-words';
import { inMeasure } from './pounds';
import { countRefused, lengthRefused, placeRefused, weightRefused } from './refused-words';

type Size = 'tall' | 'long' | 'wide';

const titles = { tall: words.howTall, long: words.howLong, wide: words.howWide } as const;

export const thingSize = (thing: Lot, field: Size): Ask => ({
  as: 'length',
  title: titles[field](thing),
  kind: 'place',
  now: thing[field],
  refuse: lengthRefused,
  save: (value) => editThing(thing.id, { [field]: value }),
});

/** Where its middle stands on a shelf that spans so far. */
export const thingFrom = (thing: Lot, span: Length, usual: Length): Ask => ({
  as: 'length',
  title: words.howFar(thing),
  kind: 'place',
  now: thing.from,
  usual,
  refuse: placeRefused(span, words.rightEnd),
  save: (from) => editThing(thing.id, { from }),
});

export const thingCount = (thing: Lot): Ask => ({
  as: 'count',
  title: words.howMany(thing),
  now: thing.count,
  refuse: countRefused(999, words.ofThem),
  save: (count) => editThing(thing.id, { count: count ?? 1 }),
});

export const thingName = (thing: Lot): Ask => ({
  as: 'text',
  title: words.what(thing),
  now: thing.name,
  save: (name) => editThing(thing.id, { name }),
});

export const thingHeavy = (thing: Lot): Ask =>
  inMeasure('weight', {
    as: 'amount',
    title: words.howHeavy(thing),
    now: thing.heavy,
    refuse: weightRefused,
    save: (heavy) => editThing(thing.id, { heavy }),
  });

export const thingLives = (thing: Lot): Ask => ({
  as: 'text',
  title: words.lives(thing),
  now: thing.lives ?? '',
  save: (lives) => editThing(thing.id, { lives: lives || undefined }),
});

/** Parts that things stand on: shelves and trays. */
export const holds = ({ name }: Part): boolean =>
  name.role === 'inside' && name.kind !== 'rail' && name.kind !== 'stop';

/** Where it goes: a drawer of any bank, a shelf or a tray of any case, or nowhere yet. */
export const thingGoes = (thing: Lot, { banks, cases }: Job, parts: readonly Part[]): Ask => ({
  as: 'choice',
  title: words.goes(thing),
  now: placeOf(thing),
  choices: [
    ...banks.flatMap(drawersOf),
    ...parts.filter(holds).map((part) => {
      const name = partWord(part.name);
      const c = cases.find(({ id }) => id === part.of);
      return {
        value: `part ${part.id}`,
        label: cases.length > 1 ? words.ofCase(c?.name || 'Case', name) : name,
      };
    }),
    { value: '', label: words.nowhere },
  ],
  save: (place) => editThing(thing.id, placed(place)),
});

/** The drawers of a bank, column by column. */
const drawersOf = ({ id, name, count, across }: Job['banks'][number]) =>
  Array.from({ length: across * count }, (_, k) => {
    const [column, front] = [Math.floor(k / count) + 1, (k % count) + 1];
    return {
      value: drawerAt(id, front, column),
      label: words.drawerNo(name || 'Drawers', front, across > 1 ? column : undefined),
    };
  });

const drawerAt = (bank: string, front: number, column = 1): string => `drawer ${bank} ${front} ${column}`;

const placeOf = ({ bank, front, column, part }: Lot): string =>
  part !== undefined
    ? `part ${part}`
    : bank !== undefined && front !== undefined
      ? drawerAt(bank, front, column)
      : '';

/** A thing stands in one place: what the other held of it is taken away. */
function placed(place: string) {
  const drawer = { bank: undefined, front: undefined, column: undefined };
  const none = { ...drawer, part: undefined, piece: undefined, from: undefined };
  const [what, id, no, column] = place.split(' ');
  if (what === 'part') return { ...none, part: id };
  return what === 'drawer' ? { ...none, bank: id, front: Number(no), column: Number(column) } : none;
}

/** Which one of several alike. */
export const thingPiece = (thing: Lot, of: number): Ask => ({
  as: 'count',
  title: words.which(thing),
  now: thing.piece ?? 1,
  refuse: countRefused(of, words.ofThem),
  save: (piece) => editThing(thing.id, { piece: piece ?? 1 }),
});
