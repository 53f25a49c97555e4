import type { ComponentChildren as Blank } from 'preact';
import type { ScrewKind, Screws } from '../../job/install';
import type { Length } from '../../length/length';
import { figureIn } from '../../length/metric-figures';
import { assertNever } from '../../length/result';
import type { Units } from '../../length/units';
import type { ScrewPlace } from '../../plan/screw-plan';
import type { Schedule } from '../../trade/install/schedule';
import { pipesIn, type Screw, usualTipMargin } from '../../trade/install/screw';
import type { ScrewWall } from '../../trade/install/wall';
import { counted, wordFor } from '../shared/counted';
import { closely, reckoned as r, exactly as w } from '../shared/exact-words';

export const title = 'Screws and anchors';
export const toCase = 'Case';
export const screws = 'Screws';
/** What is counted, where there are more than can be. */
export const ofRows = 'rows';
export const ofScrews = 'screws';
export const none =
  'No screws set out yet. Say where they go, and the stack in place says which screw bites enough.';
export const add = 'Screws for';
export const added = 'Screws set out';
export const remove = 'Take them out';
export const removed = (name: string): string => `${name} taken out`;
export const notInJob = 'This case is not in the job.';

export const kindWords: Readonly<Record<ScrewKind, string>> = {
  cleat: 'Another cleat to the wall',
  tocleat: 'Case to the cleat on the wall',
  case: 'Case to its neighbour',
  top: 'Loose top',
  base: 'Base under the case',
  filler: 'Filler strip',
  butted: 'A butted joint',
  other: 'Something else',
};

export const nameOf = ({ name, kind }: Pick<Screws, 'name' | 'kind'>): string => name || kindWords[kind];

/** What each blank asks. */
export const asks = {
  name: 'what they are for',
  through: 'they go through',
  cover: 'wall board, back or other stuff between',
  into: 'they go into, so thick',
  part: 'the part they hold, so thick',
  bite: 'what they bite into',
  sunk: 'heads below the face',
  washer: 'washer under the head',
  slant: 'how they are driven',
  gauge: 'number of the screw',
  wood: 'wood they bite into',
  run: 'how long the run is',
  end: 'from either end to the first',
  most: 'at most from one to the next',
  rows: 'rows',
  many: 'how many',
} as const;

export const ask = (of: Pick<Screws, 'name' | 'kind'>, what: keyof typeof asks): string =>
  `${nameOf(of)}: ${asks[what]}`;

export const bites = {
  face: 'the face of a sheet',
  edge: 'an edge',
  solid: 'solid wood',
  stud: 'framing of a wall',
} as const;
export const slants = {
  '0': 'square',
  '20': '20° off square',
  '30': '30° off square',
  '45': '45° off square',
};
export const gauges = { '6': '6', '8': '8', '10': '10' } as const;
export const woods = { soft: 'softwood', hard: 'hardwood or ply' } as const;

type Blanks = Readonly<Record<keyof typeof asks, Blank>>;

/** Into the end of a part its length is deep, and its thickness stands across them. */
const goesInto = (b: Blanks, kind: ScrewKind) =>
  kind === 'butted' ? (
    <>
      into the end of a part {b.part} thick and {b.into} long
    </>
  ) : (
    <>
      into {b.bite} {b.into} thick
    </>
  );

export const stack = (b: Blanks, kind: ScrewKind) => (
  <>
    Through {b.through} and {b.cover} more, {goesInto(b, kind)}. Heads {b.sunk} below the face, washer{' '}
    {b.washer}; driven {b.slant}. Number {b.gauge}, in {b.wood}.
  </>
);

export const spaced = (b: Blanks, rows: number) => (
  <>
    Along {b.run}, {b.end} from either end, at most {b.most} apart, in {b.rows} {wordFor(rows, 'row', 'rows')}
    .
  </>
);

export const counts = (b: Blanks) => <>{b.many} of them: framing stands where it stands.</>;

