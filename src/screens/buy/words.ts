import {
  asInches,
  asNumber,
  equals,
  fromMillimetres,
  howMany,
  inches,
  isZero,
  type Length,
  type Ratio,
  times,
} from '../../length/length';
import { assertNever } from '../../length/result';
import { toWhole } from '../../length/round';
import type { Row, ScrewsNotSaid } from '../../plan/buying';
import { slideRoom } from '../../trade/boxes/box';
import type { BoardFeet, BuyingLine, Group, NotListed, Unit, Why } from '../../trade/buying/line';
import type { SheetNeed } from '../../trade/buying/need';
import { unitInHand } from '../../ui/unit-in-hand';
import { counted, wordFor } from '../shared/counted';
import { exactly as w } from '../shared/exact-words';
import { partWord } from '../shared/part-words';
import { screwText } from '../shared/screw-words';
import { bySize } from '../shared/size-words';
import { heldText, stripsText } from './shelf-words';

export const title = 'To buy';
export const back = 'Sheets';
export const nothingYet = 'Nothing to buy yet. Give a case its outside sizes, and say what its parts are of.';
export const toJob = 'To the job';
export const gotOf = (got: number, all: number): string => (all === 0 ? '' : `${got} of ${all} got`);

/** Where no line is open: all are got, or there was none. */
export const noneOpen = (lines: number): string =>
  lines > 0 ? 'Everything on the list is bought.' : 'Nothing here to buy.';
export const got = 'Got';
export const notGot = 'Not got';
export const gotRest = 'Got the rest';
export const readings = 'Readings';
export const notCounted = 'Not counted';
export const notReckoned = 'Glue, finish and pulls are not on the list.';

/** What is done with a line, as undo names it. */
export const actOn = (act: string, line: string): string => `${act}: ${line}`;
export const boxLabel = (figure: string, unit: string, line: string): string => `${figure} ${unit}, ${line}`;

export const groupWords: Record<Group, string> = {
  sheets: 'Sheets',
  sticks: 'Sticks',
  solid: 'Solid wood',
  fillers: 'Filler strips',
  edging: 'Band',
  pins: 'Shelf pins',
  clips: 'Shelf clips',
  strips: 'Metal strips',
  slides: 'Slides',
  screws: 'Screws',
  dowels: 'Dowels',
  biscuits: 'Biscuits',
};

export const unitWords: Record<Unit, readonly [string, string]> = {
  sheet: ['sheet', 'sheets'],
  stick: ['stick', 'sticks'],
  'board-foot': ['board ft', 'board ft'],
  foot: ['ft', 'ft'],
  pair: ['pair', 'pairs'],
  screw: ['screw', 'screws'],
  dowel: ['dowel', 'dowels'],
  biscuit: ['biscuit', 'biscuits'],
  strip: ['strip', 'strips'],
  pin: ['pin', 'pins'],
  clip: ['clip', 'clips'],
};

export const isOne = (x: Ratio): boolean => equals(asInches(x), inches(1n));

/** A number with at most so many places, nearest: `3.6`, `12`. @example decimal(ratio(18n, 5n), 1) // '3.6' */
export function decimal(x: Ratio, places: number): string {
  const shift = 10n ** BigInt(places);
  const k = toWhole(asNumber(times(asInches(x), shift)), 'halfExpand');
  const rest = `${k % shift}`.padStart(places, '0').replace(/0+$/, '');
  return rest && places > 0 ? `${k / shift}.${rest}` : `${k / shift}`;
}

const percent = (share: Ratio): string => `${decimal(asNumber(times(asInches(share), 100n)), 1)}\u00a0%`;

/** The figure and its unit, apart: the one is huge, the other small. */
export function amountWords({ amount, unit, why }: BuyingLine): {
  readonly figure: string;
  readonly unit: string;
} {
  const [one, many] = unitWords[unit];
  const least = why.code === 'layout' && why.need.how === 'least';
  const words = isOne(amount) ? one : many;
  if (unit === 'foot' && unitInHand() === 'mm') {
    const metres = howMany(times(foot, amount), fromMillimetres(1000n));
    return { figure: decimal(metres, 1), unit: least ? 'm, at least' : 'm' };
  }
  return { figure: decimal(amount, 1), unit: least ? `${words}, at least` : words };
}

