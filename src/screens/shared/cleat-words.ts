import { absolute, isNegative, isZero, type Length } from '../../length/length';
import { assertNever } from '../../length/result';
import type { Cleat, Lift } from '../../plan/cleat-plan';
import type { Crossed } from '../../plan/stud-plan';
import type { CleatWrong } from '../../trade/install/cleat-height';
import type { CleatOn } from '../../trade/setups/operation';
import { exactly as w } from './exact-words';

// The cleat of a case: where it is, how high it stands, what is in its way.

export const where = 'Where the cleat is';
export const wheres = {
  case: { label: 'in the case', hint: 'its screws go through it into the wall: that anchors the case' },
  wall: { label: 'on the wall', hint: 'screwed up before the case stands there; the case is screwed to it' },
} as const satisfies Record<CleatOn, object>;

/** @param name of its case, where there are several */
export const lowerEdge = (name: string): string =>
  `${name ? `${name}: h` : 'H'}ow high the lower edge of the cleat stands`;
export const begins = (name: string): string => `${name}: where its cleat begins`;
export const ends = (name: string): string => `${name}: where its cleat ends`;

/** The floor as heights are read from it. */
export const upFrom = 'up from the floor at its high point';

/** Where it stands from a level line. @example fromLine(l('24 7/8')) // '24 7/8 over the level line' */
export function fromLine(x: Length): string {
  if (isZero(x)) return 'just on the level line';
  return `${w(absolute(x))} ${isNegative(x) ? 'under' : 'over'} the level line`;
}

function lifted({ feet, base }: Lift): string {
  const under = [...(feet ? [`${w(feet)} of foot`] : []), ...(base ? [`${w(base)} of base frame`] : [])];
  return under.length > 0 ? `, with ${under.join(' and ')} under it` : '';
}

/** Where its figure is from, and how it is measured where a level line was read. */
export function heightText({ height, plan, lift }: Cleat): string {
  if (!height) return 'Say how high the cleat stands: its line on the wall follows.';
  const from =
    height.by === 'case' && plan.inCase ? [`It is ${w(plan.inCase)} up in the case${lifted(lift)}.`] : [];
  const top = height.top ? [`Its upper edge is ${w(height.top)} up.`] : [];
  const line = height.fromLine ? [`Its lower edge is ${fromLine(height.fromLine)}.`] : [];
  return [...from, ...top, ...line].join(' ');
}

const behindWhat: Readonly<Record<CleatOn, { readonly under: string; readonly over: string }>> = {
  case: { under: 'under the inside of the case', over: 'over the inside of the case' },
  wall: { under: 'under the back of the case', over: 'over the back of the case' },
};

/** Why a cleat cannot stand so, by how much, and what fits. */
export function wrongText(wrong: CleatWrong, on: CleatOn): string {
  switch (wrong.code) {
    case 'under':
      return `The lower edge of the cleat is ${w(wrong.by)} ${behindWhat[on].under}: ${w(wrong.least)} to ${w(wrong.most)} fits.`;
    case 'over':
      return `The upper edge of the cleat is ${w(wrong.by)} ${behindWhat[on].over}: ${w(wrong.least)} to ${w(wrong.most)} fits for its lower edge.`;
    case 'too-wide':
      return `The cleat is ${w(wrong.by)} wider than there is height for it behind the case.`;
    case 'differs':
      return `The case has its cleat at ${w(wrong.inCase)}: this is ${w(absolute(wrong.by))} too ${isNegative(wrong.by) ? 'low' : 'high'}. Left empty, the figure of the case stands.`;
    default:
      return assertNever(wrong);
  }
}

/** Places its screws are too near to at that height, and how far it is moved to clear them. */
export function crossedText({ zones, moves: { up, down } }: Crossed): string {
  const names = zones.map(({ what }) => what || 'a place not to be fastened into').join(', ');
  const ways = [...(up ? [`${w(up)} up`] : []), ...(down ? [`${w(down)} down`] : [])];
  const cure =
    ways.length > 0
      ? `Move the cleat ${ways.join(' or ')}, and its screws clear everything said here.`
      : 'No height behind the case clears it: a cleat that ends before it, or solid backing.';
  return `At this height the screws of the cleat are too near to: ${names}. ${cure}`;
}
