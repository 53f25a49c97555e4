import { absolute, compare, isNegative, type Length, shortest } from '../../length/length';
import { assertNever } from '../../length/result';
import type { WayField, WayFound, WayKind } from '../../plan/way-plan';
import type { WayThrough } from '../../trade/room/doorway';
import type { Lies } from '../../trade/room/lying';
import type { StairFit, WayUp } from '../../trade/room/stair';
import type { PassageError, Passed, TurnWay } from '../../trade/room/way-in';
import { exactly as w } from './exact-words';

export const kinds: Record<WayKind, string> = { doorway: 'Doorway', turn: 'Turn', stair: 'Stair' };

export const wayName = ({
  name,
  kind = 'doorway',
}: {
  readonly name?: string | undefined;
  readonly kind?: WayKind | undefined;
}): string => name || kinds[kind];

const fields: Record<WayField, string> = {
  width: 'how wide it is clear',
  height: 'how high it is clear',
  from: 'how wide it is before the turn',
  into: 'how wide it is after the turn',
  headroom: 'the headroom over the nosings',
  going: 'the going of a step',
  rise: 'the rise of a step',
  between: 'how wide it is between rail and wall',
};

/** What is missing of a thing on the way. */
const askWay = (name: string, asks: readonly WayField[]): string =>
  `${name}: say ${asks.map((field) => fields[field]).join(', ')}.`;

/** The way with the most room at its tightest place. */
function best<T>(ways: readonly T[], spares: (way: T) => readonly [Length, ...Length[]]): T | undefined {
  const tight = (way: T): Length => shortest(...spares(way));
  return [...ways].sort((a, b) => compare(tight(b), tight(a)))[0];
}

const by = (what: string, x: Length): string =>
  isNegative(x) ? `${w(absolute(x))} too little ${what}` : `${w(x)} to spare ${what}`;

const throughText = (name: string, ways: readonly WayThrough[]): string => {
  const way = best(ways, ({ sideways, overhead, behind }) => [
    sideways,
    overhead,
    ...(behind ? [behind] : []),
  ]);
  if (!way) return '';
  const rest = way.behind ? `, ${by('behind it', way.behind)}` : '';
  return `${name}: its ${way.across} across and its ${way.up} up, ${by('sideways', way.sideways)}, ${by('overhead', way.overhead)}${rest}.`;
};

const lying: Record<Lies, string> = {
  upright: 'upright',
  'on-back': 'on its back',
  'on-side': 'on its side',
};

function turnText(name: string, ways: readonly TurnWay[]): string {
  const way = best(ways, ({ turn, overhead }) => [
    turn.spare ?? turn.beside,
    turn.beside,
    ...(overhead ? [overhead] : []),
  ]);
  if (!way) return '';
  const { turn, lies, overhead } = way;
  const long = turn.spare ? by('in length', turn.spare) : by('in width', turn.beside);
  const high = overhead ? `, ${by('overhead', overhead)}` : '';
  const close = turn.close ? ` That is close: mind your knuckles.` : '';
  const how = turn.goes === 'unturned' ? ', slid round without turning it' : '';
  return `${name}: ${lying[lies]}${how}, ${long}${high}.${close}`;
}

function stairText(name: string, fit: StairFit): string {
  const way = best<WayUp>(fit.ways, ({ sideways, overhead }) => [sideways, overhead]);
  if (!way) return '';
  return `${name}: ${w(fit.clear)} clear square to the slope; its ${way.across} across and its ${way.up} up, ${by('sideways', way.sideways)}, ${by('overhead', way.overhead)}.`;
}

/** By how much a case goes, or does not: the way of carrying it that has most room. */
export function passedText(name: string, passed: Passed): string {
  switch (passed.kind) {
    case 'doorway':
      return throughText(name, passed.ways);
    case 'turn':
      return turnText(name, passed.ways);
    case 'stair':
      return stairText(name, passed.fit);
    default:
      return assertNever(passed);
  }
}

const whats: Readonly<Record<string, string>> = {
  'clear-width': 'clear width',
  'clear-height': 'clear height',
  leaf: 'width of the door itself',
  beyond: 'room beyond',
  a: 'width before the turn',
  b: 'width after the turn',
};

export function passageErrorText(name: string, error: PassageError): string {
  switch (error.code) {
    case 'winders':
      return `${name}: steps that turn are not worked out. Carry a full-size frame of sticks up it.`;
    case 'leaf-not-opening':
      return `${name}: the clear width is ${w(error.by)} more than, or the same as, the door itself: measure from stop to stop, the door off its hinges.`;
    case 'negative-hand':
      return `Room for a hand is ${w(error.by)} under 0: 0 or more fits.`;
    case 'not-positive':
      return `${name}: its ${whats[error.what] ?? error.what} must be more than 0.`;
    default:
      return assertNever(error);
  }
}

/** What is said of one thing on the way. */
export function wayText({ way, asks, found }: WayFound): { readonly says: string; readonly wrong: boolean } {
  const name = wayName(way);
  if (!found) return { says: askWay(name, asks), wrong: false };
  return found.ok
    ? { says: passedText(name, found.value), wrong: !found.value.passes }
    : { says: passageErrorText(name, found.error), wrong: true };
}
