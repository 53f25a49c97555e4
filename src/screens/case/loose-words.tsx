import type { ComponentChildren as Blank } from 'preact';
import { isPositive, type Length } from '../../length/length';
import type { Inside } from '../../trade/carcass/case';
import type { CaseProblem } from '../../trade/carcass/problems';
import type { PinProblem, PinWarning } from '../../trade/shelves/pin-problem';
import { counted, wordFor } from '../shared/counted';
import { exactly as w } from '../shared/exact-words';
import { numbersOf } from '../shared/row-words';

/** Blanks of loose shelves. */
export const looseTitles = {
  heldBy: 'What holds the loose shelves',
  holeFirst: 'First hole over the bottom',
  holePitch: 'Hole to hole',
  holeTop: 'Room over the last hole',
  least: 'Least from bottom and top to a hole',
  holeWide: 'How wide the holes are',
  holeDeep: 'How deep the holes are',
  front: 'Front edge to the front row',
  behind: 'Back edge to the rear row',
  bore: 'What the holes are bored with',
  stripWide: 'How wide a strip is',
  stripThick: 'How thick a strip is',
  stripDeep: 'How deep its groove is',
  stripRoom: 'How much wider its groove is',
  stripTop: 'Strip short of its opening',
  stripSold: 'How long a strip is as sold',
  sparePins: 'Pins to spare',
  spareClips: 'Clips to spare',
  templateLong: 'How long the template is',
  templateFirst: 'End of the template to its first hole',
  templateHoles: 'How many holes the template has',
  templateError: 'How far out a hole of the template is',
  templatePlay: 'How loose a hole is on its pin',
  flange: 'Room for a pin at each end',
  play: 'Play at each end',
  frontPlay: 'Room in front of a shelf',
  backPlay: 'Room behind a shelf',
  band: 'Edging on the front of a shelf',
} as const;

/** What may hold them. */
export const holders = [
  { value: '', label: 'pins, no holes laid out', hint: 'holes you see to yourself' },
  { value: 'pins', label: 'pins in rows of holes', hint: 'a first hole and a pitch of your own' },
  { value: 'lines', label: 'pins 32 mm apart', hint: 'lines of holes for 32 mm fittings, kept in mm' },
  { value: 'strips', label: 'metal strips let in', hint: 'slotted strips in grooves up the walls' },
] as const;

export const borers = [
  { value: 'template', label: 'a drill and a template', hint: 'both rows of both walls off one template' },
  { value: 'press', label: 'a drill press', hint: 'the front edge along its fence' },
] as const;

type Held = Readonly<
  Record<
    'wide' | 'deep' | 'first' | 'pitch' | 'top' | 'front' | 'behind' | 'bore' | 'thick' | 'room' | 'sold',
    Blank
  >
>;
type Sized = Readonly<
  Record<'flange' | 'play' | 'frontPlay' | 'backPlay' | 'band' | 'edge' | 'spares', Blank>
>;

type Loose = {
  readonly i: Inside;
  readonly bay: Blank;
  readonly count: Blank;
  readonly by: Blank;
  readonly at: Held;
  readonly size: Sized;
};

export const loose = ({ i, bay, count, by, at, size }: Loose) => (
  <>
    {count} {wordFor(i.count ?? 1, 'loose shelf', 'loose shelves')}
    {bay} on {by}
    {i.heldBy && (
      <>
        {': '}
        {walls(i, at)}. Each shelf{' '}
        {i.heldBy !== 'strips' && <>{size.flange} clear of the walls for its pins, </>}
        with {size.play} play at each end, {size.frontPlay} free in front and {size.backPlay} behind, its
        front edging {size.band}
        {size.edge && <> of {size.edge}</>}. Four {i.heldBy === 'strips' ? 'clips' : 'pins'} a shelf,{' '}
        {size.spares} to spare
      </>
    )}
    .
  </>
);

/** What is bored in the walls, or let into them. */
function walls({ heldBy }: Inside, at: Held) {
  switch (heldBy) {
    case 'strips':
      return (
        <>
          strips {at.wide} wide and {at.thick} thick in grooves {at.deep} deep and {at.room} wider, one{' '}
          {at.front} from the front edge, the other {at.behind} from the back, {at.top} short of what is over
          them; sold {at.sold} long
        </>
      );
    case 'lines':
      return (
        <>
          holes {at.wide} wide and {at.deep} deep, at least {at.first} from bottom and top; one row {at.front}{' '}
          from the front edge, the other at least {at.behind} from the back, bored with {at.bore}
        </>
      );
    default:
      return (
        <>
          holes {at.wide} wide and {at.deep} deep, the first {at.first} over the bottom, {at.pitch} apart,
          leaving {at.top} at the top; one row {at.front} from the front edge, the other {at.behind} from the
          back, bored with {at.bore}
        </>
      );
  }
}

type Rows = {
  readonly count: number;
  readonly last: Length;
  readonly left: Length;
  readonly metric: boolean;
};

/** What the rows come to, and how the shelves are tried. */
export const rowsSay = ({ count, last, left, metric }: Rows): string =>
  `${counted(count, 'hole', 'holes')} a row, four rows; the last ${metric ? 'about ' : ''}${w(last)} over the bottom${
    left.n === 0n ? '' : `, ${w(left)} more than said left at the top`
  }. Once a shelf lies, pull it forward: it must not leave its pins. Heavy things low.`;

/** How far edging of wood stands past the faces of its shelf until it is trimmed. */
export const edgingSays = (past: Length): string =>
  `The edging is ripped out of the stick, as long as a shelf. Glued on it stands ${w(past)} past the shelf: trim it flush.`;

