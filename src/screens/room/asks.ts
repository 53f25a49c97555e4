import type { Across, Room, Upright } from '../../job/room';
import { editAcross, editCorner, editRoom, editUpright } from '../../job/room-edits';
import type { Length } from '../../length/length';
import type { UsualRoom } from '../../trade/room/usual';
import type { Ask } from '../shared/ask';
import { lengthRefused } from '../shared/refused-words';
import * as words from './words';

/** What may be 0: what is left free, and where a tape was started. */
const mayBeNothing: readonly RoomLength[] = ['burnedAt', 'allowLeft', 'allowRight', 'ceilingGap'];

type RoomLength = 'apart' | 'body' | 'burnedAt' | 'allowLeft' | 'allowRight' | 'ceilingGap';

const titles: Record<RoomLength, string> = {
  apart: words.apart,
  body: words.bodyLong,
  burnedAt: words.burnedAt,
  allowLeft: words.allowLeft,
  allowRight: words.allowRight,
  ceilingGap: words.ceilingGap,
};

/** A length of the room as a whole, and what stands in for it. */
export const roomLength = (room: Room, field: RoomLength, usual?: Length): Ask => ({
  as: 'length',
  title: titles[field],
  kind: field === 'apart' ? 'length' : 'place',
  now: room[field],
  usual,
  ...(mayBeNothing.includes(field) ? {} : { refuse: lengthRefused }),
  save: (value) => editRoom({ [field]: value }),
});

const standsUp = (room: Room): Ask => ({
  as: 'choice',
  title: words.standsUp,
  now: room.standsUp === undefined ? '' : room.standsUp ? 'lying' : 'upright',
  choices: [
    { value: 'upright', label: words.ways.upright },
    { value: 'lying', label: words.ways.lying },
  ],
  save: (how) => editRoom({ standsUp: how === 'lying' }),
});

export const freeAsks = (room: Room, usual: UsualRoom) => ({
  left: roomLength(room, 'allowLeft', usual.allow),
  right: roomLength(room, 'allowRight', usual.allow),
  gap: roomLength(room, 'ceilingGap', usual.ceilingGap),
  how: standsUp(room),
});

const planeAsk = (
  name: string,
  now: 'front' | 'back' | undefined,
  save: (to: 'front' | 'back') => ReturnType<Ask['save']>,
): Ask => ({
  as: 'choice',
  title: words.whichPlane(name),
  now: now ?? 'front',
  choices: (['front', 'back'] as const).map((value) => ({ value, label: words.planes[value] })),
  save: (to) => save(to === 'back' ? 'back' : 'front'),
});

const placeOf = (
  title: string,
  now: Length | undefined,
  save: (value: Length | undefined) => ReturnType<Ask['save']>,
): Extract<Ask, { readonly as: 'length' }> => ({
  as: 'length',
  title,
  kind: 'place',
  now,
  save,
});

/** A reading that is more than nothing. */
const lengthOf = (...at: Parameters<typeof placeOf>): Ask => ({ ...placeOf(...at), refuse: lengthRefused });

/** The blanks of one place between the walls; `no` counts from 1. */
export const acrossAsks = (spot: Across, no: number) => {
  const name = words.place(no);
  const edit = (field: 'at' | 'wide') => (value: Length | undefined) =>
    editAcross(spot.id, { [field]: value });
  const off = (title: string, field: 'left' | 'right'): Ask => ({
    as: 'length',
    title,
    kind: 'place',
    now: spot[field],
    signed: true,
    save: (value) => editAcross(spot.id, { [field]: value }),
  });
  return {
    at: placeOf(words.overFloor(name), spot.at, edit('at')),
    plane: planeAsk(name, spot.plane, (plane) => editAcross(spot.id, { plane })),
    wide: lengthOf(words.wide(name), spot.wide, edit('wide')),
    left: off(words.leftOf(name), 'left'),
    right: off(words.rightOf(name), 'right'),
  };
};

/** The blanks of one place between floor and ceiling. */
export const uprightAsks = (spot: Upright, no: number) => {
  const name = words.upright(no);
  const ask = (title: string, field: 'high' | 'drop' | 'rise') =>
    lengthOf(title, spot[field], (value) => editUpright(spot.id, { [field]: value }));
  return {
    at: placeOf(words.fromLeft(name), spot.at, (at) => editUpright(spot.id, { at })),
    plane: planeAsk(name, spot.plane, (plane) => editUpright(spot.id, { plane })),
    high: ask(words.high(name), 'high'),
    drop: ask(words.down(name), 'drop'),
    rise: ask(words.up(name), 'rise'),
  };
};

export const cornerAsks = (room: Room, side: 'left' | 'right') => {
  const ask = (field: 'back' | 'side' | 'across') =>
    lengthOf(words.cornerTitles[field](side), room.corners[side]?.[field], (value) =>
      editCorner(side, { [field]: value }),
    );
  return { back: ask('back'), side: ask('side'), across: ask('across') };
};
