import type { ComponentChildren as Blank } from 'preact';
import type { Join, JoinBy } from '../../job/install';
import { isNegative, type Length, negate } from '../../length/length';
import { assertNever } from '../../length/result';
import type { JoinPlace, MeetsFault } from '../../plan/join-place';
import type { Butted } from '../../trade/carcass/butted';
import type { Clash } from '../../trade/carcass/fastener-clashes';
import type { OtherCut } from '../../trade/carcass/taken';
import type { BiscuitError, BiscuitLack, Biscuits } from '../../trade/fasteners/biscuits';
import type { Dowels } from '../../trade/fasteners/dowels';
import type { SlantError, SlantMiss, SlantScrew } from '../../trade/fasteners/slant-screws';
import { exactly as w } from '../shared/exact-words';
import { partWord } from '../shared/part-words';
import { rowFails } from '../shared/row-fails';
import { takesWords } from '../shared/which-words';

export const title = 'In the joint itself';
export const none = 'An end or edge against another part: dowels, biscuits or slant screws hold it.';
export const add = 'Held by';
export const added = 'A joint set out';
export const remove = 'Take it out';
export const removed = (name: string): string => `${name} taken out`;
export const caution = 'Clamp the work before you bore or slot it. The tool’s manual first.';

export const byWords: Readonly<Record<JoinBy, string>> = {
  dowel: 'Dowels',
  biscuit: 'Biscuits',
  slant: 'Slant screws',
};

/** The joints of a case that nothing is cut for, by what ends there. */
export const meetingWords: Readonly<Record<Butted, string>> = {
  bottom: 'Bottom and sides',
  top: 'Top and sides',
  partition: 'Partitions, at their ends',
  shelf: 'Fixed shelves and their walls',
};

export const holdIt = (at: Butted): string => `${meetingWords[at]}: hold them`;
export const holdBy: Readonly<Record<JoinBy, string>> = {
  dowel: 'by dowels',
  biscuit: 'by biscuits',
  slant: 'by slant screws',
};

export const nameOf = ({ name, by, at }: Pick<Join, 'name' | 'by' | 'at'>): string =>
  name || (at ? `${meetingWords[at]}: ${byWords[by].toLowerCase()}` : byWords[by]);

/** What each blank asks. */
export const asks = {
  name: 'what they hold',
  part: 'the part that ends there, so thick',
  mate: 'what it ends against, so thick',
  run: 'how long the joint is',
  end: 'from either end to the first',
  most: 'at most from one to the next',
  from: 'from the reference face to their middle',
  thick: 'the dowel, so thick',
  long: 'the dowel, so long',
  leave: 'wood left under and beside a slot',
  seat: 'from the joint back to the head’s seat, along the screw',
  head: 'the head, so wide',
  flush: 'how the two lie',
  many: 'joints alike',
} as const;

export const ask = (of: Pick<Join, 'name' | 'by' | 'at'>, what: keyof typeof asks): string =>
  `${nameOf(of)}: ${asks[what]}`;

export const lies = { corner: 'one square to the other', plane: 'both in one plane' } as const;

type Blanks = Readonly<Record<keyof typeof asks, Blank>>;

const meeting = (b: Blanks, meets: JoinPlace['meets']) => (
  <>
    A part {b.part} thick ends against one {b.mate} thick, {b.run} along; {meets?.ends.length ?? b.many}{' '}
    alike.
  </>
);

export const says = ({ join: { by }, meets }: Pick<JoinPlace, 'join' | 'meets'>, b: Blanks) => {
  switch (by) {
    case 'dowel':
      return (
        <>
          {meeting(b, meets)} Dowels {b.thick} by {b.long}, {b.end} from either end, at most {b.most} apart,{' '}
          {b.from} from the reference face.
        </>
      );
    case 'biscuit':
      return (
        <>
          {meeting(b, meets)} Slots at most {b.most} apart, {b.from} from the reference face, {b.leave} left
          under and beside each.
        </>
      );
    case 'slant':
      return (
        <>
          {meeting(b, meets)} {!meets && <>They lie {b.flush}. </>}Seats {b.seat} back along the screw, heads{' '}
          {b.head} wide; the first {b.end} from either end, at most {b.most} apart.
        </>
      );
    default:
      return assertNever(by);
  }
};

export const missing: Readonly<Record<JoinPlace['missing'][number], string>> = {
  part: 'Say how thick the part that ends there is.',
  mate: 'Say how thick what it ends against is.',
  run: 'Say how long the joint is.',
  seat: 'Say how far back the seat lies: read it off the jig.',
  head: 'Say how wide the head is.',
};

export const marks = (at: readonly string[], ofCase: boolean): string =>
  `${at.length} in each: marks from the ${ofCase ? 'front edge' : 'reference end'} ${at.join(', ')}.`;

export const notButted = 'Nothing is butted there now: nothing is bored or bought for it.';
export const inCuts: Readonly<Record<JoinBy, string>> = {
  dowel: 'Bored in Cuts.',
  biscuit: 'Their slots are in Cuts.',
  slant: 'Their holes are in Cuts.',
};

/** What is cut for it, one of them and what is done; nothing is where it is refused. */
const cutFor: Readonly<Record<JoinBy, readonly [one: string, done: string]>> = {
  dowel: ['hole', 'bored'],
  biscuit: ['slot', 'slotted'],
  slant: ['screw', 'bored'],
};

