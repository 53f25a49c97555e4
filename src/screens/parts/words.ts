import { add, type Length, zero } from '../../length/length';
import type { Rounding } from '../../length/round';
import type { Tape } from '../../length/tape';
import { writeLength } from '../../length/write';
import type { Line, Part } from '../../trade/carcass/part';
import { stopMarks } from '../../trade/carcass/stop-marks';
import type { FastenerRow } from '../../trade/fasteners/row';
import { edgesOf } from '../../trade/joints/edges';
import { lapFace } from '../../trade/setups/lies';
import type { Bore } from '../../trade/shelves/bore';
import { capital } from '../shared/capital';
import { exactly as w } from '../shared/exact-words';
import { partWord } from '../shared/part-words';
import { boredFace, faceWord, sideWords } from '../shared/placing-words';
import { rowWords, standsOff } from '../shared/row-words';
import { fastenerWords, stoppedWords, takesWords } from '../shared/which-words';

export * from '../shared/part-list-words';

export const parts = 'Parts';
export const job = 'Job';
export const part = 'Part';
export const byHand = 'By hand';
export const none = 'No parts yet. Give a case its outside sizes, or lay out a board by hand.';
export const notWorked = (name: string): string =>
  `${name || 'The case'} has no parts yet: see what is still missing`;
export const gone = 'This part is not in the job as it stands.';
export const partByHand = 'A part by hand';

/** How many of a part there are, and how much of all their cuts is made. */
export function state({ copies }: Part, cut: number, of: number): string {
  const done = cut === 0 ? '' : cut === of ? ' · all cut' : ` · ${cut} of ${of} cut`;
  return `${copies > 1 ? `${copies} of them` : 'one'}${done}`;
}

export const why = 'why?';
/** A size that nobody gave yet: of a board laid out by hand. */
export const notSaid = 'not said';
export const exact = 'Exactly on the mark.';

const modes: Record<Rounding, string> = {
  floor: 'down: it must go in',
  ceil: 'up: it must take something in',
  halfExpand: 'to the nearest: a flush fit',
};

export const rounded = (mode: Rounding, value: Length): string =>
  `Rounded ${modes[mode]}. Exact: ${w(value)}.`;

export const longPoint = (at: Length): string => `Long point ${w(at)}: cut to it, never to the short one.`;
/** Its mitred ends. */
export const mitred = (ends: readonly string[]): string =>
  `Mitred at the ${ends.join(' and ')} end, 45°, the long points outside: its length is to them.`;

export const comesOff = 'Held by screws alone: it comes off again.';
export const grooves = 'Its grooves, marked out';

export const drawnLying = ({ name, end }: Part): string =>
  `${partWord(name)} to scale, ${end} end at the left`;

/** What is cut along the back edge of a part: how wide its rabbet is, where its groove is. */
type AlongBack = {
  readonly rabbet?: Length | undefined;
  readonly groove?: NonNullable<Part['along']>[number] | undefined;
};

/** Whether anything is cut along one of its edges, or bored off one. */
const isCutAlong = ({ along = [], rabbets, bores = [] }: Part): boolean =>
  bores.length > 0 ||
  along.some(({ edge }) => edge.at === 'edge') ||
  rabbets.some((rabbet) => rabbet.along.at === 'edge');

/** How the drawing lies. */
export function lies(part: Part, { rabbet, groove }: AlongBack): string {
  const { end, corner } = part;
  const lying = `${capital(end)} end at the left, on the blue block.`;
  const [first] = edgesOf(part);
  if (first !== 'back' && isCutAlong(part))
    return `${lying} The ${first === 'bottom' ? first : 'right'} edge lies at the bottom.`;
  if (rabbet) return `${lying} The back edge lies at the top, its rabbet ${w(rabbet)} wide.`;
  if (corner && !groove) return `${lying} The front edge lies at the bottom, the notch in it.`;
  return groove
    ? `${lying} The back edge lies at the top, the groove ${w(groove.width)} wide and ${w(groove.near)} from it.`
    : lying;
}

/** Where what does not run through begins and ends. */
function stopped(cut: Pick<Part['rabbets'][number], 'from' | 'to'>, part: Part, tape: Tape): string {
  const at = stopMarks(cut, part, tape);
  return at ? `, ${stoppedWords(at.from, at.to, { end: at.end, say: (x) => writeLength(x, tape) })}` : '';
}

/** Which face of a part its laps are cut in. */
function inFace(part: Part): string {
  const face = lapFace(part);
  return `, in its ${face === 'back' ? face : faceWord(face)}`;
}

/** The dados that were added by hand: those of the case are among its grooves. */
const dados = ({ board, end, name }: Part): readonly string[] =>
  (board?.wides ?? []).flatMap(({ said, face, near, width, depth }) => {
    if (said === undefined || !near || !width || !depth) return [];
    const on = name.role === 'partition' ? `, face ${face}` : '';
    const from = add(near, board?.datum ?? zero);
    return [
      `Dado ${takesWords({ said })}${on}: ${w(from)} from the ${end} end, ${w(width)} wide, ${w(depth)} deep.`,
    ];
  });

