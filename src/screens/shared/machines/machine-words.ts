import { add, isNegative, isPositive, subtract, times } from '../../../length/length';
import type { MachineId, OwnCaution } from '../../../trade/machines/machines';
import type { On } from '../../../trade/setups/on';
import type { Setup } from '../../../trade/setups/setup';
import type { CautionWords } from '../caution-line';
import type { Part } from '../caution-parts';
import { exactly } from '../exact-words';
import { grooveWords } from './groove-words';

type Held = Pick<Setup, 'on' | 'figure' | 'cutter'>;

/** How a machine reads on a card. */
type MachineWords = {
  /** What stands on its stop, fence or guide; nothing where left out. `on` is an end or an edge in words. */
  readonly held?: (on: string, setup: Held) => string;
  /** As it is offered for work that is added by hand. */
  readonly forHandWork?: string;
};

/** What is said at a machine that has a caution of its own, and the part of *Before you cut* it opens. */
type Cautioned = { readonly caution: CautionWords; readonly part: Part };

type Words = Readonly<Record<MachineId, MachineWords> & Record<OwnCaution, Cautioned>>;

const toTeeth = (on: string): string => `${on} on the stop, to the near teeth`;
const toGuide = (on: string): string => `from the ${on} to the guide`;
const clampedAsOne = (on: string): string => `parts clamped as one, ${on} on the stop`;
const betweenShoulders = (on: string): string => `${on} on the stop, cut both shoulders, then between`;

/** The short side of a drawer, which a fence alone does not keep square. */
export const isShortEnd = (on: On): boolean =>
  on.at === 'end' && (on.named === 'back' || on.named === 'front');

/** How the first slot is set off a pin that stands a finger from the cutter, and each after it. */
function toPin({ on, figure, cutter }: Held): string {
  if (on.at !== 'fingers' || !figure || !cutter) return '';
  const short = subtract(cutter, add(figure.value, figure.rest));
  const side = on.begins === 'finger';
  const strip = side ? short : times(short, 2n);
  const between = isPositive(short) ? `, a strip of ${exactly(strip)} between` : '';
  const first = isNegative(short)
    ? `bottom edge to a stop${side ? '' : ', in two passes'}`
    : side
      ? `bottom edge against the pin${between}`
      : `bottom edge against that of a side hung on the pin by its first slot${between}`;
  return `${first}; then each slot over the pin, ${exactly(times(cutter, 2n))} on`;
}

