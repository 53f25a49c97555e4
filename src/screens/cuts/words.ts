import { cutterTape, markAt, type Tape } from '../../length/tape';
import { writeDecimals, writeLength, writeMark } from '../../length/write';
import { blocks, type Checklist, type Group } from '../../plan/checklist';
import { type MachineId, machineAt } from '../../trade/machines/machines';
import type { Card } from '../../trade/setups/checklist';
import type { Operation } from '../../trade/setups/operation';
import { placingOf } from '../../trade/setups/placing';
import type { Setup } from '../../trade/setups/setup';
import { feetSet } from '../shared/block-words';
import { counted } from '../shared/counted';
import { buildWords, fromAbove, onWords, whatWords, whichWords } from '../shared/cut-words';
import { cutterNamed } from '../shared/machines/groove-words';
import { workWord } from '../shared/part-words';
import { placingLine, placingShort } from '../shared/placing-words';
import { setupTitle } from '../shared/setup-title';

export const cuts = 'Cuts';
export const cutOf = (cut: number, of: number): string => `${cut} of ${of} cut`;
export const setupsDone = (done: number, of: number): string =>
  `${done} of ${counted(of, 'setup', 'setups')} done`;
export const sorted = 'Sorted';
export const bySetup = 'By setup';
export const byPart = 'By part';
export const copyOut = 'Copy out as text';
export const sharedName = (job: string): string => `${job || 'Job'} cuts`;
export const printOut = 'Print for a helper';

export const nothingToCut =
  'Nothing to cut yet. Give a case its outside sizes, or lay out a board: its cuts stand here, sorted by what is on the machine.';
export const toJob = 'To the job';

/** An operation in a ring of operations that wait for one another. */
export const ringMember = (op: Operation, tape: Tape): string =>
  `${workWord(op.name)}, ${whichWords(op, tape) || op.what}`;

export const ring = (members: readonly string[]): string =>
  `These wait for one another in a ring, so none can begin: ${members.join(' → ')} → ${members[0]}. Take one “after” away.`;

type Proof = {
  readonly settings: number;
  readonly builds: number;
  readonly proved: boolean;
  /** The lower bound of the settings. */
  readonly least: number;
};

/** How good the order is: proved, or how far from the bound. */
export function order({ settings, builds, proved, least }: Proof): string {
  const bound = proved ? 'no order has fewer' : `no order has fewer than ${least}`;
  return `${counted(settings, 'setting', 'settings')} in ${counted(builds, 'set-up', 'set-ups')} of blade, stack or bench; ${bound}.`;
}

export const breakDown = 'Break down the sheets';
export const cutsMade = (cut: number, of: number): string => `${cut} of ${counted(of, 'cut', 'cuts')} made`;

export const moreSettings = (n: number): string =>
  `${counted(n, 'more setting', 'more settings')} with this cutter and height`;
export const done = 'Done';
export const settingsDone = (n: number): string => `${n === 1 ? 'One setting' : `${n} settings`} done`;
export const ticksKept = (n: number): string =>
  `${n === 1 ? 'one tick' : `${n} ticks`}; their figures stay on the card`;

/** The parts on a card, three at most, and how many of several pieces are cut. */
export function cardParts(names: readonly string[], cut: number, of: number): string {
  const more = names.length > 3 ? ` and ${names.length - 3} more` : '';
  return `${names.slice(0, 3).join(', ')}${more}${cut > 0 && of > 1 ? ` · ${cut} of ${of}` : ''}`;
}

export const partCut = (cut: number, of: number): string => (cut === of ? 'all cut' : cutOf(cut, of));

export const misfitsLabel = 'Cut at a figure that has changed since';
export const misfits = 'Cut, but the figure has changed since';
/** A job in millimetres that was begun by the usual figures in inches. */
export const usualMoved =
  'It was cut by the usual figures in inches; those in millimetres have taken their place since (6 mm for 6.35).';
export const backToUsual = 'Back to the usual figures in inches';
export const moreMisfits = (n: number): string => `and ${n} more`;

/** A cut piece that no longer fits: what was cut, and what of it is off. */
export function misfit(
  op: Operation,
  off: 'width' | 'depth' | 'first' | 'last' | 'place',
  tape: Tape,
): string {
  const how = {
    width: ', how wide',
    depth: ', how deep',
    first: ', its first hole',
    last: ', its last hole',
    place: '',
  };
  return `${whichWords(op, tape) || op.what}${how[off]}: recut, or make its mates match`;
}

/** How the pieces of a card lie, or what is done to them; and whether something of it is blocked. */
export function cardSays(list: Checklist, card: Card): string {
  const { tape } = list.plan.job;
  const lies = placingShort(card.operations.map((op) => ({ name: op.name, placing: placingOf(op) })));
  const [first] = card.operations;
  const feet = first?.what === 'level' ? list.doing.feet?.(first.part.replace(/~bench$/, '')) : undefined;
  const what = lies || (first ? whatWords(first, tape) : '');
  const says = feet ? `${what} · ${feetSet(feet)}` : what;
  return card.operations.some((op) => blocks(list, op).length > 0) ? `${says} · blocked` : says;
}

/** A change of stack, bit or height, before the settings it serves. */
export function changeTo({ machine, cutter, height }: Setup, tape: Tape): string {
  const fine = cutterTape(tape);
  const width = cutter ? `${writeLength(markAt(cutter, fine).value, fine)} ` : '';
  const high = height ? `, ${fromAbove(machine) ? 'set deep' : 'raise to'} ${writeLength(height, tape)}` : '';
  const exact = cutter ? ` (${writeDecimals(cutter, tape)})` : '';
  return `Change to ${width}${cutterNamed(machineAt(machine).cuts)}${exact}${high}`;
}
export const raised = (height: string, machine: MachineId): string =>
  `${fromAbove(machine) ? '↓' : '↑'}${height}`;

/** A card in the plain list: what is set to what, with its remainder; then machine, cutter and height. */
export function plainHead(op: Operation, no: number, tape: Tape): string {
  const { figure } = op.setup;
  const at = figure ? ` ${writeMark(figure, tape)}` : '';
  const on = onWords(op.setup);
  return `${no}. ${setupTitle(op)}${at}\n   ${buildWords(op.setup, tape)}${on ? `; ${on}` : ''}`;
}

type PlainTick = { readonly ticked: boolean; readonly waits: string | undefined; readonly tape: Tape };

/** A piece in the plain list: what is done to it, and how it lies. */
export function plainTick(op: Operation, { ticked, waits, tape }: PlainTick): string {
  const lies = placingLine(placingOf(op), tape);
  const says = [`${workWord(op.name)}: ${whatWords(op, tape)}`, ...(lies ? [lies] : [])].join('; ');
  return `   [${ticked ? 'x' : ' '}] ${says}${waits ? ` (blocked: ${waits})` : ''}`;
}
export const plainTitle = (job: string, cut: number, of: number): string =>
  `${job || 'Job'}, ${cutOf(cut, of)}`;

/**
 * What stands over the boxes of a group. A mark on the story stick has its figure in its name, and a part with one
 * mitred end that end.
 */
export function groupName({ name, pieces }: Group, tape: Tape): string {
  const op = pieces[0]?.op;
  if (op?.what === 'marks') return `${workWord(name)}, ${whichWords(op, tape)}`;
  const [end, other] = op?.which?.is === 'long-points' ? (op.which.ends ?? []) : [];
  return end && !other ? `${workWord(name)}, ${end} end` : workWord(name);
}