/** What a line is called. */
export function lineName({ name, why }: BuyingLine): string {
  switch (why.code) {
    case 'layout':
      return `${name}, ${sizeWords(why.need)}`;
    case 'tests':
      return `One more: ${name}`;
    case 'board-feet':
      return name;
    case 'filler':
      return `${name}, ${why.side}: ${w(why.wide)} wide, ${w(why.long)} long`;
    case 'band':
      return `Band ${w(why.thick)} thick, for edges of ${w(why.wide)}`;
    case 'slides':
      return `Slides ${w(why.long)} long`;
    case 'screws':
      return `Screws ${sizedScrew(why.gauge, why.long)}`;
    case 'dowels':
      return `Dowels ${byWords(why.size.thick, why.size.long)}`;
    case 'biscuits':
      return `Biscuits #${why.no}`;
    case 'pins':
      return why.dia ? `Pins for holes ${w(why.dia)} wide` : 'Pins for loose shelves';
    case 'clips':
      return `Clips for strips ${w(why.width)} wide`;
    case 'strips':
      return `Strips ${w(why.width)} wide, ${w(why.thick)} thick${why.from ? `, sold ${w(why.from.sold)} long` : ''}`;
    default:
      return assertNever(why);
  }
}

export const sizedScrew = (gauge: number | string | undefined, long: Length): string =>
  gauge ? `number ${gauge}, ${w(long)} long` : `${w(long)} long`;

/** Two sizes on one line, never broken between them. */
const byWords = (long: Length, wide: Length): string => bySize(w(long), w(wide)).replaceAll(' ', '\u00a0');

const sizeWords = ({ long, wide }: SheetNeed): string => (wide ? byWords(long, wide) : `${w(long)} long`);

/** Why so many, in one or two sentences. */
export function whyText(why: Why): string {
  switch (why.code) {
    case 'layout':
      return layoutText(why.need, why.solid);
    case 'tests':
      return 'One part’s worth for test cuts: nothing left that holds one.';
    case 'board-feet':
      return solidText(why.solid);
    case 'filler':
      return `As wide as the gap at the ${why.side} at its widest, and what is scribed off; as long as the case is high.`;
    case 'band':
      return `${edgedText(why)}, and ${percent(why.more)} over.`;
    case 'slides':
      return slidesText(why);
    case 'screws':
      return screwsText(why);
    case 'pins':
    case 'clips':
      return heldText(why);
    case 'strips':
      return stripsText(why);
    case 'dowels':
    case 'biscuits':
      return `${why.uses.map(({ place, count }) => `${place} ${count}`).join(', ')}.`;
    default:
      return assertNever(why);
  }
}

type WhyOf<C extends Why['code']> = Extract<Why, { readonly code: C }>;

function edgedText({ fronts, shelves, around }: WhyOf<'band'>): string {
  const front = counted(fronts, 'front', 'fronts');
  const shelf = counted(shelves, 'shelf', 'shelves');
  if (shelves === 0) return `${front}, ${feet(around)} round their edges`;
  return fronts === 0
    ? `${shelf}, ${feet(around)} along ${wordFor(shelves, 'its front edge', 'their front edges')}`
    : `${front} all round and ${shelf} along the front, ${feet(around)}`;
}

/** How long a band is in all: feet, or metres in a job in millimetres. */
const feet = (x: Length): string =>
  unitInHand() === 'mm'
    ? `${decimal(howMany(x, fromMillimetres(1000n)), 1)} m`
    : `${decimal(howMany(x, foot), 1)} ft`;

const foot = inches(12n);

function layoutText(need: SheetNeed, solid: BoardFeet | undefined): string {
  const have = need.have > 0 ? `, ${need.have} at hand` : '';
  return [`${howText(need)}${have}.`, spareText(need), solid ? instead(solid) : ''].filter(Boolean).join(' ');
}

function howText({ how, kind, count, pieces }: SheetNeed): string {
  const taken = counted(count, kind, `${kind}s`);
  const all = counted(pieces, 'piece', 'pieces');
  const come = `${all} ${wordFor(pieces, 'comes', 'come')} out of ${taken}`;
  switch (how) {
    case 'proved':
      return `${come}, the fewest possible`;
    case 'laid':
      return `${come} as laid out; fewer might do`;
    case 'least':
      return `${all} not laid out yet: ${taken} at least`;
    default:
      return assertNever(how);
  }
}

