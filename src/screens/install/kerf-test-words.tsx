import type { ComponentChildren as Blank } from 'preact';
import { absolute, isNegative, type Length } from '../../length/length';
import type { Blade, KerfTested } from '../../plan/kerf-plan';
import type { KerfTestError } from '../../trade/machines/kerf-test';
import { exactly as w } from '../shared/exact-words';
import { ownName } from '../shared/machines/machine-names';
import { shopSays } from './look-back-words';

export const title = 'The kerf, by a test cut';
export const how =
  'Measure across a board of scrap, rip one piece or more off it, and measure again. Over more cuts a slip of the tape counts for less.';

const names: Readonly<Record<Blade, string>> = {
  kerf: 'Circular saw',
  single: 'Single blade of the table saw',
};

/** The saw a blade is in: one of the shop's own as the user calls it. */
export const nameOf = ({ blade, own }: Pick<KerfTested, 'blade' | 'own'>): string =>
  own ? ownName(own) : names[blade];

const field =
  (what: string) =>
  (tested: Pick<KerfTested, 'blade' | 'own'>): string =>
    `${nameOf(tested)}: ${what}`;
export const titles = {
  before: field('the board before it is cut'),
  cuts: field('how many cuts'),
  pieces: field('the pieces that came off, side by side'),
  rest: field('what is left of the board'),
} as const;
export const cutsOf = 'cuts';
export const oneCut = '1';

type Told = { readonly name: string; readonly blank: (field: keyof typeof titles) => Blank };

export const line = ({ name, blank }: Told) => (
  <>
    {name}: a board {blank('before')} wide. Cuts made in it: {blank('cuts')}. The pieces that came off measure{' '}
    {blank('pieces')} side by side, what is left {blank('rest')}.
  </>
);

const whats = { before: 'board', pieces: 'width of the pieces', rest: 'width of what is left' } as const;

/** Why a test cannot be the kerf of a blade, by how much, and what would fit. */
export function errorText(error: KerfTestError): string {
  switch (error.code) {
    case 'no-cut':
      return 'A kerf is found by one cut or more: 1 to 24 fits.';
    case 'not-positive':
      return `The ${whats[error.what]} must be more than 0.`;
    case 'nothing-lost':
      return error.by.n === 0n
        ? 'The pieces and what is left are just as wide as the board was: a cut takes something. Measure again.'
        : `The pieces and what is left come to ${w(error.by)} more than the board was. Measure again.`;
    case 'too-narrow':
      return `That is ${w(error.kerf)} a cut, ${w(error.by)} less than the ${w(error.limit)} a blade takes. Measure again, and count the cuts.`;
    case 'too-wide':
      return `That is ${w(error.kerf)} a cut, ${w(error.by)} more than the ${w(error.limit)} a single blade takes. Measure again, and count the cuts.`;
  }
}

const differs = (off: Length): string => `${w(absolute(off))} ${isNegative(off) ? 'less' : 'more'} than that`;

/** What was found, beside the shop's figure, and what the difference comes to. */
export function foundText(kerf: Length, { now, off, adds }: Omit<KerfTested, 'found'>): string {
  return [
    `A cut takes ${w(kerf)}.`,
    off ? `${shopSays(now)}: it is ${differs(off)}.` : `${shopSays(now)}.`,
    ...(adds && adds.cuts > 1
      ? [`Over the ${adds.cuts} cuts that lie side by side on one sheet that is ${w(absolute(adds.by))}.`]
      : []),
  ].join(' ');
}

export const asCut =
  'What is cut stays as it was cut. Taken over, the figure counts from the next cut on, and sheets not begun ask to be laid out again.';
