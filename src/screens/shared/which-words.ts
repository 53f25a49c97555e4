import { absolute, isNegative, isZero, type Length } from '../../length/length';
import { assertNever } from '../../length/result';
import { markAt, type Tape } from '../../length/tape';
import { writeLength, writeMark } from '../../length/write';
import type { Takes } from '../../trade/carcass/part-name';
import type { FastenerRow } from '../../trade/fasteners/row';
import type { Operation, What } from '../../trade/setups/operation';
import type { Seat, Which } from '../../trade/setups/which';
import { rowWords } from './row-words';

/** What is minded in a step at the bench. */
const benchSays: Partial<Record<What, string>> = {
  'dry-fit': 'square it, and measure each opening as built',
  'finish-inside': 'inner faces and back; joints masked',
  'glue-up': 'try the back first; diagonals before the glue grips',
  'frame-on': 'then measure its openings',
  'box-up': 'dry, then glue; diagonals before it grips',
  slide: 'rests on the stick',
  runner: 'rests on the stick, front end on its mark',
  hang: 'runs free, full out and home',
  'stop-block': 'blocks over it, blocks turned up on its back: pull it till they meet',
  'carry-in': 'drawers out; of two units the lower first',
  level: 'shims under the low feet, front and back, left and right',
  scribe: 'compass down the wall; cut to the line, a little under square',
  filler: 'at each side left open: its strip scribed to the wall',
  cleat: 'into the wall, its edge on the line, before the case stands there',
  anchor: 'through the cleat, before anything goes in',
  'check-again': 'all screws tight: level, plumb, not twisted',
  'front-on': 'on its shims, screwed from inside; then measure its far edge',
  finish: 'pulls off, dust off, joints and slides masked',
  cure: 'nothing goes in until it has',
  load: 'the heavy things low, one drawer out at a time',
  label: 'drawers and trays',
  'look-back': 'what to do otherwise next time',
};

/** What is minded when a case is anchored by a cleat. */
const anchored = {
  case: 'into the wall: that anchors the case, before anything goes in',
  wall: 'the case to its cleat, before anything goes in',
} as const;

/** What is minded at a glue-up where the back stands in grooves. */
const backIn = {
  side: 'the back into its grooves before the second side, which goes on last; diagonals before the glue grips',
  back: 'the back slides down its grooves last; diagonals before the glue grips',
} as const;

/** What is minded when a box is hung that runs in wood. */
const inWood = 'level, both sides waxed, runs free and goes home';

/** The same where no drawers stand. */
const withoutDrawers = (what: What, trays: boolean): string => {
  switch (what) {
    case 'carry-in':
      return trays ? 'trays out; of two units the lower first' : 'of two units the lower first';
    case 'finish':
      return 'dust off, joints masked';
    case 'load':
      return 'the heavy things low';
    case 'label':
      return trays ? 'trays and shelves' : 'shelves';
    default:
      return benchSays[what] ?? '';
  }
};

/** A bit leaves the end of a groove round. */
const squared = ', its end squared with a chisel';

type Saying = { readonly end: string; readonly say: (x: Length) => string };

/** Where what does not run through begins and ends; one that runs out at the end it is measured from has one end. */
export const stoppedWords = (from: Length, to: Length, { end, say }: Saying): string =>
  isZero(from)
    ? `stopped ${say(to)} from the ${end} end`
    : `stopped: ${say(from)} to ${say(to)} from the ${end} end`;

/** What lies in a joint. @example takesWords({ part: 'cleat', no: 2 }) // 'for cleat 2' */
export function takesWords(takes: Takes): string {
  if (takes.said !== undefined) return takes.said ? `for ${takes.said}` : 'added by hand';
  return takes.no === undefined ? `for the ${lying(takes)}` : `for ${lying(takes)} ${takes.no}`;
}

const lying = ({ part }: Takes): string => (part === 'cross' ? 'cross member' : (part ?? ''));

