import type { WayRead } from '../job/room';
import { isNegative, type Length } from '../length/length';
import type { Result } from '../length/result';
import type { TiltError, TiltUp } from '../trade/room/tilt';
import type { Passed } from '../trade/room/way-in';
import { type DoorFound, isInTheWay } from './door-plan';
import type { WayFound } from './way-plan';

/** How a case comes to stand where it is to be. */
export type Standing =
  /** Something on its way lets it by only lying, whatever was said: the first such. */
  { readonly how: 'only-lying'; readonly way: WayRead } | { readonly how: 'lying' | 'upright' | 'not-said' };

/** What no verdict can rest on, as it was not read or does not work out. */
export type Unread = 'width' | 'height' | 'way' | { readonly way: WayRead };

export type Verdict = {
  /** Whether it goes in by all that was read; nothing while nothing was. */
  readonly goesIn?: boolean;
  /** Where it stands a door strikes it, or it stands before the opening of one. */
  readonly inDoor: boolean;
  readonly unread: readonly Unread[];
};

/** Whether a case that gets by gets by on its feet. */
function upright(passed: Passed): boolean {
  switch (passed.kind) {
    case 'doorway':
      return passed.ways.some(({ passes, up }) => passes && up === 'height');
    case 'turn':
      return passed.ways.some(({ passes, lies }) => passes && lies === 'upright');
    case 'stair':
      return passed.fit.ways.some(({ passes, up }) => passes && up === 'height');
  }
}

const onlyLying = ({ found }: WayFound): boolean =>
  found?.ok === true && found.value.passes && !upright(found.value);

/**
 * How a case comes to stand: as was said, but for a way in that takes it only lying.
 *
 * @param standsUp as said of the room: carried in lying and stood up there, or not
 */
export function standingOf(standsUp: boolean | undefined, ways: readonly WayFound[]): Standing {
  const lying = ways.find(onlyLying);
  if (lying) return { how: 'only-lying', way: lying.way };
  if (standsUp === undefined) return { how: 'not-said' };
  return { how: standsUp ? 'lying' : 'upright' };
}

type Found = {
  readonly spareWide?: Length;
  readonly spareHigh?: Length;
  readonly tilt?: Result<TiltUp, TiltError>;
  readonly standing: Standing;
  readonly ways: readonly WayFound[];
  readonly doors: readonly DoorFound[];
};

/** It is stood up from its back, as was said or as its way in wants it. */
export const mustTilt = ({ how }: Standing): boolean => how === 'lying' || how === 'only-lying';

/** What speaks for or against a case, one reading after the other. */
const spoken = ({ spareWide, spareHigh, tilt, standing, ways }: Found): readonly boolean[] => [
  ...[spareWide, spareHigh].flatMap((spare) => (spare ? [!isNegative(spare)] : [])),
  ...(tilt && mustTilt(standing) ? [tilt.ok && tilt.value.passes] : []),
  ...ways.flatMap(({ found }) => (found?.ok ? [found.value.passes] : [])),
];

/** Whether a case goes in by what was read, and what was not. */
export function verdictOf(found: Found): Verdict {
  const all = spoken(found);
  const unread: readonly Unread[] = [
    ...(found.spareWide ? [] : (['width'] as const)),
    ...(found.spareHigh ? [] : (['height'] as const)),
    ...(found.ways.length > 0 ? [] : (['way'] as const)),
    ...found.ways.flatMap(({ way, found: passed }) => (passed?.ok ? [] : [{ way }])),
  ];
  const inDoor = found.doors.some(isInTheWay);
  return { ...(all.length > 0 && { goesIn: all.every(Boolean) }), inDoor, unread };
}
