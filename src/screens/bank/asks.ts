import { editBoxJoint, isOfJoint } from '../../job/box-joint';
import { editBank, editFront } from '../../job/edits';
import type { Change } from '../../job/entry';
import { editHanging, isOfHanging } from '../../job/hanging';
import type { Job } from '../../job/job';
import { mostFew } from '../../job/kinds';
import type { BandKind } from '../../length/bands';
import type { Length, Ratio } from '../../length/length';
import { stockOfBank } from '../../trade/boxes/drawers';
import { numberOf } from '../../trade/carcass/stands-as';
import type { Bank, BankStock } from '../../trade/fronts/bank';
import { frontNo } from '../../trade/fronts/bank';
import { usualBank } from '../../trade/fronts/usual-bank';
import type { Ask } from '../shared/ask';
import { inMeasure } from '../shared/pounds';
import { countRefused, weightRefused } from '../shared/refused-words';
import * as words from './ask-words';
import { type BankLength, bankFieldNames, bankStockNames } from './words';

/** What a figure of a bank is for, as far as that says how large it can be. */
const bankKinds: Partial<Record<BankLength, BandKind>> = {
  width: 'length',
  height: 'length',
  depth: 'length',
  top: 'gap',
  between: 'gap',
  bottom: 'gap',
  side: 'gap',
  gap: 'gap',
  slideLong: 'length',
  slideHigh: 'length',
  clearance: 'gap',
  centre: 'place',
  boxUp: 'place',
  boxDeep: 'length',
  lap: 'place',
  backDado: 'depth',
  behind: 'place',
  grooveDeep: 'depth',
  grooveUp: 'place',
  grooveFit: 'clearance',
  ease: 'room',
  halfPin: 'place',
  pin: 'place',
  pitch: 'place',
  centres: 'place',
  fromEnd: 'place',
  fromTop: 'place',
  frontRabbet: 'depth',
  finger: 'cutter',
  fingerStep: 'place',
  fingerPlay: 'clearance',
  dowel: 'depth',
  dowelLong: 'place',
  sidePlay: 'clearance',
  backRoom: 'place',
  runHigh: 'place',
  kickRoom: 'place',
  stripUp: 'place',
  stripPlay: 'clearance',
};

/** Of slides and the template of a jig: made elsewhere, in a unit of their own. */
const madeElsewhere: readonly BankLength[] = [
  'slideLong',
  'slideHigh',
  'clearance',
  'pitch',
  'finger',
  'fingerStep',
];

const bankLength = (bank: Bank, field: BankLength, usual?: Length): Ask => ({
  as: 'length',
  title: bankFieldNames[field],
  kind: bankKinds[field],
  now: bank[field],
  usual,
  signed: field === 'step' || field === 'sill',
  asMade: madeElsewhere.includes(field),
  save: (value) => saved(bank, field, value),
});

/** What is said of a joint, and of how boxes hang, is kept apart from the rest. */
const saved = (bank: Bank, field: string, value: unknown): readonly Change[] =>
  isOfHanging(field)
    ? editHanging(bank.id, { [field]: value })
    : isOfJoint(field)
      ? editBoxJoint(bank.id, { [field]: value })
      : editBank(bank.id, { [field]: value });

const bankAmount = (bank: Bank, field: Exclude<keyof typeof words.amounts, 'rating'>): Ask => ({
  as: 'amount',
  title: words.amounts[field],
  now: bank[field],
  usual: usualBank(bank)[field],
  save: (value) => editBank(bank.id, { [field]: value }),
});

const bankRating = (bank: Bank): Ask =>
  inMeasure('weight', {
    as: 'amount',
    title: words.amounts.rating,
    now: bank.rating,
    refuse: weightRefused,
    save: (rating) => editBank(bank.id, { rating }),
  });

/** The most there can be of each, how it is said, and where there may be none. */
const bankCounts: Record<keyof typeof words.counts, Parameters<typeof countRefused>> = {
  bay: [mostFew, words.bays],
  across: [mostFew, words.counted.across],
  count: [mostFew, words.counted.count],
  tails: [mostFew, words.counted.tails, 0],
  frontScrews: [mostFew, words.counted.frontScrews, 0],
  pulls: [2, words.counted.pulls, 0],
};

const bankCount = (bank: Bank, field: keyof typeof words.counts): Ask => ({
  as: 'count',
  title: words.counts[field],
  unit: words.counted[field],
  // no number of tails is said: they are worked out
  ...(field === 'tails' ? { now: bank.tails || undefined, word: words.workedOut } : { now: bank[field] }),
  refuse: countRefused(...bankCounts[field]),
  save: (value) => editBank(bank.id, { [field]: value }),
});

const bankName = (bank: Bank): Ask => ({
  as: 'text',
  title: words.name,
  now: bank.name,
  save: (name) => editBank(bank.id, { name }),
});

/** The case they stand in; none: an opening of its own. */
const bankCase = (bank: Bank, job: Job): Ask => ({
  as: 'choice',
  title: words.into,
  now: bank.of ?? '',
  choices: [...job.cases.map((c) => ({ value: c.id, label: c.name || words.aCase })), words.ownOpening],
  save: (of) =>
    editBank(bank.id, {
      of: of === '' ? undefined : of,
      over: undefined,
      ...(of === '' ? { across: undefined } : {}),
    }),
});

