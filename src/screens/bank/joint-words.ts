import { add, equals, isNegative, isPositive, isZero, type Length, negate, times } from '../../length/length';
import { markAt, type Tape } from '../../length/tape';
import { writeLength } from '../../length/write';
import type { DoweledAt } from '../../trade/boxes/box-plan';
import type { FingerFit, Fingers, GrooveAmong } from '../../trade/boxes/fingers';
import type { OwnFront } from '../../trade/boxes/own-front';
import type { Tails } from '../../trade/boxes/tails';
import type { Dowels } from '../../trade/fasteners/dowels';
import { shownOn } from '../../ui/unit-in-hand';
import { counted } from '../shared/counted';
import { closely, exactly as w } from '../shared/exact-words';

/** Where a groove that no one sees runs out. */
export const groovePlace = (tail: number | undefined): string =>
  `the groove runs out inside tail ${tail ?? ''} from the lower edge, out of sight`;

const tailsOf = ({ tails: all }: Tails): string => counted(all.length, 'tail', 'tails');

export const joint = (made: Tails, where: string): string =>
  `Front end of a side with ${tailsOf(made)}: ${where}`;

export const tails = (made: Tails, where: string): string =>
  `${tailsOf(made)} ${w(made.tail)} wide at the end line, ${w(made.baseTail)} at the baseline, pins ${w(made.basePin)} there: ${where}.`;

const together = ({ fingers, slots }: Fingers): string =>
  `${counted(fingers.length, 'finger', 'fingers')} and ${counted(slots.length, 'slot', 'slots')}`;

export const fingersLabel = (made: Fingers): string => `Front end of a side with ${together(made)}`;

/** What the fingers of a side are, and where its slots begin. */
export function fingersText(made: Fingers, trim: Length): string {
  const ends = made.how === 'equal' ? `, ${w(made.end)} at both edges` : '';
  const off = isZero(trim) ? '' : ` ${w(trim)} comes off the top edge.`;
  const [first] = made.slots;
  const slots = first
    ? ` Slots up from the bottom edge: the first at ${w(first.near)}, then every ${w(times(made.wide, 2n))}.`
    : '';
  return `Sides: ${together(made)} ${w(made.wide)} wide${ends}.${slots} The front begins with a slot.${off}`;
}

/** Where a groove among fingers comes out, what is done about it, and where nothing need be. */
export function amongText(at: GrooveAmong, stop: Length | undefined, tape: Tape): string {
  if (!stop)
    return 'The groove for the bottom runs out in a finger of the sides: the front on the box covers it.';
  const where = at.in === 'front' ? 'in a finger of the box front' : 'across the line of two fingers';
  return `The groove for the bottom lies ${where} and would show at the sides: in the box front it is stopped ${writeLength(markAt(stop, tape).value, tape)} from both ends.${elsewhere(at)}`;
}

/** Rounded into the finger, never out of it. */
function elsewhere({ lower, higher }: GrooveAmong): string {
  const at = [
    ...(lower ? [w(markAt(lower, shownOn('1/64'), 'floor').value)] : []),
    ...(higher ? [w(markAt(higher, shownOn('1/64'), 'ceil').value)] : []),
  ];
  return at.length === 0 ? '' : ` At ${at.join(' or ')} up a finger of the sides covers it.`;
}

export const sanded = (proud: Length): string =>
  `Fingers stand ${w(proud)} proud. Sanded flush, the box is ${w(times(proud, 2n))} narrower and ${w(proud)} less deep.`;

/** How the fingers come out, and what to do at the pin. */
export function fitText(fit: FingerFit, play: Length): string {
  const goes = isNegative(fit.loose) ? `${closely(negate(fit.loose))} tight` : `${closely(fit.loose)} loose`;
  const by = isNegative(fit.move) ? negate(fit.move) : fit.move;
  const toward = isNegative(fit.move) ? 'toward' : 'away from';
  const move = isZero(fit.move)
    ? 'Leave the pin.'
    : `For ${closely(play)} loose move it ${closely(by)} ${toward} the blade.`;
  return `The pin makes fingers ${closely(fit.finger)} wide, ${goes}. ${move}`;
}

/** A slot so far along has come off its place by so much. */
export const driftText = (no: number, off: Length): string =>
  isZero(off)
    ? ''
    : ` Slot ${no} stands ${closely(isNegative(off) ? negate(off) : off)} ${isNegative(off) ? 'low' : 'high'} by then; cut off one pin, the mates still meet.`;

export const cornerLabel = 'A side from above, front at the left, back at the right';

export const rabbetText = (deep: Length, wide: Length): string =>
  `Rabbets across both ends of the front, ${w(deep)} deep and ${w(wide)} wide: a side lies in each.`;

/** Of a front that stands past its box: as wide as a side and what is past it. */
export function ownRabbetText(deep: Length, side: Length, { left, right }: OwnFront): string {
  const wide = (past: Length) => w(add(side, past));
  const each = equals(left, right)
    ? `${wide(left)} wide at both ends`
    : `${wide(left)} wide at the left end and ${wide(right)} at the right`;
  return `Rabbets across the front, ${w(deep)} deep, ${each}: a side lies at the shoulder of each, and the front stands past it.`;
}

/** Where the front is over or under the box; nothing where they are alike. */
export function aboutBox({ left, right, under, over }: OwnFront, doweled: boolean): string {
  const at = (x: Length, where: string) => (isPositive(x) ? [`${w(x)} ${where}`] : []);
  const past = equals(left, right)
    ? at(left, 'at each end')
    : [...at(left, 'at the left end'), ...at(right, 'at the right')];
  const all = [...past, ...at(under, 'below'), ...at(over, 'above')];
  if (all.length === 0) return '';
  const dowels = doweled ? ' Its dowels are as much further in from its ends and its top edge.' : '';
  return `The front stands past its box ${all.join(', ')}.${dowels}`;
}

/** The dowels of a corner: which, how deep, and where from the top edge. */
export function doweledText(at: DoweledAt, { size, row, inFace, inEdge, from }: Dowels, tape: Tape): string {
  const marks = row.marks.map((mark) => writeLength(markAt(mark, tape).value, tape)).join(', ');
  return `Dowels of the ${at}: ${row.count} in each corner, ${w(size.thick)} by ${w(size.long)}, at ${marks} from the top edge. Bore ${w(inFace)} deep in the face and ${w(inEdge)} in the end, their middle ${w(from)} off the outside face and off the end.`;
}

/** Where the groove of a front over its sides would come out, and what is done about it. */
export const doweledGroove = (stop: Length | undefined, tape: Tape): string =>
  stop
    ? `The groove for the bottom would show at the ends of the front: there it is stopped ${writeLength(markAt(stop, tape).value, tape)} from both.`
    : 'The grooves of the sides run out at their front ends: the front on the box covers them.';