/** Edging that is of no stock of the job. */
export const asBand = { label: 'band as bought', hint: 'on the list to buy, by the foot' } as const;

type Strips = {
  readonly pieces: readonly { readonly long: Length }[];
  readonly width: Length;
  readonly proud: Length;
};

/** How many strips, and the longest they may be: of several openings from the bottom up. */
function stripsOf(pieces: Strips['pieces']): string {
  const longs = pieces.filter(({ long }) => isPositive(long)).map(({ long }) => w(long));
  return longs.length === 1 && pieces.length === 1
    ? `Four strips, at most ${longs[0]} long`
    : `Four strips an opening, at most ${longs.join(', ')} long from the bottom up`;
}

/** What strips come to: a slot of one must face a slot of the other. */
export const stripsSay = ({ pieces, width, proud }: Strips): string =>
  `${stripsOf(pieces)}, in grooves ${w(width)} wide that run the whole wall. Cut ${pieces.length === 1 ? 'all four' : 'the four of an opening'} off the same end and stand the same slot down.${
    proud.n === 0n ? '' : ` They stand ${w(proud)} proud.`
  } Once a shelf lies, pull it forward: it must not leave its clips. Heavy things low.`;

/** What a figure of loose shelves is called in a sentence. */
export const looseFigures = {
  first: 'where the first hole goes',
  pitch: 'how far apart the holes are',
  flange: 'the room for a pin',
  play: 'the play at each end',
  frontPlay: 'the room in front',
  backPlay: 'the room behind',
  band: 'the edging',
  width: 'how wide it is',
  depth: 'how deep it is',
  stripThick: 'how thick a strip is',
  stripRoom: 'how much wider its groove is',
  stripSold: 'how long it is as sold',
} as const;

const rows = { hole: 'rows', strip: 'grooves' } as const;
const cuts = { hole: 'Holes', strip: 'Grooves' } as const;

const ofPins: Readonly<Record<PinProblem['code'], true>> = {
  'no-hole': true,
  'holes-touch': true,
  'rows-cross': true,
  'row-off': true,
  'hole-through': true,
  'holes-meet': true,
  'no-strips': true,
  'no-shelf': true,
};

/** Whether a problem of a case is one of its holes for pins, or of its loose shelves. */
export const isOfPins = (problem: CaseProblem): problem is PinProblem => Object.hasOwn(ofPins, problem.code);

/** Why the holes cannot be bored so, by how much, and what would fit. */
export function pinProblemText(problem: PinProblem, nameOf: (id: string) => string): string {
  switch (problem.code) {
    case 'no-hole':
      return `No hole fits: the first and the room over it are ${w(problem.by)} more than there is.`;
    case 'holes-touch':
      return `The holes run into each other. More than ${w(problem.dia)} from hole to hole.`;
    case 'rows-cross':
      return problem.by.n === 0n
        ? `The two ${rows[problem.cut]} touch. Less from the front or from the back.`
        : `The two ${rows[problem.cut]} run into each other by ${w(problem.by)}. That much less from the front or from the back.`;
    case 'row-off':
      return `The ${problem.row} ${problem.cut === 'strip' ? 'groove' : 'row'} runs ${w(problem.by)} off the ${problem.row === 'front' ? 'front' : 'back'} edge.`;
    case 'hole-through':
      return `${cuts[problem.cut]} ${w(problem.depth)} deep go through a wall ${w(problem.thickness)} thick. Leave a third of it.`;
    case 'holes-meet':
      return `${cuts[problem.cut]} from the two faces of the partition run ${w(problem.by)} into each other, with those of ${nameOf(problem.with)}. At most ${w(problem.most)} deep each, or farther in.`;
    case 'no-strips':
      return problem.by.n === 0n
        ? 'Nothing is left of the strips: have them less short of what is over them.'
        : `Nothing is left of the strips: ${w(problem.by)} too much is taken off the highest opening.`;
    case 'no-shelf':
      return `Nothing is left of the shelf ${problem.across ? 'across' : 'from front to back'}: ${w(problem.by)} too much is taken off it.`;
  }
}

/** What is worth a look. Limits are common practice. */
export function pinWarningText(warning: PinWarning): string {
  switch (warning.code) {
    case 'holes-left-out':
      return `Left out of every row, too near a shelf or a groove across the wall: ${warning.numbers.length === 1 ? 'hole' : 'holes'} ${numbersOf(warning.numbers)}.`;
    case 'hole-web':
      return `${warning.both ? 'Between what is cut from the two faces of the partition' : warning.cut === 'strip' ? 'Behind a groove' : 'Behind a hole'} only ${w(warning.web)} is left: keep ${w(warning.least)}.`;
    case 'strips-crossed':
      return 'Trays of this bay run where the strips stand: have one or the other in it.';
    case 'no-strip':
      return `No strip fits in the opening of ${w(warning.opening)}: no loose shelf lies in it.`;
    case 'sets-meet':
      return `What is cut for these shelves runs into what is cut for others of this bay. A row ${w(warning.by)} farther aside clears it; with the same figures both lie in the same holes.`;
    case 'edge-thin':
      return `The edging is of stock ${w(warning.by)} thinner than the shelves: it does not cover their edge.`;
    case 'strips-short':
      return `As sold a strip is ${w(warning.by)} shorter than it may be in the highest opening: no shelf lies over its end. Longer ones go higher.`;
    case 'not-32':
      return `Not 32 mm: off by ${w(warning.each.abs() as Length)} a hole, ${w(warning.last.abs() as Length)} at the last. For 32 mm fittings take pins 32 mm apart.`;
  }
}