/** What the bank stands on in its bay. */
const bankOver = (bank: Bank, job: Job): Ask => {
  const c = job.cases.find((x) => x.id === bank.of);
  const kind = c?.hasFrame ? 'rail' : 'fixed';
  const floors = (c?.inside ?? []).filter((i) => i.bay === bank.bay && i.kind === kind);
  return {
    as: 'choice',
    title: words.standOn,
    now: bank.over ?? '',
    choices: [
      { value: '', label: words.bottom(c?.hasFrame === true) },
      ...floors.map((i, k) => ({
        value: i.id,
        label: words.floor(kind, (c && numberOf(c, i)) ?? k + 1, floors.length),
      })),
    ],
    save: (over) => editBank(bank.id, { over: over === '' ? undefined : over }),
  };
};

type JointChoice = 'boxJoint' | 'fingers' | 'frontAt' | 'frontIs' | 'hung' | 'kickers';

const jointChoices: readonly string[] = [
  'boxJoint',
  'fingers',
  'frontAt',
  'frontIs',
  'hung',
  'kickers',
] satisfies readonly JointChoice[];

/** A choice of the joint; its first is what holds while nothing is said, and is kept by saying nothing. */
function jointChoice(bank: Bank, field: JointChoice): Ask {
  const { title, choices } = words.choices[field];
  const usual = choices[0].value;
  return {
    as: 'choice',
    title,
    now: bank[field] ?? usual,
    choices,
    save: (value) => saved(bank, field, value === usual ? undefined : value),
  };
}

type Choice = Exclude<keyof typeof words.choices, JointChoice>;

const choice = (bank: Bank, field: Choice): Ask => ({
  as: 'choice',
  title: words.choices[field].title,
  now: bank[field],
  choices: words.choices[field].choices,
  save: (value) => editBank(bank.id, { [field]: value }),
});

type At = {
  readonly bank: Bank;
  readonly job: Job;
  readonly usual: Usual;
  /** Measures a sheet there is not yet, for this piece. */
  readonly onMeasure?: (stock: BankStock) => void;
};

const bankStock = (stock: BankStock, { bank, job, onMeasure }: At): Ask => ({
  as: 'choice',
  title: words.stockOf(bankStockNames[stock]),
  now: stockOfBank(bank, stock) ?? '',
  choices: [
    ...job.stock.map((s) => ({ value: s.id, label: s.name || words.sheet })),
    ...(bank.stocks[stock] && stock.startsWith('box') && stock !== 'boxBottom'
      ? [{ value: '', label: words.asSides }]
      : []),
  ],
  ...(onMeasure ? { more: { label: words.measureSheet, onTap: () => onMeasure(stock) } } : {}),
  save: (id) => saved(bank, `${stock}Stock`, id === '' ? undefined : id),
});

/** What stands in where nothing is said, by the name of the blank. */
export type Usual = Readonly<Partial<Record<BankLength, Length | undefined>>>;

const isIn = <T extends object>(table: T, name: string): name is keyof T & string =>
  Object.hasOwn(table, name);

/**
 * The blank of a sentence, by the name it has there: a field of the bank, `of` a stock, or what the drawers are in and
 * on.
 *
 * @example askOf('pulls', at).title // 'Pulls on each front'
 */
export function askOf(name: string, at: At): Ask {
  const { bank, job, usual } = at;
  const [, stock] = name.split('of ');
  if (stock && isIn(bankStockNames, stock)) return bankStock(stock, at);
  if (isIn(words.counts, name)) return bankCount(bank, name);
  if (name === 'rating') return bankRating(bank);
  if (name === 'ratio' || name === 'slope') return bankAmount(bank, name);
  if (jointChoices.includes(name)) return jointChoice(bank, name as JointChoice);
  if (isIn(words.choices, name)) return choice(bank, name as Choice);
  if (isIn(bankFieldNames, name)) return bankLength(bank, name, usual[name]);
  return name === 'into' ? bankCase(bank, job) : name === 'floor' ? bankOver(bank, job) : bankName(bank);
}

export const frontHigh = (bank: Bank, no: number, shared?: Length): Ask => ({
  as: 'length',
  title: words.frontHigh(no),
  kind: 'length',
  now: frontNo(bank, no).high,
  usual: shared,
  word: words.shared,
  save: (high) => editFront(bank.id, no, { high }),
});

export const frontWeight = (bank: Bank, no: number, usual: Ratio): Ask => ({
  as: 'amount',
  title: words.frontShare(no),
  now: frontNo(bank, no).weight,
  usual,
  save: (weight) => editFront(bank.id, no, { weight }),
});

export const boxHigh = (bank: Bank, no: number, most?: Length): Ask => ({
  as: 'length',
  title: words.boxHigh(no),
  kind: 'length',
  now: frontNo(bank, no).boxHigh,
  usual: most,
  word: words.atMost,
  save: (value) => editFront(bank.id, no, { boxHigh: value }),
});
