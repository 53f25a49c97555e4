import { isZero, type Length } from '../../length/length';
import { assertNever } from '../../length/result';
import type { DrawersProblem } from '../../trade/boxes/drawers';
import type { HungError, HungWarning } from '../../trade/boxes/hung-faults';
import type { HungOn } from '../../trade/fronts/hanging';
import { exactly as w } from '../shared/exact-words';

/** What boxes run on where that is no slide: one of them, several. */
const one: Readonly<Record<HungOn, string>> = { runners: 'runner', strips: 'strip' };

const fields = {
  runHigh: 'height of runners or strips',
  stripUp: 'groove up the box',
  sidePlay: 'play at a side',
  backRoom: 'room behind a box',
  kickRoom: 'room over a box',
  stripPlay: 'play in the groove',
} as const;

const codes: readonly string[] = [
  'hung-not-positive',
  'hung-negative',
  'runner-thin',
  'strip-through',
  'strip-in-dado',
  'strip-meets-bottom',
  'strip-off',
  'stop-short',
  'stop-shut',
] satisfies readonly HungError['code'][];

type Wrong = HungError & { readonly drawer: number };

export const isHungError = (problem: DrawersProblem): problem is Wrong => codes.includes(problem.code);

/** How far past what it may not reach; nothing where it just reaches it. */
const past = (by: Length): string => (isZero(by) ? '' : `, ${w(by)} past`);

/** Why boxes cannot run in wood so, by how much and what would fit. */
export function hungErrorText(problem: Wrong): string {
  const { drawer } = problem;
  switch (problem.code) {
    case 'hung-not-positive':
      return `The ${fields[problem.field]} must be more than 0.`;
    case 'hung-negative':
      return `The ${fields[problem.field]} must be 0 or more.`;
    case 'runner-thin':
      return `The runners are ${w(problem.by)} too thin: a box would drop between them. At least ${w(problem.least)} thick, or less play.`;
    case 'strip-through':
      return `A groove for these strips goes through the sides${past(problem.by)}. Strips ${w(problem.most)} thick would fit.`;
    case 'strip-in-dado':
      return `A groove for these strips meets the dado for the back${past(problem.by)}. Strips under ${w(problem.most)} thick would fit, or a shallower dado.`;
    case 'strip-meets-bottom':
      return `Drawer ${drawer}: the groove for the strip runs into that for the bottom. ${w(problem.by)} higher clears it: ${w(problem.least)} up.`;
    case 'strip-off':
      return `Drawer ${drawer}: the groove for the strip comes out at the top edge, ${w(problem.by)} over it. At most ${w(problem.most)} up.`;
    case 'stop-short':
      return `Drawer ${drawer}: a stop block on the runner does not reach past the side of the box, ${w(problem.by)} short. Thicker runners, or thinner sides.`;
    case 'stop-shut':
      return `Drawer ${drawer}: its stop blocks leave it no way to come out, ${w(problem.by)} short. A deeper box, or no runners.`;
    default:
      return assertNever(problem);
  }
}

/** What is worth a look in boxes that run in wood. */
export function hungWarningText(warning: HungWarning): string {
  switch (warning.code) {
    case 'rests-little':
      return `A side rests on ${w(warning.on)} of its runner, less than half of it (${w(warning.half)}): thicker runners, or less play.`;
    case 'strip-deep':
      return `A groove ${w(warning.deep)} deep for the strip is past half the side (${w(warning.half)}).`;
    case 'strip-web':
      return `Between the groove for the strip and what is cut inside only ${w(warning.left)} is left: leave ${w(warning.least)}.`;
    case 'kicker-loose':
      return `Drawer ${warning.drawer}: the runner over it lies ${w(warning.gap)} over the box, too near for a kicker and too far to be one. Make the box as high as it may be.`;
    default:
      return assertNever(warning);
  }
}

export const packHung = (off: Length, hung: HungOn): string =>
  `Front and back of the opening differ by ${w(off)}: pack the ${one[hung]}s parallel before you trust a box. Boxes are made to the narrower.`;

/** A figure of what boxes run on: its name. */
export const runsOn: Readonly<Record<HungOn, string>> = { runners: 'Runners', strips: 'Strips' };
export const sticksFor = (hung: HungOn): string => `Sticks for the ${one[hung]}s`;
export const hangOnes = (hung: HungOn): string => `Set ${one[hung]}s one at a time`;
export const kickerOf = (drawer: string): string => `${drawer}, kicker`;

type Stand = { readonly front: Length; readonly back: Length };

/** Where their front ends are: behind the face of case or frame. */
export const frontEnd = (hung: HungOn, { front }: Pick<Stand, 'front'>): string =>
  `Front end of each ${one[hung]} ${w(front)} behind the face of case or frame.`;

export const screwed = (at: {
  readonly marks: readonly string[];
  readonly long: Length | undefined;
}): string =>
  `Screws ${at.marks.join(', ')} from its front end${at.long ? `, ${w(at.long)} long` : ''}. Pilot first; through slots where the wall is solid wood, so that it can move.`;
export const noScrew = (least: Length, most: Length): string =>
  `No screw on the shelf does: one between ${w(least)} and ${w(most)} is wanted.`;

export const rest = (on: Length): string => `Each side of a box rests on ${w(on)} of its runner.`;
export const strip = (deep: Length, to: Length): string =>
  `The grooves are as deep as the strips are thick, ${w(deep)}, and end ${w(to)} from the back end of a side: square the end.`;

const ons = { wall: 'wall', runner: 'runner over it', kicker: 'kicker over it' } as const;

type Stops = {
  readonly on: keyof typeof ons;
  readonly begins: Length;
  readonly rise: Length;
  readonly out: Length;
};

/** What keeps a drawer from falling out. */
export const ofDrawers = (drawers: readonly string[], says: string): string =>
  `${drawers.join('; ')}: ${says}`;
export const stops = ({ on, begins, rise, out }: Stops): string =>
  `a block on each ${ons[on]}, two screws in each, ${w(begins)} behind the face; two on the inside of its back, each on one screw, turned up ${w(rise)} over its top edge. It comes out ${w(out)}.`;
export const stopHow =
  'Hang the drawer with its blocks lying down, then reach in and turn them up. Turn them down to take it out.';
export const stopsTitle = 'Stop blocks';
export const section = (hung: HungOn): string =>
  hung === 'runners'
    ? 'One side from the front: wall, runner, side of the box'
    : 'One side from the front: wall, strip, side of the box';