export const missing = {
  through: 'Say what they go through.',
  into: 'Say how thick what they go into is.',
} as const;

const longest = ({ clear, most }: Screw): Length => clear ?? most;

/** Which screw bites enough, with its tip and its bite. */
export const takes = (screw: Screw, units: Units, isWall: boolean): string =>
  screw.pick && screw.bite
    ? `Take screws ${w(screw.pick)} long, the ${isWall ? 'shortest' : 'longest'} that bite enough: each bites ${r(screw.bite)}. From ${r(screw.least)} to ${r(longest(screw))} would do, ${screw.clear ? `the tip ${w(pipesIn(units))} in at most` : `${w(figureIn(units, usualTipMargin))} left in front of the tip`}.`
    : '';

export const deep = (by: Length, units: Units): string =>
  `It goes ${r(by)} deeper than ${w(pipesIn(units))} into the wall, where pipes and wires run: look for them first.`;

/** Why none on the shelf does, by how much, and what would. */
export function fails(screw: Screw, at: Pick<ScrewPlace, 'usual'>): string {
  const { fails, by } = screw;
  const range = `one between ${r(screw.least)} and ${r(longest(screw))} is wanted`;
  const off = by ? r(by) : '';
  switch (fails) {
    case undefined:
      return '';
    case 'no-wood':
      return 'A thickness is 0 or less, or the washer is: measure it again.';
    case 'no-room':
      return `What they go into is ${off} too thin for a bite of ${w(at.usual.leastBite)} and the tip inside: thicker wood, or a bolt.`;
    case 'too-short':
      return `Every screw on the shelf is too short, the longest by ${off}: ${range}.`;
    case 'too-long':
      return `Every screw on the shelf would come through, the shortest by ${off}: ${range}.`;
    case 'none-between':
      return `None on the shelf does, the nearest is off by ${off}: ${range}.`;
    case 'no-list':
      return `No screws on the list: ${range}. See Shop figures.`;
    default:
      return assertNever(fails);
  }
}

/** Where they stand along the run. */
export const row = ({ count, marks, pitch }: Schedule, at: readonly string[], rows: number): string =>
  pitch
    ? `${counted(count, 'screw', 'screws')}${rows > 1 ? ` in ${rows} rows` : ''}, ${w(pitch)} apart. Marks from one end: ${at.join(', ')}.`
    : `${counted(count, 'screw', 'screws')}: the ends leave room for ${marks.length === 1 ? 'one, in the middle' : marks.length}, at ${at.join(', ')}.`;

export const holes = ({ pilot, clearance }: ScrewPlace['holes']): string =>
  `Drill ${w(clearance)} in the piece it goes through, ${w(pilot)} in the piece it bites.`;

export const many = (count: number | undefined): string =>
  count
    ? `${counted(count, 'screw goes', 'screws go')} on the list To buy.`
    : 'Not on the list To buy until their count is said.';

/** What straight screws leave beside them in the end of a part. Least of it is common practice. */
export const beside = ({ left, short }: ScrewWall, least: Length): string =>
  short
    ? `Only ${closely(left)} of the part is left at each side of the screw, ${closely(short)} short of ${w(least)}: it splits. A thinner screw, or dowels.`
    : `${closely(left)} of the part is left at each side of the screw.`;

// One figure at a time.

export const heading = (name: string): string => `Screws of ${name}`;
export const oneLong = 'the screw';
export const oneLongSays = 'Lay it beside the tape: from the seat of its head to its tip.';
export const oneClear = 'drill what it goes through';
export const oneClearSays = 'The shank slides through, so that the screw draws the two together.';
export const onePilot = 'drill what it bites';
export const onePilotSays = 'No deeper than the tip goes: tape round the bit.';
export const oneMark = (no: number, of: number): string => `mark ${no} of ${of}`;
export const oneMarkSays = 'From one end of the run. Every mark from that same end.';
export const does = 'It is so';