function seatWords(seat: Seat): string {
  if (seat.in === 'said') return takesWords({ said: seat.said });
  return `${seat.in === 'run' ? 'no.' : seat.in}${seat.no === undefined ? '' : ` ${seat.no}`}`;
}

/** Which dowels, in what, and where from the top edge. */
function dowelWords({ row, marks }: Extract<Which, { readonly is: 'dowels' }>, tape: Tape): string {
  const where = row.in === 'face' ? 'inside face' : row.both ? 'both ends' : 'front end';
  const at = marks.map((mark) => writeLength(mark, tape)).join(', ');
  return `for dowels of the ${row.at}, ${where}: ${at} from the top edge`;
}

/** What it is that ends there. */
const endsThere = ({ holds, in: { off } }: FastenerRow): string =>
  holds.part === 'side' ? `the ${off} side` : takesWords(holds).replace(/^for /, '');

/** Which ends of a part, for a row bored in them. */
const endsWords = (ends: readonly string[]): string =>
  ends.length > 1 ? 'both ends' : `${ends[0] ?? ''} end`;

/** What a row is for. */
const fastenerWord = ({ biscuit, slant }: FastenerRow): string =>
  slant ? 'slant screws' : biscuit ? `#${biscuit} biscuits` : 'dowels';

/** Holes or slots for what holds a butted joint, and where from the front edge. */
export function fastenerWords(row: FastenerRow, tape: Tape): string {
  const mark = (x: Length) => writeLength(markAt(x, tape).value, tape);
  const at = row.marks.map(mark).join(', ');
  const back = row.slant ? `, each begun ${mark(row.slant.meets)} back from the end` : '';
  const where = row.in.at === 'ends' ? `, ${endsWords(row.in.named)}` : ` of ${endsThere(row)}`;
  return `for ${fastenerWord(row)}${where}: ${at} from the front edge${back}`;
}

type Cut = Exclude<Which, { readonly is: 'in-wood' }>;

function whichOf(what: What, which: Cut, tape: Tape): string {
  switch (which.is) {
    case 'groove': {
      const face = which.face ? `, face ${which.face}` : '';
      return `${seatWords(which.seat)}${which.wall ? `, ${which.wall} wall` : ''}${face}`;
    }
    case 'not-set-out':
      return 'not set out yet: see Marks';
    case 'takes': {
      if (!which.stopped) return takesWords(which.takes);
      const { from, to, end } = which.stopped;
      const at = stoppedWords(from, to, { end, say: (x) => writeLength(x, tape) });
      return `${takesWords(which.takes)}, ${at}${which.takes.part === 'back' ? squared : ''}`;
    }
    case 'row':
      return rowWords(which, tape);
    case 'dowels':
      return dowelWords(which, tape);
    case 'fasteners':
      return fastenerWords(which.row, tape);
    case 'tongue':
      return `for its tongue, ${which.end} end`;
    case 'lap':
      return `no. ${which.no}`;
    case 'corner':
      return `for the toe board, ${writeMark(which.high, tape)} up from the ${which.end} end: sawn to both lines`;
    case 'long-points':
      return which.ends ? `to the long points, ${which.ends.join(' and ')} end` : 'to the long points';
    case 'scrap':
      return 'scrap of the same sheet';
    case 'own':
      return which.said;
    case 'edge': {
      const far = writeLength(absolute(which.at), tape);
      return `${which.edge} edge, ${far} ${isNegative(which.at) ? 'past' : 'from'} the ${which.end}`;
    }
    case 'no-drawers':
      return withoutDrawers(what, which.trays);
    case 'back-in':
      return backIn[which.last];
    case 'holes':
      return `${writeMark(which.down, tape)} down${which.bothEnds ? ', from both ends' : ''}`;
    default:
      return assertNever(which);
  }
}

/** Which of its kind on the part, or what is minded at the bench; of a rip, a length or a dovetail nothing. */
export function whichAlone({ what, which, cleat }: Operation, tape: Tape): string {
  if (cleat) return anchored[cleat];
  if (which?.is === 'in-wood') return inWood;
  return which ? whichOf(what, which, tape) : (benchSays[what] ?? '');
}
