import { type Band, type BandKind, bandOf, type Doubt } from '../length/bands';
import { absolute, type Length } from '../length/length';
import type { ReadError, Reading } from '../length/read';
import type { Units } from '../length/units';
import { writeDecimal, writeMillimetres, writeShown } from '../length/write';

export const done = 'Done';
export const next = 'Next';
/** The key that goes on, as a reader hears it. @example nextSays('Outside width') // 'Next: outside width' */
export const nextSays = (name: string): string => `Next: ${inSentence(name)}`;
export const inSentence = (name: string): string => name.charAt(0).toLowerCase() + name.slice(1);

export const unitWords: Record<Units, string> = { in: 'inches', mm: 'mm' };
/** The field, as a reader hears it. @example fieldSays('How wide', 'mm') // 'How wide, mm: keyed or typed' */
export const fieldSays = (title: string, units: Units | undefined): string =>
  `${title}${units ? `, ${unitWords[units]}` : ''}: keyed or typed`;
export const pieces = 'pieces';
export const empty = 'empty';

/** Why what was typed is no figure: it may be half done. */
export const unread = ({ code, text }: ReadError): string =>
  code === 'zero-denominator'
    ? `“${text}” divides by zero. The figure under the line is 1 or more.`
    : 'Not a length yet.';

const nouns: Record<BandKind, string> = {
  thickness: 'A thickness',
  length: 'A length',
  place: 'A place',
  kerf: 'A kerf',
  cutter: 'A cutter',
  groove: 'A groove',
  depth: 'A depth',
  clearance: 'A clearance',
  room: 'The room',
  gap: 'A gap',
  shim: 'A shim',
  screw: 'A screw',
};

const number = (x: Length, units: Units): string => writeShown(x, units).replace(' mm', '');

/** A length with its unit, whatever the job is in. */
const withUnit = (x: Length, units: Units): string =>
  units === 'mm' ? writeMillimetres(x) : `${writeShown(x, 'in')} in`;

const limits = ({ least, most }: Band, units: Units): string => {
  const to = `${number(most, units)} ${unitWords[units]}`;
  return least.n === 0n ? `${to} at most` : `${number(least, units)} to ${to}`;
};

/** A length below nothing, by how much, and what would do. @param kind of the blank */
export function underNothing({ value, unit }: Pick<Reading, 'value' | 'unit'>, kind?: BandKind): string {
  const units = unit === 'mm' || unit === 'cm' ? 'mm' : 'in';
  const by = `${number(absolute(value), units)} ${unitWords[units]} less than nothing.`;
  if (!kind) return `${by} It is nothing or more.`;
  const { least, most } = bandOf(kind, units);
  return `${by} ${nouns[kind]} is ${number(least, units)} to ${number(most, units)} ${unitWords[units]}.`;
}

/** The same of an amount, which has no unit of length. */
export const amountUnderNothing = (value: Length): string =>
  `${writeShown(absolute(value), 'in')} less than nothing. It is nothing or more.`;

/** What is odd about a figure, and the limit. @param units it was read in */
export function doubtText(doubt: Doubt, figure: Length, { units, kind }: DoubtOf): readonly [string, string] {
  if (doubt.code === 'comma') return ['A thousand, or a decimal?', ''];
  const asked = `${number(figure, units)} ${unitWords[units]}?`;
  return [asked, doubt.band && kind ? `${nouns[kind]} is ${limits(doubt.band, units)}.` : ''];
}

type DoubtOf = { readonly units: Units; readonly kind: BandKind | undefined };

/** What was perhaps meant, on its button. @example '18 mm, 0.709 in' */
export function meantText(meant: Length, units: Units): string {
  return units === 'in'
    ? `It is ${writeMillimetres(meant)}, ${writeDecimal(meant)} in`
    : `It is ${withUnit(meant, 'in')}, ${writeMillimetres(meant)}`;
}

/** A figure that was read in two ways, on its button. */
export const itIs = (x: Length, units: Units): string => `It is ${withUnit(x, units)}`;
