import { absolute, isZero, type Length } from '../../length/length';
import { assertNever } from '../../length/result';
import { markAt } from '../../length/tape';
import { slideRoom } from '../../trade/boxes/box';
import type { DrawersProblem, DrawersWarning, WorkedDrawers } from '../../trade/boxes/drawers';
import type { PullsError } from '../../trade/boxes/pulls';
import { grooveRoom, type Tails, type TailsError } from '../../trade/boxes/tails';
import type { Bank, BankStock } from '../../trade/fronts/bank';
import type { FrontsProblem } from '../../trade/fronts/worked';
import { shownOn, unitInHand } from '../../ui/unit-in-hand';
import { exactly as w } from '../shared/exact-words';
import { boxErrorText } from './box-words';
import { hungErrorText, hungWarningText, isHungError, packHung } from './hung-words';

export type BankLength = {
  [K in keyof Bank]-?: NonNullable<Bank[K]> extends Length
    ? Length extends NonNullable<Bank[K]>
      ? K
      : never
    : never;
}[keyof Bank];

// What several screens of these drawers say.

export const drawers = 'Drawers';
export const nameOf = (bank: Pick<Bank, 'name'>): string => bank.name || drawers;
export const toJob = 'Job';
export const toFronts = 'Fronts';
export const whatGoesIn = 'What goes in';
export const boxesSlidesPulls = 'Boxes, slides, pulls';
export const change = 'Change';
export const worthALook = 'Worth a look';
export const openingMeasured = 'Opening, as measured';
export const column = (no: number): string => `Column ${no}`;
export const drawer = (no: number, of?: number): string =>
  of === undefined ? `Drawer ${no}` : `Drawer ${no}, column ${of}`;

export const notInJob = 'These drawers are not in the job.';
export const removeThese = 'Remove these drawers';
export const removed = (bank: Pick<Bank, 'name'>): string => `${nameOf(bank)} removed`;

export const bankFieldNames: Record<BankLength, string> = {
  width: 'How wide the opening is',
  height: 'How high the opening is',
  depth: 'How deep it is, front to back',
  sill: 'Its lower edge above what the sticks stand on',
  top: 'Gap over the top front, or how far it covers',
  between: 'Gap between the fronts',
  bottom: 'Gap under the lowest front, or how far it covers',
  side: 'Gap at each side, or how far a front covers',
  gap: 'Gap between two fronts over a partition',
  step: 'How much higher each is than the one above',
  trim: 'Trim at each end of the blank',
  band: 'Band on each edge',
  slideLong: 'How long the slides are',
  slideHigh: 'How high a slide is',
  clearance: 'Room a slide needs at each side',
  centre: 'Middle of the slide, up the box',
  boxUp: 'Box above the lower edge of its front',
  boxDeep: 'How deep the boxes are, front to back',
  lap: 'Lap left over the side ends',
  backDado: 'How far the back is let into the sides',
  behind: 'How far the sides run on behind the back',
  grooveDeep: 'How deep the groove for the bottom is',
  grooveUp: 'Groove up from the lower edge',
  grooveFit: 'How much wider the groove is than the bottom',
  ease: 'How much smaller the bottom is than its grooves',
  play: 'Air over a box or a thing',
  halfPin: 'Half pin at each edge, at the end line',
  pin: 'Pins between the tails, at the end line',
  pitch: 'Pitch of the template',
  centres: 'Between the screws of a pull',
  fromEnd: 'Pull in from each end',
  fromTop: 'Pull down from the top edge',
  frontRabbet: 'How deep the rabbets in the box front are',
  finger: 'How wide a finger is: its cutter in a test slot',
  fingerStep: 'From slot to slot, as the sled steps',
  fingerPlay: 'How loose a finger goes in its slot',
  dowel: 'How thick the dowels are',
  dowelLong: 'How long the dowels are',
  sidePlay: 'Play at each side of a box',
  backRoom: 'Room behind a box',
  runHigh: 'How high runners or strips are ripped',
  kickRoom: 'Room between a box and what lies over it',
  stripUp: 'Groove for a strip, up from the lower edge of the box',
  stripPlay: 'How much wider that groove is than its strip',
};

export const bankStockNames: Record<BankStock, string> = {
  front: 'fronts',
  side: 'box sides',
  boxFront: 'box fronts',
  boxBack: 'box backs',
  boxBottom: 'box bottoms',
  runner: 'runners or strips',
};

const fieldWords = { width: 'how wide', height: 'how high', depth: 'how deep' } as const;