function spareText({ kind, how, spare }: SheetNeed): string {
  if (kind === 'stick') return '';
  if (spare) return `What is left holds a piece of ${byWords(spare.long, spare.wide)} for test cuts.`;
  return how === 'least' ? 'The layout will show whether a piece is left for test cuts.' : '';
}

const thickWords = {
  rough: (t: string) => `${t} thick, rough.`,
  measured: (t: string) => `Counted ${t} thick, as measured; sold rough it counts thicker.`,
  planned: (t: string) => `Counted ${t} thick, as planned; sold rough it counts thicker.`,
} as const;

function solidText({ pieces, net, waste, thick, as }: BoardFeet): string {
  const hold = `${counted(pieces, 'piece', 'pieces')} ${wordFor(pieces, 'holds', 'hold')} ${decimal(net, 2)}`;
  const more = isZero(asInches(waste)) ? 'nothing for waste' : `${percent(waste)} for waste`;
  return `${hold}, and ${more}. ${thickWords[as](w(thick))}`;
}

/** Beside sticks: the same wood by the board foot, for a yard that sells it so. */
const instead = ({ buy, waste, thick, as }: BoardFeet): string =>
  `Or ${decimal(buy, 1)} board ft instead, ${percent(waste)} for waste in it, ${w(thick)} thick ${as === 'rough' ? 'rough' : `as ${as}`}.`;

function slidesText({ drawers, banks, long, tooLong }: WhyOf<'slides'>): string {
  const own = `One pair a drawer: ${counted(drawers, 'drawer', 'drawers')} (${banks.join(', ')}).`;
  return tooLong
    ? `${own} At ${w(long)} they are ${w(tooLong)} too long for the depth there is, less ${w(slideRoom(unitInHand()))}: shorter ones, or a deeper case.`
    : own;
}

function screwsText({ uses, count, boxes }: WhyOf<'screws'>): string {
  const each = uses
    .map((u) =>
      u.along
        ? `${u.bank} ${u.each}`
        : `${counted(u.pieces, 'front', 'fronts')} of ${u.bank} at ${u.each} each`,
    )
    .join(', ');
  const sold = [
    ...(boxes.hundreds > 0 ? [`${boxes.hundreds} of a hundred`] : []),
    ...(boxes.fifties > 0 ? [`${boxes.fifties} of fifty`] : []),
  ].join(' and ');
  return `${each}: ${count}. In boxes, ${sold}.`;
}

/** What a line was ticked at, where it has changed since. */
export function changedText({ line, ticked, now }: Row): string | undefined {
  if (!ticked || now === 'open' || now === 'got') return undefined;
  return `ticked at ${decimal(ticked, 1)}, now ${decimal(line.amount, 1)}`;
}

/** What the job asks for and the list cannot count, and what to do about it. */
export function notText(not: NotListed | ScrewsNotSaid): string {
  switch (not.code) {
    case 'not-laid-out':
      return `${not.name}: ${counted(not.pieces, 'piece', 'pieces')}, and no sheets counted for ${wordFor(not.pieces, 'it', 'them')} yet.`;
    case 'no-stock':
      return `${counted(not.pieces, 'piece', 'pieces')} of no stock (${someOf(not.names.map((name) => partWord(name)))}): nothing is counted for ${wordFor(not.pieces, 'it', 'them')}.`;
    case 'bank-not-worked':
      return `${not.name} cannot be worked out yet: no slides or band counted for it.`;
    case 'slides-not-said':
      return `${not.name}: say how long the slides are. ${counted(not.drawers, 'pair', 'pairs')}, if they run on slides.`;
    case 'screws-not-said':
      return screwsNotText(not);
    default:
      return assertNever(not);
  }
}

const someOf = (names: readonly string[]): string =>
  names.length > 3
    ? `${names.slice(0, 3).join(', ')} and ${names.length - 3} more`
    : names.map((name) => name || 'no name').join(', ');

function screwsNotText({ name, fronts, screw }: ScrewsNotSaid): string {
  const held = `${counted(fronts, 'front', 'fronts')} of ${name} screwed on from inside`;
  return screw.pick
    ? `${held}, screws ${w(screw.pick)} long: say how many a front.`
    : `${held}. ${screwText(screw)}`;
}