/** What is cut in a part beside its grooves, one line for each. */
export function joints(part: Part, tape: Tape): readonly string[] {
  const {
    name,
    end,
    rabbets,
    notches,
    laps,
    along = [],
    bores = [],
    fasteners = [],
    lines = [],
    tongues = [],
    corner,
  } = part;
  const cut = ({ near, long, deep }: Part['laps'][number]) =>
    `${w(near)} from the ${end} end: ${w(long)} long, ${w(deep)} deep`;
  const notched = ({ takes }: Part['notches'][number]) =>
    takes?.said === undefined ? '; all partitions clamped as one.' : `, in the ${edgesOf(part)[0]} edge.`;
  return [
    ...rabbets.map(({ takes, width, along, depth, from, to }) => {
      return `Rabbet ${takesWords(takes)}: ${w(width)} wide along the ${sideWords(along)}, ${w(depth)} deep${stopped({ from, to }, part, tape)}.`;
    }),
    ...along.map(
      ({ takes, edge, near, width, depth, face, outside, from, to }) =>
        `Groove ${takesWords(takes)}${face && name.role === 'partition' ? `, face ${face}` : ''}${outside ? ', in the outside face' : ''}: ${w(near)} from the ${sideWords(edge)}, ${w(width)} wide, ${w(depth)} deep${stopped({ from, to }, part, tape)}.`,
    ),
    ...(corner
      ? [
          `Notch for the toe board: ${w(corner.deep)} in from the front edge, ${w(corner.high)} up from the ${end} end.`,
        ]
      : []),
    ...dados(part),
    ...notches.map((notch) => `Notch ${cut(notch)}${notched(notch)}`),
    ...laps.map((lap) => `Lap ${cut(lap)}${inFace(part)}.`),
    ...bores.map((bore) => rowLine(part, bore, tape)),
    ...fasteners.map((row) => fastenerLine(row, tape)),
    ...tongues.map(tongueLine),
    ...lines.map((line) => standsAt(line, end)),
  ];
}

/** A row of holes, how wide and deep they are, in which face and how far it is from its edge. */
const rowLine = (part: Part, bore: Bore, tape: Tape): string =>
  `Holes ${w(bore.dia)} wide and ${w(bore.deep)} deep in ${boredFace(part, bore.face)}, ${w(bore.off)} from the ${standsOff(bore)} edge: ${rowWords({ bore }, tape)}.`;

/** Holes or slots for what holds it: how wide and deep, how far off what, and where they are along the row. */
function fastenerLine(row: FastenerRow, tape: Tape): string {
  const { thick, deep, from, in: where, biscuit, slant } = row;
  const off = where.at === 'ends' ? faceWord(where.off) : `${where.off} end`;
  const on = where.at === 'face' && where.face ? `, face ${where.face}` : '';
  if (slant)
    return `Holes at 15° into the ${off} for heads ${w(thick)} wide, their seat ${w(slant.seat)} back along the screw, ${fastenerWords(row, tape)}.`;
  return `${biscuit ? 'Slots' : 'Holes'} ${w(thick)} wide and ${w(deep)} deep${on}, ${w(from)} from the ${off}, ${fastenerWords(row, tape)}.`;
}

/** A tongue at an end: how long, and what is cut away beside it, in which face. */
const tongueLine = ({ end, long, shoulder, face }: NonNullable<Part['tongues']>[number]): string =>
  `Tongue at the ${end} end, ${w(long)} long: ${w(shoulder)} cut away in the ${face.named} face.`;

/** Where something stands with nothing cut for it: the face that lies nearer the reference end. */
function standsAt({ takes, near, face }: Line, end: string): string {
  const nearer = end === 'bottom' ? 'lower' : end;
  const on = face === 'A' ? ', on the left' : face === 'B' ? ', on the right' : '';
  return `Line ${takesWords(takes)}${on}, nothing cut: its ${nearer} face ${w(near)} from the ${end} end.`;
}

export const cutsInOrder = 'Its cuts, in order';

export const more = (n: number): string => `and ${n} more, on Cuts.`;
export const spoiled = 'Spoiled';
export const toCuts = 'To the cuts';

export const asCut = 'As cut';
export const asCutTitle = 'As cut, where it differs';

export const addedByHand = 'Added by hand';
export const another = 'Another operation';
export const newOperation = 'An operation by hand';
export const extraCut = 'Extra cut';
export const remove = 'Remove';
export const takenAway = (name: string): string => `${name} taken away`;

/** An operation by hand, each name in braces a blank. */
export const handSlip = '{name} {machine}, set at {figure}, after {after}.';

export const nameTitle = (part: string): string => `What is done to the ${part.toLowerCase()}`;
export const machineTitle = (name: string): string => `Where: ${name}`;
export const figureTitle = (name: string): string => `Set at: ${name}`;
export const afterTitle = (name: string): string => `What comes before: ${name}`;

/** What may come before an operation by hand: a cut every part has, or another by hand. */
export const itsLength = 'its length';
export const itsRip = 'its rip';
export const otherByHand = (name: string): string => name || 'another by hand';
export const somePart = 'a part';
