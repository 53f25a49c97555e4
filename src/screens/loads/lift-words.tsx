import type { ComponentChildren as Blank } from 'preact';
import { type Ratio, ratio } from '../../length/length';
import type { LiftError, LiftLimit, LiftSays } from '../../trade/loads/lift';
import type { LiftCure } from '../../trade/loads/lift-cures';
import type { LiftStep } from '../../trade/loads/lift-plan';
import type { Tip } from '../../trade/loads/tipping';
import { counted } from '../shared/counted';
import { exactly as w } from '../shared/exact-words';
import { unweighed } from '../shared/lot-words';
import { measureUnit, tenths, weight, wholeOf } from '../shared/pounds';

export const title = 'Weight and lifting';

// What it weighs.

export const weighs = 'What it weighs';
export const sums = (own: Ratio, loose: Ratio, drawers: Ratio, all: Ratio): string =>
  `Empty about ${weight(all)}: case ${weight(own)}, shelves and trays ${weight(loose)}, drawers ${weight(drawers)}.`;
export const restTitle = 'What hardware and the rest that is no part weigh';
export const onTitle = 'What the case stands on';
export const floor = 'the floor';
export const restLine = (rest: Blank, on: Blank) => (
  <>
    Hardware and the rest {rest} {measureUnit('weight')}. It stands on {on}.
  </>
);
export const running = (one: Ratio, count: number, sum: Ratio): string =>
  count === 1 ? `${weight(one)}, so far ${weight(sum)}` : `${count} at ${weight(one)}, so far ${weight(sum)}`;
export const unknown = (parts: readonly string[]): string =>
  `Not weighed, their size is not known: ${parts.join(', ')}.`;
export const hardware = 'Hardware and the rest';

// Moving in.

export const moving = 'Moving it in, empty';
const verbs: Readonly<Record<LiftStep['code'], (what: string) => string>> = {
  'drawer-out': (what) => `Take out ${what}`,
  'loose-out': (what) => `Take out ${what}`,
  set: (what) => `Set ${what}`,
  level: (what) => `Level ${what}`,
  anchor: (what) => `Anchor ${what}`,
  'drawer-in': (what) => `Put back ${what}`,
  'loose-in': (what) => `Put back ${what}`,
};

/** A step with its weight, and two people where it is over what one lifts. */
export const step = (at: LiftStep, what: string): string => {
  const does = verbs[at.code](what);
  if (!('people' in at)) return `${does}.`;
  const two = at.over ? `: two people, ${weight(at.over)} over for one` : '';
  return `${does}, ${weight(at.pounds)}${two}.`;
};
export const thenLoad = 'Load it last of all, heavy things low.';

// One lift by one person.

export const oneLift = 'One lift by one person';
export const whatTitle = 'What is lifted';
export const gripTitle = 'How well it is gripped';
export const carefulTitle = 'How it is put down';
export const lengths = {
  out: 'At the start: from between the ankles to between the hands',
  up: 'At the start: hands above the floor',
  toOut: 'At the end: from between the ankles to between the hands',
  toUp: 'At the end: hands above the floor',
} as const;
export const turns = {
  turn: 'At the start: degrees turned to the side',
  toTurn: 'At the end: degrees turned to the side',
} as const;
export const degrees = 'degrees';
export const grips = {
  '': { label: 'not said' },
  good: { label: 'good', hint: 'handles, or fingers curl well under it' },
  fair: { label: 'fair', hint: 'fingers bent square under it' },
  poor: { label: 'poor', hint: 'it sags, is slick or hard to hold' },
} as const;
export const puts = {
  down: { label: 'let down anyhow' },
  careful: { label: 'set down with care', hint: 'the end counts as well' },
} as const;
export const nothing = 'not said';

type Fills = Readonly<
  Record<'what' | 'grip' | 'careful' | 'out' | 'up' | 'turn' | 'toOut' | 'toUp' | 'toTurn', Blank>
>;

export const lift = (at: Fills) => (
  <>
    {at.what}, its grip {at.grip}. Hands start {at.out} out and {at.up} up, turned {at.turn}°; they end{' '}
    {at.toOut} out and {at.toUp} up, turned {at.toTurn}°; {at.careful}.
  </>
);

export const asksFor = (blanks: readonly string[]): string => `Enter first: ${blanks.join('; ')}.`;

const times = {
  out: 'how far out',
  up: 'how high the hands',
  travel: 'how far up or down',
  turn: 'how far turned',
  often: 'how often',
  grip: 'grip',
} as const;

/** Of the equation, before its multipliers. Pounds. */
const constant = ratio(51n);

/** The six multipliers in words, and what they leave of 51 pounds. */
export const limit = (at: 'start' | 'end', found: LiftLimit): string => {
  const six = (Object.keys(times) as (keyof typeof times)[]).map(
    (key) => `${times[key]} ${hundredths(found[key])}`,
  );
  return `At the ${at}: ${weight(constant)} × ${six.join(' × ')} = ${weight(found.limit)}.`;
};

const hundredths = (x: Ratio): string => x.valueOf().toFixed(2).replace(/^0/, '');

