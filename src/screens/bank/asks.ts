import { editBank, editFront, editThing } from '../../job/edits';
import type { InDrawer, Job } from '../../job/job';
import type { Length, Ratio } from '../../length/length';
import { stockOfBank } from '../../trade/boxes/drawers';
import type { Bank, BankStock } from '../../trade/fronts/bank';
import { frontNo } from '../../trade/fronts/bank';
import type { Ask } from '../shared/ask';
import * as things from './contents-words';
import { type BankLength, bankFieldNames, bankStockNames } from './words';

export const bankLength = (bank: Bank, field: BankLength, usual?: Length): Ask => ({
  as: 'length',
  title: bankFieldNames[field],
  now: bank[field],
  usual,
  signed: field === 'step' || field === 'sill',
  save: (value) => editBank(bank.id, { [field]: value }),
});

export const bankAmount = (
  bank: Bank,
  field: 'ratio' | 'slope' | 'rating',
  at: { readonly title: string; readonly usual?: Ratio },
): Ask => ({
  as: 'amount',
  title: at.title,
  now: bank[field],
  usual: at.usual,
  save: (value) => editBank(bank.id, { [field]: value }),
});

export const bankCount = (
  bank: Bank,
  field: 'count' | 'across' | 'bay' | 'pulls' | 'tails' | 'frontScrews',
  title: string,
): Ask => ({
  as: 'count',
  title,
  now: bank[field],
  save: (value) =>
    editBank(bank.id, {
      [field]: value === undefined ? undefined : Math.min(value, field === 'pulls' ? 2 : 24),
    }),
});

export const bankName = (bank: Bank): Ask => ({
  as: 'text',
  title: 'Name of these drawers',
  now: bank.name,
  save: (name) => editBank(bank.id, { name }),
});

/** The case they stand in; none: an opening of its own. */
export const bankCase = (bank: Bank, job: Job): Ask => ({
  as: 'choice',
  title: 'What the drawers go into',
  now: bank.of ?? '',
  choices: [
    ...job.cases.map((c) => ({ value: c.id, label: c.name || 'Case' })),
    { value: '', label: 'an opening measured', hint: 'in no case of this job' },
  ],
  save: (of) =>
    editBank(bank.id, {
      of: of === '' ? undefined : of,
      over: undefined,
      ...(of === '' ? { across: undefined } : {}),
    }),
});

/** What the bank stands on in its bay. */
export const bankOver = (bank: Bank, job: Job): Ask => {
  const c = job.cases.find((x) => x.id === bank.of);
  const kind = c?.hasFrame ? 'rail' : 'fixed';
  const floors = (c?.inside ?? []).filter((i) => i.bay === bank.bay && i.kind === kind);
  return {
    as: 'choice',
    title: 'What the drawers stand on',
    now: bank.over ?? '',
    choices: [
      { value: '', label: c?.hasFrame ? 'the bottom rail' : 'the bottom' },
      ...floors.map((i, k) => ({
        value: i.id,
        label: `${kind === 'rail' ? 'middle rail' : 'fixed shelf'}${floors.length > 1 ? ` ${k + 1}` : ''}`,
      })),
    ],
    save: (over) => editBank(bank.id, { over: over === '' ? undefined : over }),
  };
};

type Choice<K extends keyof Bank> = readonly {
  readonly value: Bank[K] & string;
  readonly label: string;
  readonly hint?: string;
}[];

const choice = <K extends 'fit' | 'share' | 'order' | 'goes' | 'bottomHow' | 'tailsHow'>(
  bank: Bank,
  field: K,
  at: { readonly title: string; readonly choices: Choice<K> },
): Ask => ({
  as: 'choice',
  title: at.title,
  now: bank[field],
  choices: at.choices,
  save: (value) => editBank(bank.id, { [field]: value }),
});

export const bankFit = (bank: Bank): Ask =>
  choice(bank, 'fit', {
    title: 'How the fronts sit',
    choices: [
      { value: 'inset', label: 'inset', hint: 'in the opening, a gap all round' },
      { value: 'overlay', label: 'overlay', hint: 'over the edges of the case' },
    ],
  });