/** What keeps the fronts from being worked out, by how much, and what would fit. */
export function frontsProblemText(problem: FrontsProblem): string {
  switch (problem.code) {
    case 'missing':
      return `Say ${fieldWords[problem.field]} the opening is.`;
    case 'no-case':
      return 'The case has to work out first: see what it asks for.';
    case 'no-bay':
      return `There is no bay ${problem.bay}: the case has ${problem.bays}.`;
    case 'no-floor':
      return 'What the drawers stand on is not in that bay.';
    case 'closed':
      return `No room is left above it: ${w(problem.by)} too high.`;
    case 'count-not-whole':
      return 'Say how many fronts: one to twenty-four.';
    case 'nothing-left':
      return `The gaps alone are ${w(problem.by)} over the opening. Fewer fronts, or smaller gaps.`;
    case 'given-not-positive':
      return `Front ${problem.front} needs a height above 0, or leave it blank.`;
    case 'given-too-high':
      return `The heights given are ${w(problem.by)} too much. Take that off, or leave one blank.`;
    case 'least-too-high':
      return `What goes in needs ${w(problem.by)} more than the opening has. Use fewer drawers, or lay the tall things down.`;
    case 'step-too-big':
      return `With that step a front comes to nothing. It must stay under ${w(problem.most)}, up or down.`;
    case 'ratio-not-positive':
      return 'A ratio must be more than 0.';
    case 'weight-not-positive':
      return `The share of front ${problem.front} must be more than 0.`;
    case 'bank-negative':
      return `${bankFieldNames[problem.field]}: ${w(problem.by)} below 0. Make it 0 or more.`;
    case 'gap-negative':
      return `A gap of ${w(problem.gap)} would push the fronts into each other. Make it 0 or more.`;
    case 'side-negative':
      return `A gap at the side is ${w(problem.by)} below 0: the front would be wider than its opening. Make it 0 or more.`;
    case 'no-width':
      return `The gaps at the sides take the whole width: ${w(problem.by)} over.`;
    default:
      return assertNever(problem);
  }
}

/** What keeps the tails from being laid out. */
export function tailsErrorText(error: TailsError): string {
  switch (error.code) {
    case 'count-not-whole':
      return 'Say how many tails.';
    case 'too-many':
      return `No more than ${error.most} tails.`;
    case 'slope-not-positive':
      return 'The slope must be more than 0: one in six, or one in eight.';
    case 'not-positive':
      return 'The side must have a height and the tails a length.';
    case 'pin-negative':
      return `The side is ${w(error.by)} too low for this layout: make the box higher, or use fewer tails.`;
    case 'pins-eat-tails':
      return `The pins leave nothing of the tails, ${w(error.by)} over: use fewer tails, or thinner pins.`;
    default:
      return assertNever(error);
  }
}

const cutWords = {
  none: '',
  'half-pin': 'a half pin',
  pin: 'a pin',
  edge: 'the edge of the side',
} as const;

/** What a groove that lies in no tail meets, and where it could go instead. */
export function grooveText(made: Tails, groove: { readonly up: Length; readonly wide: Length }): string {
  const room = grooveRoom(made, groove);
  // rounded into the tail, never out of it
  const lower = room.lower && w(markAt(room.lower, shownOn('1/64'), 'floor').value);
  const higher = room.higher && w(markAt(room.higher, shownOn('1/64'), 'ceil').value);
  const places = [lower, higher].flatMap((x) => x ?? []);
  const to =
    places.length > 0 ? `Move it to ${places.join(' or ')} up, or change the tails.` : 'Change the tails.';
  return `the groove for the bottom meets ${cutWords[made.groove?.cuts ?? 'pin']} and would show. ${to}`;
}

/** What keeps the holes for a pull off its front. */
export function pullsErrorText(error: PullsError): string {
  const by = isZero(error.by) ? 'right on the edge' : `${w(error.by)} past it`;
  switch (error.code) {
    case 'centres-negative':
      return `The screws of a pull cannot be ${w(error.by)} below 0 apart. Make it 0 for a knob, or more.`;
    case 'centres-too-wide':
      return `The screws stand too far apart for the front: a hole comes ${by}.`;
    case 'off-the-front':
      return `The pull does not go on the front: a hole comes ${by}.`;
    case 'pulls-meet':
      return `The two pulls run into each other by ${w(error.by)}: nearer the ends, or one pull.`;
    default:
      return assertNever(error);
  }
}

/** What the sticks stand on. */
export const standText = ({ fronts }: WorkedDrawers): string =>
  fronts.columns[0]?.opening.stand === 'shelf' ? 'fixed shelf under it' : 'bottom of the case';

/** What keeps the boxes from being cut. */
export function drawersProblemText(problem: DrawersProblem): string {
  switch (problem.code) {
    case 'missing-stock':
      return `Say what the ${bankStockNames[problem.stock]} are of, and how thick.`;
    case 'pitch-not-positive':
      return 'The pitch of the template must be more than 0.';
    case 'missing-depth':
      return 'Say how long the slides are, or how deep the boxes.';
    case 'no-box':
      return `There is no room for a box behind front ${problem.drawer}: ${w(problem.by)} short.`;
    default:
      return isHungError(problem) ? hungErrorText(problem) : boxErrorText(problem);
  }
}

export function drawersWarningText(warning: DrawersWarning): string {
  switch (warning.code) {
    case 'box-strikes':
      return `The box of drawer ${warning.drawer} is ${w(warning.by)} too high to clear what is over it. At most ${w(warning.most)}.`;
    case 'slide-too-long':
      return `Slides of ${w(warning.slide)} are ${w(warning.over)} too long for the depth there is, less ${w(slideRoom(unitInHand()))}.`;
    case 'box-too-deep':
      return `Boxes ${w(warning.deep)} deep are ${w(warning.over)} deeper than the room behind their fronts.`;
    case 'box-low':
      return `The lowest box would stand ${w(warning.by)} in what is under it: at least ${w(warning.least)} over the lower edge of its front.`;
    case 'columns-differ':
      return `Column ${warning.column} is ${w(warning.by)} higher than the lowest: its fronts line up from the top, so its sticks need ${w(warning.by)} more.`;
    case 'pack-slides':
      if (warning.hung) return packHung(warning.off, warning.hung);
      return `Front and back of the opening differ by ${w(absolute(warning.off))}: pack the slides parallel before you trust a box. Boxes are made to the narrower.`;
    default:
      return hungWarningText(warning);
  }
}
