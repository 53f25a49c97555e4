import type { JSX } from 'preact';
import { editPrint } from '../../job/prints';
import type { Length } from '../../length/length';
import type { Paper } from '../../trade/paper/sheet';
import type { Ask } from '../shared/ask';
import { margin, overlap, paper, papers, rollOrSheets } from './print-words';

/** A length of a print that is kept under a key, and what it is called there. */
type LengthAt = {
  readonly key: string;
  readonly field: 'wide' | 'high' | 'gap' | 'down' | 'margin' | 'overlap' | 'bar' | 'across' | 'whole';
  readonly title: string;
  readonly now: Length | undefined;
  readonly refuse?: (value: Length) => string | undefined;
};

export const lengthAsk = ({ key, field, ...at }: LengthAt): Ask => ({
  as: 'length',
  ...at,
  save: (value) => editPrint(key, { [field]: value }),
});

/** The sheet something is printed on, or a roll where that will do. */
export const onAsk = (key: string, now: Paper | 'roll', roll?: 'or-roll'): Ask => ({
  as: 'choice',
  title: paper,
  now,
  choices: roll ? rollOrSheets : papers,
  save: (value) => editPrint(key, { paper: value as Paper | 'roll' }),
});

/** What stays white all round, and how far sheets lap. */
export const marginAsk = (key: string, now: Length): Ask =>
  lengthAsk({ key, field: 'margin', title: margin, now });
export const overlapAsk = (key: string, now: Length): Ask =>
  lengthAsk({ key, field: 'overlap', title: overlap, now });

/** The blanks of some asks, by their names, as a sentence takes them. */
export const blanksOf = <K extends string>(
  asks: Readonly<Record<K, Ask>>,
  blank: (ask: Ask) => JSX.Element,
): Readonly<Record<K, JSX.Element>> =>
  Object.fromEntries(Object.entries<Ask>(asks).map(([name, ask]) => [name, blank(ask)])) as never;