export const bankShare = (bank: Bank): Ask =>
  choice(bank, 'share', {
    title: 'How the heights go',
    choices: [
      { value: 'equal', label: 'all equal' },
      { value: 'step', label: 'by a step', hint: 'each so much higher than the one above' },
      { value: 'ratio', label: 'by a ratio', hint: 'each so many times the one above' },
      { value: 'weights', label: 'by shares', hint: 'a share for each front' },
    ],
  });

export const bankOrder = (bank: Bank): Ask =>
  choice(bank, 'order', {
    title: 'Which front goes on first',
    choices: [
      { value: 'down', label: 'top down', hint: 'what is left over comes at the floor' },
      { value: 'up', label: 'bottom up', hint: 'each rests on the shims of the one below' },
    ],
  });

export const bankGoes = (bank: Bank): Ask =>
  choice(bank, 'goes', {
    title: 'Where a difference goes',
    choices: goesChoices,
  });

export const goesChoices: Choice<'goes'> = [
  { value: 'gaps', label: 'the other gaps', hint: 'all that are left share it alike' },
  { value: 'fronts', label: 'the other fronts', hint: 'trimmed, so that the gaps stay as wanted' },
  { value: 'last', label: 'the last gap', hint: 'the others stay as wanted' },
];

export const bankBottom = (bank: Bank): Ask =>
  choice(bank, 'bottomHow', {
    title: 'How the bottom goes in',
    choices: [
      { value: 'captured', label: 'captured', hint: 'in a groove all round, during the glue-up' },
      { value: 'slid-in', label: 'slid in', hint: 'under a short back' },
    ],
  });

export const bankTails = (bank: Bank): Ask =>
  choice(bank, 'tailsHow', {
    title: 'How the tails are laid out',
    choices: [
      { value: 'free', label: 'freely', hint: 'any number, any pin' },
      { value: 'template', label: 'by a template', hint: 'its pitch decides; heights in whole pitches' },
    ],
  });

export const bankStock = (bank: Bank, stock: BankStock, job: Job): Ask => ({
  as: 'choice',
  title: `What the ${bankStockNames[stock]} are of`,
  now: stockOfBank(bank, stock) ?? '',
  choices: [
    ...job.stock.map((s) => ({ value: s.id, label: s.name || 'Sheet' })),
    ...(bank.stocks[stock] && stock.startsWith('box') && stock !== 'boxBottom'
      ? [{ value: '', label: 'as the sides' }]
      : []),
  ],
  save: (id) => editBank(bank.id, { [`${stock}Stock`]: id === '' ? undefined : id }),
});

export const frontHigh = (bank: Bank, no: number, shared?: Length): Ask => ({
  as: 'length',
  title: `Height of front ${no}, shared out when blank`,
  now: frontNo(bank, no).high,
  usual: shared,
  word: 'shared',
  save: (high) => editFront(bank.id, no, { high }),
});

export const frontWeight = (bank: Bank, no: number, usual: Ratio): Ask => ({
  as: 'amount',
  title: `Share of front ${no} beside the others`,
  now: frontNo(bank, no).weight,
  usual,
  save: (weight) => editFront(bank.id, no, { weight }),
});

export const boxHigh = (bank: Bank, no: number, most?: Length): Ask => ({
  as: 'length',
  title: `Height of the box of drawer ${no}`,
  now: frontNo(bank, no).boxHigh,
  usual: most,
  word: 'at most',
  save: (value) => editFront(bank.id, no, { boxHigh: value }),
});

// A thing that goes into a drawer.

export const thingTall = (thing: InDrawer): Ask => ({
  as: 'length',
  title: things.howTall(thing),
  now: thing.tall,
  save: (tall) => editThing(thing.id, { tall }),
});

export const thingLong = (thing: InDrawer): Ask => ({
  as: 'length',
  title: things.howLong(thing),
  now: thing.long,
  save: (long) => editThing(thing.id, { long }),
});

export const thingCount = (thing: InDrawer): Ask => ({
  as: 'count',
  title: things.howMany(thing),
  now: thing.count,
  save: (count) => editThing(thing.id, { count: count ?? 1 }),
});

export const thingName = (thing: InDrawer): Ask => ({
  as: 'text',
  title: things.what(thing),
  now: thing.name,
  save: (name) => editThing(thing.id, { name }),
});

export const thingHeavy = (thing: InDrawer): Ask => ({
  as: 'amount',
  title: things.howHeavy(thing),
  now: thing.heavy,
  save: (heavy) => editThing(thing.id, { heavy }),
});
