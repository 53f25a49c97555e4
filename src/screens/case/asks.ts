import { editBay, editCase, editInside } from '../../job/edits';
import type { Change } from '../../job/entry';
import type { Job } from '../../job/job';
import { mostFew } from '../../job/kinds';
import type { BandKind } from '../../length/bands';
import type { Length } from '../../length/length';
import type { Case, Inside, StockRole } from '../../trade/carcass/case';
import { usualCrosses } from '../../trade/carcass/plinth';
import type { CaseField } from '../../trade/carcass/problems';
import { follows } from '../../trade/carcass/sizes';
import type { Ask } from '../shared/ask';
import { countRefused } from '../shared/refused-words';
import * as words from './ask-words';
import { asBand } from './loose-words';
import { insideTitle, type insideTitles } from './sentence-words';
import { caseFieldNames, stockNames } from './words';

/** What a figure of a case is for, as far as that says how large it can be. */
const caseKinds: Record<CaseField, BandKind> = {
  width: 'length',
  height: 'length',
  depth: 'length',
  opening: 'length',
  clear: 'length',
  feet: 'place',
  dado: 'depth',
  partitionDado: 'depth',
  bottomRabbet: 'depth',
  topRabbet: 'depth',
  tongue: 'groove',
  tongueRoom: 'room',
  bottomPast: 'place',
  topPast: 'place',
  sidePast: 'place',
  backDeep: 'depth',
  backWide: 'depth',
  backLand: 'place',
  backGroove: 'depth',
  backGrooveWide: 'groove',
  backInset: 'place',
  ease: 'room',
  fit: 'clearance',
  cleatWide: 'length',
  cleatRabbet: 'depth',
  cleatRabbetWide: 'length',
  notchDeep: 'depth',
  overhang: 'place',
  stile: 'length',
  middle: 'length',
  topRail: 'length',
  bottomRail: 'length',
  frameClear: 'place',
  frameSill: 'place',
  frameToe: 'place',
  looseFront: 'place',
  looseSide: 'place',
  lip: 'place',
  toeBack: 'place',
  nailerWide: 'length',
  nailerDeep: 'place',
  plinthFront: 'place',
  plinthLeft: 'place',
  plinthRight: 'place',
  plinthBack: 'place',
  frontOver: 'place',
  toeClear: 'place',
  crossWide: 'length',
};

const insideKinds: Record<InsideLengthAt['field'], BandKind> = {
  at: 'place',
  first: 'place',
  pitch: 'place',
  endRoom: 'place',
  width: 'groove',
  depth: 'depth',
  slack: 'room',
  wide: 'length',
  front: 'place',
  behind: 'place',
  flange: 'room',
  play: 'room',
  frontPlay: 'room',
  backPlay: 'room',
  band: 'room',
  stripThick: 'thickness',
  stripRoom: 'room',
  stripSold: 'length',
  templateLong: 'length',
  templateFirst: 'place',
  templateError: 'clearance',
  templatePlay: 'clearance',
};

export const caseLength = (c: Case, field: CaseField, usual?: Length): Ask => ({
  as: 'length',
  title: caseFieldNames[field],
  kind: caseKinds[field],
  now: c[field],
  usual,
  save: (value) => editCase(c.id, { [field]: value }),
});

export const caseCount = (c: Case, field: keyof typeof words.counted, title: string): Ask => ({
  as: 'count',
  title,
  unit: words.counted[field],
  now: c[field] ?? (field === 'plinthCrosses' ? usualCrosses : undefined),
  word: words.byHeight,
  // a strip has two ends
  refuse: countRefused(field === 'mitres' ? 2 : mostFew, words.counted[field], field === 'nailers' ? 1 : 0),
  save: (value) => editCase(c.id, { [field]: field === 'nailers' ? value : (value ?? 0) }),
});

export const caseName = (c: Case): Ask => ({
  as: 'text',
  title: words.name,
  now: c.name,
  save: (name) => editCase(c.id, { name }),
});