/** @param lacks things in it that nobody weighed */
export const verdict = (says: LiftSays, load: Ratio, most: Ratio, lacks = 0): string => {
  const by =
    says.rules === 'shop'
      ? `the shop's ${weight(most)} for one person`
      : `the lifting equation at the ${says.rules}`;
  const index = says.index
    ? ` It is ${tenths(says.index)} times the equation's limit.`
    : ' The hands are out of reach.';
  return says.over
    ? `${weight(load)} is ${weight(says.over)} over ${weight(says.most)}, by ${by}.${index}`
    : `${weight(load)} is ${lacks > 0 ? 'as far as weighed ' : ''}within ${weight(says.most)}, by ${by}.${index}`;
};

export const beside = (load: Ratio, most: Ratio): string =>
  most.lt(load)
    ? `The plain line beside it: over ${weight(most)}, two people.`
    : `The plain line beside it: not over ${weight(most)}, so by weight alone it asks for no second person.`;

export const weighsMore = (lacks: number): string => `In it${unweighed(lacks)} It weighs more than this.`;

export const notCovered =
  'The equation is for one person, both hands, standing, a steady load less than once in five minutes. It does not cover two people, stairs, carrying, one hand or slippery floors.';

export const liftErrorText = (error: LiftError): string => {
  switch (error.code) {
    case 'load-not-positive':
      return 'What is lifted must weigh more than nothing.';
    case 'most-not-positive':
      return 'What one person carries must be more than nothing: it stands on the page of the sheets.';
    case 'grip-missing':
      return `Enter first: ${gripTitle.toLowerCase()}.`;
    case 'negative': {
      const names = {
        out: 'how far out the hands are',
        up: 'how high they are',
        turn: 'how far it is turned',
      };
      return `At the ${error.at} ${names[error.what]} cannot be below nothing.`;
    }
  }
};

export function cure(found: LiftCure): string {
  switch (found.code) {
    case 'closer':
      return `Hold it no further out than ${w(found.out)}.`;
    case 'start-at':
      return `Stand it on something first, so that the hands start ${w(found.up)} up.`;
    case 'no-turn':
      return 'Face it: turn with the feet.';
    case 'take-out':
      return `Take ${weight(found.pounds)} out of it.`;
    case 'trips':
      return `In ${counted(Number(found.count), 'trip', 'trips')}, where it comes apart that far.`;
    case 'hoist':
      return 'A hoist or a lift table.';
  }
}

// Tipping.

export const tipping = 'Tipping';
export const anchorAlways =
  'Anchor it to the wall before anything goes in, whatever these figures say. Until then one loaded drawer out at a time, and no children near: they climb on drawers.';

const outs = { all: 'All drawers out', one: 'The heaviest drawer out alone' } as const;

export const tip = (which: keyof typeof outs, found: Tip): string => {
  const pull = `${outs[which]}, as they are loaded: ${turning(found.tipping)} ${measureUnit('turning')} tip it, ${turning(found.holding)} hold it`;
  if (found.code === 'falls') return `${pull}. It falls.`;
  return found.short
    ? `${pull}, ${turning(found.short)} short of one and a half times. Too near.`
    : `${pull}, one and a half times and more.`;
};
export const outAtMost = (n: number): string =>
  n === 0
    ? 'Not even one may be out of a case that is not anchored.'
    : `By this sum ${counted(n, 'drawer', 'drawers')} at most, the heaviest first.`;
export const looseOut = (x: Ratio): string =>
  `Loose shelves, trays and what stands on them, about ${weight(x)}, are not counted on: they may be out.`;
export const drawersUnweighed = (n: number): string =>
  `In the drawers${unweighed(n)} It tips more than this.`;
const turning = (x: Ratio): string => wholeOf('turning', x);
export const noDrawers = 'No drawers that work out stand in it: nothing to pull out.';

// The tally of each drawer.

export const tally = 'Load of each drawer';
/** The column is named where its bank has several, the bank where there are several of those. */
export const drawer = (no: number, column: number | undefined, bank?: string): string =>
  `${bank === undefined ? 'Drawer' : `${bank || 'Drawers'}: drawer`} ${no}${column === undefined ? '' : `, column ${column}`}`;
export const drawerSays = (at: {
  readonly full: Ratio;
  readonly things: Ratio;
  readonly unweighed: number;
  readonly share: number | undefined;
  readonly code: 'within' | 'near' | 'over' | 'rating-missing';
  readonly inWood?: true | undefined;
}): string => {
  const load = `${weight(at.full)}, things ${weight(at.things)}${at.unweighed > 0 ? `, ${at.unweighed} not weighed` : ''}`;
  if (at.inWood) return `${load}; it runs in wood, which nobody rates`;
  if (at.share === undefined) return `${load}; enter what a pair of slides carries`;
  const said = { within: '', near: ', near it', over: ', too much', 'rating-missing': '' }[at.code];
  return `${load}; ${at.share} % of the pair${said}`;
};

// What things are called here.

export const theCase = 'the case';
export const emptyCase = 'the case, empty';
export const sheet = 'a whole sheet';
export const loaded = (drawer: string, full: boolean): string =>
  `${drawer}, ${full ? 'with its things' : 'empty'}`;
/** A part that comes out piece by piece. */
export const allOf = (part: string, copies: number): string =>
  copies === 1 ? part : `${part} (each of the ${copies})`;

const blanks = {
  out: 'how far out the hands start',
  up: 'how high they start',
  toOut: 'how far out they end',
  toUp: 'how high they end',
  grip: 'how well it is gripped',
} as const;

export const blankName = (blank: keyof typeof blanks): string => blanks[blank];
