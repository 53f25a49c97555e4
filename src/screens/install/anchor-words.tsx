import type { ComponentChildren as Blank } from 'preact';
import type { ZoneRead } from '../../job/room';
import type { Length } from '../../length/length';
import { assertNever } from '../../length/result';
import type { Units } from '../../length/units';
import type { anchorOf } from '../../plan/put-up-plan';
import { usualWasher } from '../../plan/screw-plan';
import { upFrom } from '../shared/cleat-words';
import { counted } from '../shared/counted';
import { exactly as w } from '../shared/exact-words';

type Card = NonNullable<ReturnType<typeof anchorOf>>;
type Fact = Card['facts'][number];
type Lack = Card['lacks'][number];

export const anchors = 'Anchors';
export const wall = 'What the wall is';
export const walls = {
  framing: { label: 'board over framing', hint: 'screws bite in the framing alone' },
  sheathing: { label: 'solid sheathing', hint: 'a screw bites anywhere' },
} as const;
export const fixings = 'How many fixings';
export const ofFixings = 'fixings';
export const thick = 'What they go through at the back, how thick';
export const wide = 'How wide that is';
export const washers = 'Washers';
export const washerWords = (units?: Units) =>
  ({
    yes: { label: 'a washer under each head', hint: `${w(usualWasher(units))} is counted for it` },
    no: { label: 'no washers' },
    unsaid: { label: 'washers not said' },
  }) as const;
export const cover = 'Wall board, back or other stuff between';
export const into = 'How thick the sheathing is';
export const gauge = 'Number of the screws';

export const sentence = (b: Readonly<Record<'wall' | 'fixings' | 'thick' | 'wide' | 'washers', Blank>>) => (
  <>
    The wall is {b.wall}. {b.fixings} fixings through a cleat {b.thick} thick and {b.wide} wide, {b.washers}.
  </>
);

export const between = (b: Readonly<Record<'cover' | 'gauge' | 'into', Blank>>) => (
  <>
    Between it and what they bite {b.cover} more; number {b.gauge}.
    {b.into !== undefined && <> The sheathing is {b.into} thick.</>}
  </>
);

export const stands = (b: Readonly<Record<'where' | 'at', Blank>>) => (
  <>
    The cleat is {b.where}; its lower edge stands {b.at} {upFrom}.
  </>
);

/** Where the case has nailers in place of cleats. */
export const nailerIsCleat = 'The cleat of this case is its top nailer.';

export const missing = {
  through: 'Say how thick what they go through is.',
  into: 'Say how thick the sheathing is.',
} as const;

/** Where the cleat stands, and where along it a screw goes; all of it is read on the page of the wall. */
export function atWall(
  from: Length | undefined,
  to: Length | undefined,
  at: readonly string[] | undefined,
): string {
  const stands = from && to ? `It goes from ${w(from)} to ${w(to)} along the wall.` : '';
  if (at === undefined) return stands || 'Where it goes along the wall is not said yet.';
  if (at.length === 0) return `${stands} No stud behind it takes a screw.`;
  return `${stands} ${counted(at.length, 'stud takes', 'studs take')} a screw: at ${at.join(', ')}.`;
}
export const toWall = 'The wall: studs, cleat, pipes';

export const notHigh = 'Say how high the case is, and its anchor card stands here.';

export function fact(x: Fact): string {
  switch (x.code) {
    case 'before-loading':
      return 'Fix it before anything is loaded.';
    case 'fixings':
      return `At least ${x.least} fixings, high up, ${x.where === 'anywhere' ? 'anywhere in the sheathing' : 'into framing'}.`;
    case 'cleat':
      return `Through a cleat ${w(x.thick)} × ${w(x.wide)} or more, not the thin back alone.`;
    case 'strip-between':
      return x.has
        ? `It stands ${w(x.past)} over ${w(x.over)}: fix it through the ${x.has} between as well.`
        : `It stands ${w(x.past)} over ${w(x.over)}: an anchor strip between floor and top as well.`;
    case 'again-in-a-week':
      return 'Look at every fixing again after a week.';
    default:
      return assertNever(x);
  }
}

/** What nobody said yet. */
export const ask: Readonly<Record<Card['asks'][number], string>> = {
  fixings: 'Say how many fixings.',
  cleat: 'Say how thick and how wide what they go through is.',
  washers: 'Say whether there is a washer under each head.',
};

export function lack(x: Lack): string {
  switch (x.code) {
    case 'too-few':
      return `${counted(x.by, 'fixing', 'fixings')} too few.`;
    case 'back-alone':
      return 'No cleat is said: the thin back alone does not bear. Say how thick and how wide one is.';
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
export function zone({ what, from, to, low, high }: Omit<ZoneRead, 'id'>): string {
  const along = from && to ? `, ${w(from)} to ${w(to)} from the left` : '';
  const up = low && high ? `, ${w(low)} to ${w(high)} up` : '';
  return `Not here: ${what || 'something in the wall'}${along}${up}.`;
}

export const noZones =
  'No places to keep off are said for this room. Find pipes, wires and heating tubes before the first hole.';

export const notReckoned =
  'What a fixing holds in this wall is not reckoned: that is for its maker and for whoever answers for the building. Local codes come first.';
