import { editScrews } from '../../job/edits';
import type { Screws } from '../../job/install';
import { mostFew } from '../../job/kinds';
import type { BandKind } from '../../length/bands';
import { inches, type Length } from '../../length/length';
import type { UsualScrews } from '../../plan/screw-plan';
import type { Ask } from '../shared/ask';
import { countRefused } from '../shared/refused-words';
import * as words from './screw-words';

type Lengths = 'through' | 'cover' | 'into' | 'part' | 'sunk' | 'washer' | 'run' | 'end' | 'most';

const nothing = inches(0n);

function usualFor(field: Lengths, usual: UsualScrews): Length | undefined {
  if (field === 'through' || field === 'into' || field === 'run' || field === 'part') return usual[field];
  return field === 'cover' || field === 'sunk' || field === 'washer' ? nothing : undefined;
}

/** What screws go into an end is as long as the part is. */
function kindOf({ kind }: Screws, field: Lengths): BandKind {
  if (field === 'run' || (field === 'into' && kind === 'butted')) return 'length';
  return field === 'through' || field === 'into' || field === 'part' ? 'thickness' : 'place';
}

const length = (screws: Screws, field: Lengths, usual: UsualScrews): Ask => ({
  as: 'length',
  title: words.ask(screws, field),
  kind: kindOf(screws, field),
  now: screws[field],
  usual: usualFor(field, usual),
  ...(field === 'through' || field === 'run' || field === 'part' ? { word: 'as planned' } : {}),
  save: (value) => editScrews(screws.id, { [field]: value }),
});

const choice = <K extends string>(
  screws: Screws,
  field: 'bite' | 'slant' | 'gauge' | 'wood',
  list: Readonly<Record<K, string>>,
  now: NoInfer<K>,
): Ask => ({
  as: 'choice',
  title: words.ask(screws, field),
  now,
  choices: Object.entries<string>(list).map(([value, label]) => ({ value, label })),
  save: (value) => editScrews(screws.id, { [field]: value }),
});

/** Every blank of some screws, by its name. */
export const screwAsks = (
  screws: Screws,
  usual: UsualScrews,
): Readonly<Record<keyof typeof words.asks, Ask>> => ({
  name: {
    as: 'text',
    title: words.ask(screws, 'name'),
    now: screws.name ?? words.nameOf(screws),
    save: (name) => editScrews(screws.id, { name: name || undefined }),
  },
  through: length(screws, 'through', usual),
  cover: length(screws, 'cover', usual),
  into: length(screws, 'into', usual),
  part: length(screws, 'part', usual),
  bite: choice(screws, 'bite', words.bites, usual.bite),
  sunk: length(screws, 'sunk', usual),
  washer: length(screws, 'washer', usual),
  slant: choice(screws, 'slant', words.slants, screws.slant ?? '0'),
  gauge: choice(screws, 'gauge', words.gauges, screws.gauge ?? '8'),
  wood: choice(screws, 'wood', words.woods, screws.wood ?? 'hard'),
  run: length(screws, 'run', usual),
  end: length(screws, 'end', usual),
  most: length(screws, 'most', usual),
  rows: {
    as: 'count',
    title: words.ask(screws, 'rows'),
    now: screws.rows,
    refuse: countRefused(mostFew, words.ofRows),
    word: '1',
    save: (rows) => editScrews(screws.id, { rows }),
  },
  many: {
    as: 'count',
    title: words.ask(screws, 'many'),
    now: screws.many,
    refuse: countRefused(999, words.ofScrews),
    save: (many) => editScrews(screws.id, { many }),
  },
});
