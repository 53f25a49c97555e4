import type { Length } from '../../length/length';
import type { Tape } from '../../length/tape';
import { writeLength } from '../../length/write';
import type { Group } from '../../plan/checklist';
import { isStep, type Operation } from '../../trade/setups/operation';
import type { Setup } from '../../trade/setups/setup';
import { counted } from '../shared/counted';
import { buildWords, onWords, whatWords, whichWords } from '../shared/cut-words';
import { workWord } from '../shared/part-words';
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

export const moreSettings = (n: number): string => `${n} more settings at this one`;
export const done = 'Done';
export const settingsDone = (n: number): string => `${n === 1 ? 'One setting' : `${n} settings`} done`;
export const ticksKept = (n: number): string =>
  `${n === 1 ? 'one tick' : `${n} ticks`}; their figures stay on the card`;

/** The parts on a card, three at most, and how many of several pieces are cut. */
export function cardParts(names: readonly string[], cut: number, of: number): string {
  const more = names.length > 3 ? ` and ${names.length - 3} more` : '';
  return `${names.slice(0, 3).join(', ')}${more}${of > 1 ? ` · ${cut} of ${of}` : ''}`;
}

export const partCut = (cut: number, of: number): string => (cut === of ? 'all cut' : cutOf(cut, of));

export const misfitsLabel = 'Cut, and no longer wanted at that figure';
export const misfits = 'Cut, and now wanted otherwise';
export const moreMisfits = (n: number): string => `and ${n} more`;

/** A cut piece that no longer fits: what was cut, and what of it is off. */
export function misfit(op: Operation, off: 'width' | 'depth' | 'place', tape: Tape): string {
  const how = { width: ', how wide', depth: ', how deep', place: '' };
  return `${whichWords(op, tape) || op.what}${how[off]}: recut, or make its mates match`;
}

export const lastCall = 'Last call';
const someCuts = (n: number): string => (n === 1 ? 'One cut' : `${n} cuts`);
const want = (n: number): string => (n === 1 ? 'wants' : 'want');

/** Names of operations, each once; of more than four the first three. */
function namesOf(ops: readonly Operation[]): string {
  const names = [...new Set(ops.map((op) => workWord(op.name)))];
  return names.length > 4 ? `${names.slice(0, 3).join(', ')} and ${names.length - 3} more` : names.join(', ');
}

/** What still wants the figure that stands; `figure` is empty where nothing is set to one. */
export const stillWant = (ops: readonly Operation[], figure: string): string =>
  ops.length === 0
    ? `Nothing more wants ${figure || 'this figure'}.`
    : `${someCuts(ops.length)} still ${want(ops.length)} ${figure || 'this'}: ${namesOf(ops)}.`;

export const blockedForNow = (ops: readonly Operation[]): string =>
  `${namesOf(ops)} ${ops.length === 1 ? 'is' : 'are'} blocked for now and will want it later: write the figure down, or wait.`;
export const comeAgain = (ops: readonly Operation[]): string =>
  `${namesOf(ops)} come to it again farther down.`;
export const sameBuild = (setup: Setup, n: number, tape: Tape): string =>
  `${buildWords(setup, tape)}, at other figures: ${someCuts(n).toLowerCase()} ${want(n)} it.`;
export const cutSpare = 'Cut a spare piece and keep the test piece before the stack comes off.';

export const setup = 'Setup';
export const setupGone =
  'Nothing wants this setup any more: a size has changed since. What was found out at it is kept.';
export const settingOf = (no: number, of: number, awake: boolean): string =>
  `Setting ${no} of ${of}, ${awake ? 'stays on' : 'may sleep'}`;

/** What stands on the machine, and which stock a stack is built for. */
export function standsOn(setup: Setup, tape: Tape, stocks: readonly string[]): string {
  const on = onWords(setup);
  const build = stocks.length > 0 ? ` Build the stack for ${stocks.join(' and ')}.` : '';
  return `${buildWords(setup, tape)}${on ? `: ${on}` : ''}.${build}`;
}

