import type { ComponentChildren as Blank } from 'preact';
import { isZero } from '../../length/length';
import { backHow } from '../../trade/carcass/back-how';
import type { Case } from '../../trade/carcass/case';
import { pastTop } from '../../trade/carcass/meetings';
import { stilesDown } from '../../trade/carcass/stiles-down';
import { wordFor } from '../shared/counted';

/** What may go round a case: its name, what putting it in and taking it out are called, in the log too. */
export const options = {
  back: { name: 'Back', add: 'A back', off: 'No back' },
  cleats: { name: 'Cleats', add: 'Cleats', off: 'No cleats' },
  frame: { name: 'Face frame', add: 'A face frame', off: 'No face frame' },
  loose: { name: 'Loose top', add: 'A loose top', off: 'No loose top' },
  edging: { name: 'Edging', add: 'Edging', off: 'No edging' },
  toe: { name: 'Toe board', add: 'A toe board', off: 'No toe board' },
  nailers: { name: 'Nailers', add: 'Nailers', off: 'No nailers' },
  plinth: { name: 'Plinth', add: 'A plinth', off: 'No plinth' },
  base: { name: 'Base frame', add: 'A lapped frame', off: 'No base frame' },
} as const;

export const remove = (name: string): string => `Remove the ${name.toLowerCase()}`;
export const adds = (label: string): string => `+ ${label}`;

export const howMany = {
  partitions: 'How many partitions',
  cleats: 'How many cleats',
  mitres: 'Mitred ends',
  crosses: 'How many cross members',
  nailers: 'How many nailers',
  plinthCrosses: 'How many cross members the plinth has',
} as const;
export const stilesHeld = 'How the stiles are held';
export const middleHeld = 'How the middle stile is held';

type At<K extends string> = Readonly<Record<K, Blank>>;

export const back = (at: At<'stock' | 'how' | 'deep' | 'wide' | 'room'>) => (
  <>
    A back of {at.stock} {at.how} {at.deep} deep and {at.wide} wide, {at.room} room.
  </>
);

export const backInGroove = (at: At<'stock' | 'how' | 'deep' | 'wide' | 'land' | 'room'>) => (
  <>
    A back of {at.stock} {at.how} {at.deep} deep and {at.wide} wide, {at.land} left behind it, {at.room} room.
  </>
);

export const backLaidOn = (at: At<'stock' | 'how' | 'inset'>) => (
  <>
    A back of {at.stock} {at.how}, {at.inset} in from the outside all round.
  </>
);

/** How high a back goes where the sides run past the top. */
export const backGoesUp = (c: Case): Blank => {
  if (isZero(pastTop(c))) return null;
  return <> It goes up {backHow(c) === 'groove' ? 'into the top' : 'to the ends of the sides'}.</>;
};

export const cleats = (c: Case, at: At<'count' | 'stock' | 'wide' | 'deep' | 'across' | 'notch'>) => (
  <>
    {at.count} {wordFor(c.cleats, 'cleat', 'cleats')} of {at.stock}, {at.wide} wide, in rabbets {at.deep} deep
    and {at.across} wide{backHow(c) === 'groove' ? <>, behind the back</> : <>, notches {at.notch} deep</>}.
  </>
);

export const frame = (
  c: Case,
  at: At<
    | 'stock'
    | 'how'
    | 'meets'
    | 'past'
    | 'stile'
    | 'clear'
    | 'stilesOff'
    | 'middle'
    | 'middleOff'
    | 'top'
    | 'bottom'
    | 'sill'
    | 'toe'
  >,
) => (
  <>
    A face frame of {at.stock} {at.how}, {at.meets}, {at.past} past the sides. Stiles {at.stile},{' '}
    {stilesDown(c) && <>{at.clear} clear of the floor, </>}
    {at.stilesOff}
    {c.partitions > 0 && (
      <>
        ; middle {at.middle}, {at.middleOff}
      </>
    )}
    ; rails {at.top} at the top,{' '}
    {stilesDown(c) ? (
      <>
        at the bottom from {at.sill} over the case bottom to {at.toe} off the floor.
      </>
    ) : (
      <>{at.bottom} at the bottom.</>
    )}
  </>
);

export const looseTop = (at: At<'stock' | 'front' | 'side'>) => (
  <>
    A loose top of {at.stock}, {at.front} past the front and {at.side} past each side.
  </>
);

export const edging = (c: Case, at: At<'stock' | 'lip' | 'mitres'>) => (
  <>
    Edging of {at.stock} hanging {at.lip} below, {at.mitres} {wordFor(c.mitres, 'end', 'ends')} mitred.
  </>
);

export const toe = (at: At<'stock' | 'how' | 'back'>) => (
  <>
    A toe board of {at.stock} {at.how}, {at.back} back.
  </>
);

export const toeInNotches = (at: At<'stock' | 'how' | 'back' | 'before' | 'clear'>) => (
  <>
    A toe board of {at.stock} {at.how}, {at.back} behind the foremost face, which stands {at.before} before
    the sides; {at.clear} clear of the floor.
  </>
);

export const nailers = (at: At<'count' | 'stock' | 'wide' | 'deep'>, behind: boolean) => (
  <>
    Nailers, {at.count}, of {at.stock}, {at.wide} wide, let {at.deep} into the sides; they lie{' '}
    {behind ? 'behind the back' : 'inside'}: under the top, on the bottom, others evenly between. Glued and
    fastened; the case is screwed to the wall through them.
  </>
);

export const plinth = (
  at: At<'stock' | 'how' | 'front' | 'before' | 'left' | 'right' | 'back' | 'crosses' | 'cross'>,
) => (
  <>
    A plinth of {at.stock} under the case, {at.how}: {at.front} behind the foremost face, which stands{' '}
    {at.before} before the sides; in {at.left} at the left, {at.right} at the right, {at.back} at the back. It
    has {at.crosses} cross members of {at.cross}.
  </>
);

export const base = (c: Case, at: At<'stock' | 'crosses' | 'cross' | 'wide'>) => (
  <>
    A lapped frame of {at.stock} with {at.crosses} {wordFor(c.crosses, 'cross member', 'cross members')} of{' '}
    {at.cross}, {at.wide} wide.
  </>
);
