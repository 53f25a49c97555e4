import { editJob, editShelf, editStock } from '../../job/edits';
import type { Job } from '../../job/job';
import { isPositive } from '../../length/length';
import { type Span, strip } from '../../plan/shelf-loads';
import type { Ask } from '../shared/ask';
import { failed } from '../shared/last-notes-words';
import { partWord } from '../shared/part-words';
import { inMeasure } from '../shared/pounds';
import { lengthRefused, stiffRefused } from '../shared/refused-words';
import * as words from './words';

export const nameOf = ({ part }: Pick<Span, 'part'>): string => partWord(part.name);

export const failedAsk = ({ year }: Job): Ask => ({
  as: 'text',
  title: failed,
  now: year.failed ?? '',
  most: 4000,
  save: (said) => editJob({ failed: said || undefined }),
});

/** How stiff its stock is: asked for, never filled in; none of a shelf whose stock is not in the job. */
export function stiffAsk(span: Span, job: Job): Ask | undefined {
  const stock = job.stock.find(({ id }) => id === span.part.stuff);
  return (
    stock &&
    inMeasure('stiff', {
      as: 'amount',
      title: words.stiffTitle(nameOf(span)),
      now: stock.stiff,
      refuse: stiffRefused,
      save: (stiff) => editStock(stock.id, { stiff }),
    })
  );
}

const isEdged = ({ heldBy, band }: Span['inside']): boolean =>
  heldBy !== undefined && band !== undefined && isPositive(band);

/** The strip on its front edge: of a stick of the job, or none; what its own edging does is left out. */
export const stripOf = (span: Span, job: Job): Ask => ({
  as: 'choice',
  title: words.stripTitle(nameOf(span)),
  now: span.notes.strip ?? '',
  choices: [
    { value: '', label: isEdged(span.inside) ? words.edgingAlone : words.noStrip },
    ...job.stock.map((s) => ({ value: s.id, label: words.stripOf(s.name) })),
  ],
  save: (id) => editShelf(span.part.id, { strip: id || undefined }),
});

export const tallOf = (span: Span): Ask => ({
  as: 'length',
  title: words.tallTitle(nameOf(span)),
  kind: 'length',
  now: span.notes.tall,
  usual: strip.tall,
  refuse: lengthRefused,
  save: (tall) => editShelf(span.part.id, { tall }),
});

export const backOf = (span: Span): Ask => ({
  as: 'choice',
  title: words.backTitle(nameOf(span)),
  now: span.notes.glued ? 'glued' : 'loose',
  choices: (['loose', 'glued'] as const).map((value) => ({ value, ...words.backs[value] })),
  save: (how) => editShelf(span.part.id, { glued: how === 'glued' }),
});

export const yearsOf = (span: Span): Ask => ({
  as: 'choice',
  title: words.yearsTitle(nameOf(span)),
  now: span.notes.years ? 'years' : 'while',
  choices: (['while', 'years'] as const).map((value) => ({ value, ...words.lengths[value] })),
  save: (how) => editShelf(span.part.id, { years: how === 'years' }),
});

const uses = ['other', 'school', 'library', 'hospital'] as const;

export const useOf = (span: Span): Ask => ({
  as: 'choice',
  title: words.useTitle(nameOf(span)),
  now: span.notes.use ?? 'other',
  choices: uses.map((value) => ({ value, ...words.useOf(value) })),
  save: (use) => editShelf(span.part.id, { use: uses.find((x) => x === use) }),
});