const otherCuts: Readonly<Record<OtherCut, string>> = {
  groove: 'a groove',
  rabbet: 'a rabbet',
  notch: 'a notch',
  lap: 'a lap',
  'pin-hole': 'a hole for a shelf pin',
  fastener: 'what holds another joint',
};

/** What clears it: along the joint, along the part, or less deep. */
const clearWords: Readonly<Record<Clash['way'], (by: string) => string>> = {
  across: (by) => `${by} along the joint clears it: move the first one, or space them otherwise`,
  along: (by) => `${by} along that part clears it`,
  into: (by) => `${by} less deep clears it: something smaller, or another way to hold it`,
};

/** What keeps the joints of a case from being bored as set out, and what would fit. */
export function fault(found: MeetsFault, by: JoinBy): string {
  const [one, done] = cutFor[by];
  const not = `Nothing is ${done} in Cuts.`;
  switch (found.code) {
    case 'twice':
      return `Another one holds these joints already: this one is not ${done}. Take one of them out.`;
    case 'off-the-joint':
      return `The joint is ${w(found.by)} shorter than said: ${w(found.run)} at most. ${not}`;
    case 'holes-meet': {
      const [a = '', b = ''] = found.holds.map((x) => takesWords(x).replace(/^for (the )?/, ''));
      return `The ${partWord(found.on).toLowerCase()} is ${w(found.by)} too thin for ${one}s from both faces: ${a} and ${b} stand back to back. One of them ${w(found.move)} higher or lower would do. ${not}`;
    }
    case 'in-groove':
      return `A ${one} comes ${w(found.by)} into the groove ${takesWords(found.takes)} of the ${partWord(found.on).toLowerCase()}: move the first one, or space them otherwise. ${not}`;
    case 'in-cut':
      return `A ${one} comes into ${otherCuts[found.cut]} of the ${partWord(found.on).toLowerCase()}: ${clearWords[found.way](w(found.by))}. ${not}`;
    default:
      return assertNever(found);
  }
}

export const section = 'The joint cut through, the reference face below';

export const inAll = (count: number): string => `${count} in all go on the list To buy.`;

export const dowels = ({ size, inFace, inEdge, from }: Dowels): string =>
  `Take ${w(size.thick)} by ${w(size.long)}. Bore ${w(inFace)} deep in the face, ${w(inEdge)} in the end or edge, ${w(from)} from the reference face; both from the faces that come flush.`;

const noWood = 'A thickness is 0 or less: measure it again.';

export const biscuits = ({ no, slotDeep, from }: Biscuits): string =>
  `Take #${no}. Slots ${w(slotDeep)} deep in both, their middle ${w(from)} from the reference face.`;

const lackWords: Readonly<Record<BiscuitLack['lacks'], string>> = {
  under: 'wood under its slot',
  beside: 'wood beside its slot',
  run: 'length of joint',
};

export const lack = ({ no, lacks, by }: BiscuitLack): string =>
  `#${no} lacks ${w(by)} of ${lackWords[lacks]}.`;

export function biscuitFails(error: BiscuitError): string {
  switch (error.code) {
    case 'no-wood':
      return noWood;
    case 'no-biscuit':
      return `No biscuit goes: ${error.lacks.map(lack).join(' ')}`;
    default:
      return rowFails(error);
  }
}

export const slant = ({ long, bite, meets, seatBack }: SlantScrew): string =>
  `Take screws ${w(long)} long, driven at 15°: each bites ${w(bite)}, square to the joint. Its line meets the bored face ${w(meets)} back, the seat lies ${w(seatBack)} back.`;

export const head = ({ covered, coveredAt }: SlantScrew): string => {
  if (!isNegative(covered)) return `The head lies ${w(covered)} under the face.`;
  const at = coveredAt ? ` A seat ${w(coveredAt)} back just covers it.` : '';
  return `The head stands ${w(negate(covered))} out of the face.${at}`;
};

const missWords: Readonly<Record<SlantMiss['misses'], (by: Length) => string>> = {
  bite: (by) => `bites ${w(by)} too little`,
  mate: (by) => `comes ${w(by)} too near the far side`,
  face: (by) => `comes ${w(by)} too near the face`,
};

export function slantFails(error: SlantError): string {
  switch (error.code) {
    case 'no-wood':
      return noWood;
    case 'no-list':
      return 'No screws on the list. See Shop figures.';
    case 'none-fits':
      return `None on the shelf does: ${error.misses.map(({ long, misses, by }) => `${w(long)} ${missWords[misses](by)}`).join(', ')}.`;
    default:
      return assertNever(error);
  }
}

export const ofJoints = 'joints';

// One figure at a time.

export const oneFace = 'hole in the face, so deep';
export const oneEdge = 'hole in the end or edge, so deep';
export const oneSlot = 'slots, so deep';
export const oneDeepSays = 'Stop collar or depth stop set, and tried on scrap.';
export const oneLong = 'the screw';
export const oneLongSays = 'The longest that bites enough and comes out nowhere.';
export const oneFrom = 'from the reference face to the middle';
export const oneFromSays = 'The fence of the tool rides on that face, of both parts.';
export const oneMark = (no: number, of: number): string => `middle ${no} of ${of}`;
export const oneMarkSays = 'Both parts from the same end, each from the face that comes flush.';