/** Every machine, in the order in which they are offered for work by hand. */
export const machineWords: Words = {
  hand: {
    held: (_, { on }) =>
      on.at === 'corner'
        ? `in from the ${on.named} edge, the other line ${exactly(on.high)} up from the ${on.end} end`
        : '',
    forHandWork: 'by hand',
    caution: [
      'Work clamped, hands behind the edge.',
      'Unplug before you change a bit or blade. Old paint may hold lead: test before you sand or scrape it.',
    ],
    part: 'bench',
  },
  rip: {
    held: (_, { on }) =>
      on.at === 'strip'
        ? 'strip off the true edge, fence to the near face of the teeth'
        : 'true edge on the fence, fence to the near face of the teeth',
    forHandWork: 'at the table saw, rip fence',
    caution: [
      'Guard and knife on, push block at hand.',
      'A narrow piece is pushed with it, or falls on the free side off a stop clear of the blade.',
    ],
    part: 'table-saw',
  },
  crosscut: {
    held: () => 'squared end on the stop, stop to the near teeth',
    forHandWork: 'at the crosscut stop',
    caution: [
      'Hands outside the line the blade runs.',
      'Both ends held level, stop clear of chips. A radial saw pulls itself along: stopped before you reach in.',
    ],
    part: 'crosscut-saw',
  },
  mitre: {
    held: () => 'measured to the long points',
    caution: [
      'Work held fast, hands outside the line.',
      'At an angle it creeps along the fence: clamp or stop, never freehand.',
    ],
    part: 'crosscut-saw',
  },
  stop: {
    held: toTeeth,
    forHandWork: 'on the sled, with a stack',
    caution: grooveWords.stop.caution,
    part: 'crosscut-saw',
  },
  fence: {
    held: (words, { on }) =>
      isShortEnd(on) ? `${words} on the fence, kept square by a wide push block` : `${words} on the fence`,
    forHandWork: 'at the fence, with a stack',
    caution: grooveWords.fence.caution,
    part: 'table-saw',
  },
  router: {
    held: toGuide,
    forHandWork: 'with the router',
    caution: grooveWords.router.caution,
    part: 'router',
  },
  saw: {
    held: (on, { on: { at, ...named } }) =>
      'guide' in named && (named.named === 'true' || named.named === 'squared')
        ? `from the ${on} to the guide, lying on ${named.guide === 'far' ? 'the waste' : 'the piece'}`
        : toGuide(on),
    forHandWork: 'with the circular saw',
    caution: grooveWords.saw.caution,
    part: 'circular-saw',
  },
  spacers: {
    held: toTeeth,
    caution: grooveWords.spacers.caution,
    part: 'crosscut-saw',
  },
  index: {
    held: (on) => `${on} on the pencil mark, mark to the near teeth`,
    caution: grooveWords.index.caution,
    part: 'crosscut-saw',
  },
  sliding: {
    held: toTeeth,
    forHandWork: 'at the sliding saw, with a stack',
    caution: grooveWords.sliding.caution,
    part: 'crosscut-saw',
  },
  tablerouter: {
    held: (on) => `${on} on the fence`,
    caution: grooveWords.tablerouter.caution,
    part: 'router',
  },
  slidingcut: {
    held: () => 'squared end on the stop, stop to the near teeth',
  },
  rabbet: {
    held: (on) => `${on} against the sacrificial fence`,
    caution: [
      'Push block or feather board, no fingers.',
      'Wide insert, sacrificial fence fast, nothing freehand. Guard and knife go straight back on after.',
    ],
    part: 'table-saw',
  },
  notch: {
    held: clampedAsOne,
    caution: [
      'Parts clamped as one, hands held high.',
      'Against a tall fence or on a carriage, with a wide insert. Guard and knife go straight back on after.',
    ],
    part: 'table-saw',
  },
  lap: {
    held: betweenShoulders,
    caution: [
      'Held to the mitre gauge or the sled.',
      'No fence touches the end as it is cut through. Wide insert; guard and knife go straight back on after.',
    ],
    part: 'table-saw',
  },
  slidingnotch: {
    held: clampedAsOne,
  },
  slidinglap: {
    held: betweenShoulders,
  },
  dovetail: {
    held: (on) => `${on}, bottom edge to the stop`,
    caution: [
      'Clamps tried, scrap behind the work.',
      'By template: the router slides out, it is never raised among the fingers. By hand: chisel away from the hand that holds.',
    ],
    part: 'dovetails',
  },
  finger: {
    held: (_, setup) => toPin(setup),
    caution: [
      'Piece clamped to the sled, hands clear.',
      'The cutter comes out behind the sled: no hand there. Guard and knife go straight back on after.',
    ],
    part: 'table-saw',
  },
  routertable: {
    held: (words) => `${words} on the fence, between two stop blocks`,
    caution: [
      'Stop blocks at both ends, push blocks.',
      'One end on its block, let down onto the bit, fed against its turn, lifted when it stands. Hands never over the bit.',
    ],
    part: 'router',
  },
  stick: {
    held: (_, { figure }) => (figure ? 'case bottom to the lower edge of the slide or runner' : ''),
    caution: [
      'Hold a short stick with a block.',
      'Cut it from a long one. The offcut lies until the blade stands.',
    ],
    part: 'small-pieces',
  },
  jig: {
    held: () => 'end stop to the middle of the hole',
    caution: [
      'Front and jig clamped, scrap behind.',
      'Hand clear of where the bit comes through. No gloves or loose sleeves at the drill.',
    ],
    part: 'fasteners',
  },
  press: {
    held: (on) => `${on} on the fence, fence to the middle of the bit`,
    caution: [
      'Stop collar on the bit, work clamped.',
      'Scrap under it, set the depth in scrap first. No gloves or loose sleeves; the bit stands before chips are cleared.',
    ],
    part: 'fasteners',
  },
  template: {
    held: (on) => `from the ${on} to the middle of the row`,
  },
  slant: {
    held: (on) => `guide clamped on the ${on}; from the end back to the seat of the head, along the bit`,
  },
  plate: {
    held: (words, { on }) =>
      on.at === 'face' ? `fence on the ${words}` : `from the ${words} to the middle of the slots`,
    caution: [
      'Work clamped, both hands on the joiner.',
      'Its cutter is back in and stands before you lift it. Unplug before the cutter is changed. No gloves or loose sleeves.',
    ],
    part: 'fasteners',
  },
  bench: {
    forHandWork: 'at the bench',
  },
};

/** @example wordsOf('hand').forHandWork // 'by hand' */
export const wordsOf = (id: MachineId): MachineWords => machineWords[id];

/** A caution that is spelled as its machine. */
export const isOfMachine = (code: string): code is OwnCaution => Object.hasOwn(machineWords, code);