export const stackAndTest = 'Stack and test cut';
export const oneAtSaw = 'One at a time at the saw';
export const oneAtATime = 'One at a time';
export const frontsDrawn = 'The fronts, drawn';
export const pieceTick = (op: Operation, tape: Tape): string =>
  `${workWord(op.name)}, ${whatWords(op, tape)}`;
export const comesNext = (next: Operation): string => `Then: ${setupTitle(next)}`;
export const spoiled = 'Spoiled';
export const leave = 'Leave';
export const nextSetup = 'Next setup';
export const allCut = 'All cut. Back to Cuts';

/** What a tap on the big button says is done. */
export function isDone(op: Operation): string {
  if (op.what === 'test') return 'Test cut fits';
  return isStep(op) ? `${setupTitle(op)}: done` : `${workWord(op.name)} is cut`;
}

/** A setup with its figure, in one line. */
export function setupLine(op: Operation, tape: Tape): string {
  const { figure } = op.setup;
  return figure ? `${setupTitle(op)} ${writeLength(figure.value, tape)}` : setupTitle(op);
}

export const nowAt = (op: Operation | undefined, tape: Tape): string =>
  `Now at: ${op ? setupLine(op, tape) : ''}`;
export const tickAct = (op: Operation, wasDone: boolean): string =>
  `${wasDone ? 'Not cut' : 'Cut'}: ${workWord(op.name)}`;
export const aheadAct = (op: Operation): string => `Let go ahead: ${workWord(op.name)}`;

export const waitsFor = (op: Operation, what: string): string => `${workWord(op.name)} waits for: ${what}`;

/** Why a blocked cut may go ahead: kept with it. */
export const reasons = [
  'Go ahead: measured another way',
  'Go ahead: cut over size, to be trimmed',
  'Go ahead: already done elsewhere',
  'Go ahead: I know what I do',
];

export const notMeasured = (stock: string | undefined): string => `${stock ?? 'the sheet'} is not measured`;
export const noLayout = 'its grooves cannot be set out yet, see Marks';
export const openingNotMeasured = (back: boolean): string =>
  `its opening, not measured ${back ? 'front and back' : 'yet'}`;
export const otherFirst = (op: Operation, tape: Tape): string =>
  `${workWord(op.name)}, ${isStep(op) ? setupTitle(op).toLowerCase() : whatWords(op, tape)}`;
export const blockers = (words: readonly string[]): string =>
  words.length > 2 ? `${words[0]} and ${words.length - 1} more` : words.join(' and ');

export const cutAt = (was: Length, now: Length, tape: Tape): string =>
  `cut at ${writeLength(was, tape)}, now wants ${writeLength(now, tape)}`;
export const blockedBy = (what: string): string => `blocked by ${what}`;
export const someDone = (n: number, of: number): string => `${n} of ${of}`;

/** A card in the plain list: its heading, then what stands on the machine. */
export function plainHead(op: Operation, no: number, tape: Tape): string {
  const on = onWords(op.setup);
  return `${no}. ${setupLine(op, tape)}\n   ${buildWords(op.setup, tape)}${on ? `; ${on}` : ''}`;
}
export const plainTick = (op: Operation, ticked: boolean, tape: Tape): string =>
  `   [${ticked ? 'x' : ' '}] ${workWord(op.name)}: ${whatWords(op, tape)}`;
export const plainTitle = (job: string, cut: number, of: number): string =>
  `${job || 'Job'}, ${cutOf(cut, of)}`;

export const kept = 'Kept with this setup';
export const recipeFields = {
  scale: 'What the scale read',
  height: 'Height it was set to',
  got: 'What the test cut measured',
} as const;
export const notNoted = 'not noted';
export const stackBetween = 'Stack between the outers';
export const noStack = 'nothing';
export const note = 'Note';
export const noNote = 'none';
export const noteTitle = 'Note at this setup';
export const noteAct = 'Note at a setup';

/** What stands over the boxes of a group. A mark on the story stick has its figure in its name. */
export function groupName({ name, pieces }: Group, tape: Tape): string {
  const op = pieces[0]?.op;
  return op?.what === 'marks' ? `${workWord(name)}, ${whichWords(op, tape)}` : workWord(name);
}