export const caseHold = (c: Case): Ask => ({
  as: 'choice',
  title: words.hold,
  now: c.hold,
  choices: [
    { value: 'outside', ...words.holds.outside },
    { value: 'openings', ...words.holds.openings },
  ],
  save: (hold) => editCase(c.id, { hold: hold as Case['hold'] }),
});

type StockFrom = { readonly job: Job; readonly onMeasure: (stock: StockRole) => void };

/** What it is of where no stock is said; some must have one. */
function whereNone(
  stock: StockRole,
): readonly { readonly label: string; readonly hint?: string; readonly value: '' }[] {
  if (stock === 'shelfedge') return [{ value: '', ...asBand }];
  return follows(stock) ? [{ value: '', label: stock === 'cross' ? words.asRails : words.asSides }] : [];
}

/** Which stock a piece is of: any that the job has measured or planned, or one to be measured now. */
export const caseStock = (c: Case, stock: StockRole, { job, onMeasure }: StockFrom): Ask => ({
  as: 'choice',
  title: words.stockOf(stockNames[stock]),
  now: c.stocks[stock] ?? '',
  choices: [...job.stock.map((s) => ({ value: s.id, label: s.name || words.sheet })), ...whereNone(stock)],
  more: { label: measureWord(stock), onTap: () => onMeasure(stock) },
  save: (id) => editCase(c.id, stockIs(stock, id)),
});

/** What is sawn out of solid wood comes in sticks. */
export const ofSticks = (stock: StockRole): boolean =>
  stock === 'frame' || stock === 'edging' || stock === 'shelfedge';

export const measureWord = (stock: StockRole): string =>
  ofSticks(stock) ? words.measureStick : words.measureSheet;

/** A piece of that stock; none: of that of the sides. */
export const stockIs = (stock: StockRole, id: string) => ({ [`${stock}Stock`]: id === '' ? undefined : id });

/** A bay's own clear width; the others share the rest. */
export const caseBay = (c: Case, k: number): Ask => ({
  as: 'length',
  title: words.bayWidth(k + 1),
  kind: 'length',
  now: c.bays[k],
  save: (value) => editBay(c.id, k + 1, value),
});

/** A length of what stands in a bay, but those that lie aside. */
type InsideField = {
  [K in keyof Inside]-?: NonNullable<Inside[K]> extends Length ? K : never;
}[Exclude<keyof Inside, `aside${string}`>];

/** A blank of what stands in a bay, the title it has, and what stands in while nothing is said. */
export type InsideLengthAt = {
  readonly field: InsideField;
  readonly title: keyof typeof insideTitles;
  readonly usual?: Length | undefined;
  readonly word?: string;
};

export const insideLength = (c: Case, i: Inside, { field, title, ...stands }: InsideLengthAt): Ask => ({
  as: 'length',
  title: insideTitle(c, i.id, title),
  kind: insideKinds[field],
  now: i[field],
  ...stands,
  save: (value) => editInside(c.id, i.id, { [field]: value }),
});

export const insideCount = (c: Case, i: Inside): Ask => ({
  as: 'count',
  title: insideTitle(c, i.id, 'count'),
  unit: words.insideCounted[i.kind],
  now: i.count ?? 1,
  save: (count) => editInside(c.id, i.id, { count }),
});

export const insideBay = (c: Case, i: Inside): Ask => ({
  as: 'choice',
  title: insideTitle(c, i.id, 'bay'),
  now: `${i.bay}`,
  choices: Array.from({ length: c.partitions + 1 }, (_, k) => ({
    value: `${k + 1}`,
    label: words.bay(k + 1),
  })),
  save: (bay) => editInside(c.id, i.id, { bay: Number(bay) }),
});

export const caseFlag = (c: Case, field: 'stilesOff' | 'middleOff', title: string): Ask => ({
  as: 'choice',
  title,
  now: c[field] ? 'off' : 'fixed',
  choices: [
    { value: 'fixed', ...words.held.fixed },
    { value: 'off', ...words.held.off },
  ],
  save: (how): readonly Change[] => editCase(c.id, { [field]: how === 'off' }),
});
