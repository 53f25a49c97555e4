import type { ComponentChildren as Blank } from 'preact';
import { inches, type Length } from '../../length/length';
import { assertNever } from '../../length/result';
import type { anchorOf } from '../../plan/put-up-plan';
import { counted } from '../shared/counted';
import { exactly as w } from '../shared/exact-words';

type Card = NonNullable<ReturnType<typeof anchorOf>>;
type Fact = Card['facts'][number];
type Lack = Card['lacks'][number];

export const anchors = 'Anchors';
export const wall = 'What the wall is';
export const walls = {
  framing: { label: 'board over framing', hint: 'screws hold in the framing alone' },
  sheathing: { label: 'solid sheathing', hint: 'a screw holds anywhere' },
} as const;
export const fixings = 'How many fixings';
export const thick = 'What they go through at the back, how thick';
export const wide = 'How wide that is';
export const washers = 'Washers';
export const washerWords = { yes: 'a washer under each head', no: 'no washers' } as const;

export const sentence = (b: Readonly<Record<'wall' | 'fixings' | 'thick' | 'wide' | 'washers', Blank>>) => (
  <>
    The wall is {b.wall}. {b.fixings} fixings through a cleat {b.thick} thick and {b.wide} wide, {b.washers}.
  </>
);

export const notHigh = 'Say how high the case is, and its anchor card stands here.';

/** Over this a strip between is wanted, as `anchorCard` has it. */
const tall = inches(60n);

export function fact(x: Fact): string {
  switch (x.code) {
    case 'before-loading':
      return 'Fix it before anything is loaded.';
    case 'fixings':
      return `At least ${x.least} fixings, high up, ${x.where === 'anywhere' ? 'anywhere in the sheathing' : 'into framing'}.`;
    case 'cleat':
      return `Through a cleat ${w(x.thick)} × ${w(x.wide)} or more, not the thin back alone.`;
    case 'strip-between':
      return `It stands ${w(x.past)} over ${w(tall)}: an anchor strip between floor and top as well.`;
    case 'again-in-a-week':
      return 'Look at every fixing again after a week.';
    default:
      return assertNever(x);
  }
}

export function lack(x: Lack): string {
  switch (x.code) {
    case 'too-few':
      return `${counted(x.by, 'fixing', 'fixings')} too few.`;
    case 'back-alone':
      return 'No cleat is said: the thin back alone does not bear.';
    case 'cleat-thin':
      return `The cleat is ${w(x.by)} too thin.`;
    case 'cleat-narrow':
      return `The cleat is ${w(x.by)} too narrow.`;
    case 'no-washers':
      return 'No washers, and the heads bear on thin stuff.';
    default:
      return assertNever(x);
  }
}

/** What lies in the wall where nothing may be fastened. */
export const zone = (what: string | undefined, from: Length | undefined, to: Length | undefined): string =>
  `Not here: ${what || 'something in the wall'}${from && to ? `, ${w(from)} to ${w(to)} from the left` : ''}.`;

export const noZones =
  'No places to keep off are said for this room. Find pipes, wires and heating tubes before the first hole.';

export const notReckoned =
  'What a fixing holds in this wall is not reckoned: that is for its maker and for whoever answers for the building. Local codes come first.';
