import { editBadPlace, editStock } from '../../job/edits';
import type { Job, Stock } from '../../job/job';
import type { Length } from '../../length/length';
import { type Grain, usualSheets } from '../../trade/sheets/stock';
import { unitInHand } from '../../ui/unit-in-hand';
import type { Ask } from './ask';

const titles = {
  long: 'How long it is',
  trim: 'Trimmed off every edge',
  rough: 'Thickness it is bought in',
} as const;

const kinds = { long: 'length', wide: 'length', trim: undefined, rough: 'thickness' } as const;

/** A size of a stock; the usual stands in until it is measured. */
export const stockLength = (stock: Stock, field: keyof typeof titles, usual?: Length): Ask => ({
  as: 'length',
  title: field === 'trim' && stock.kind === 'stick' ? 'Trimmed off both ends' : titles[field],
  kind: kinds[field],
  now: stock[field],
  usual,
  save: (value) => editStock(stock.id, { [field]: value }),
});

/** How wide a stock is; for a stick the widest piece stands in, since that is what it is laid out with. */
export const stockWide = (stock: Stock, widest: Length | undefined): Ask => ({
  as: 'length',
  title: 'How wide it is',
  kind: 'length',
  now: stock.wide,
  usual: stock.kind === 'stick' ? widest : usualSheets(unitInHand()).wide,
  ...(stock.kind === 'stick' ? { word: 'widest piece' } : {}),
  save: (wide) => editStock(stock.id, { wide }),
});

export const stockGrain = (stock: Stock): Ask => ({
  as: 'choice',
  title: 'Which way the face grain runs',
  now: stock.grain ?? 'long',
  choices: [
    { value: 'long', label: 'the long way' },
    { value: 'wide', label: 'across it' },
    { value: 'none', label: 'no way that matters', hint: 'pieces may be turned' },
  ],
  save: (grain) => editStock(stock.id, { grain: grain as Grain }),
});

export const stockHave = (stock: Stock): Ask => ({
  as: 'count',
  title: 'How many are at hand',
  unit: stock.kind === 'stick' ? 'sticks' : 'sheets',
  now: stock.have ?? 0,
  save: (have) => editStock(stock.id, { have }),
});

export const stockMore = (stock: Stock): Ask => ({
  as: 'choice',
  title: 'Whether more can be bought',
  now: stock.noMore ? 'no' : 'yes',
  choices: [
    { value: 'yes', label: 'more can be bought' },
    { value: 'no', label: 'no more can be bought' },
  ],
  save: (more) => editStock(stock.id, { noMore: more === 'no' }),
});

export const stockPrice = (stock: Stock): Ask => ({
  as: 'amount',
  title: 'What one costs',
  now: stock.price,
  save: (price) => editStock(stock.id, { price }),
});

/** Stocks of the same kind that are not themselves like another: their parts may come out of this one too. */
export const stockLike = (stock: Stock, job: Job): Ask => ({
  as: 'choice',
  title: 'The same stuff as',
  now: stock.like ?? '',
  choices: [
    { value: '', label: 'nothing else', hint: 'only its own parts come out of it' },
    ...job.stock
      .filter((s) => s.id !== stock.id && s.kind === stock.kind && s.like === undefined)
      .map((s) => ({ value: s.id, label: s.name || 'Sheet', hint: 'while both measure as thick' })),
  ],
  save: (like) => editStock(stock.id, { like: like || undefined }),
});

/** Where a bad place of a stick begins or ends, off its squared end. A new one has an id nobody has yet. */
export const badPlace = (stock: Stock, id: string, end: 'from' | 'to'): Ask => {
  const k = stock.badPlaces.findIndex((bad) => bad.id === id);
  const now = stock.badPlaces[k];
  const no = k < 0 ? stock.badPlaces.length + 1 : k + 1;
  return {
    as: 'length',
    title:
      end === 'from'
        ? `Bad place ${no} begins, off the squared end`
        : `Bad place ${no} ends, off the same end`,
    kind: 'place',
    now: now?.[end],
    save: (value) => editBadPlace(stock.id, id, { from: now?.from, [end]: value }),
  };
};
