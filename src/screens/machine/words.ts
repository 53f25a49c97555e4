import type { Length } from '../../length/length';
import { cutterTape, markAt, type Tape } from '../../length/tape';
import { writeLength, writeMark } from '../../length/write';
import type { Checklist } from '../../plan/checklist';
import { isDone as allDone } from '../../plan/checklist';
import type { Need } from '../../trade/machines/limits';
import type { Cuts } from '../../trade/machines/machine';
import { type MachineId, machineAt } from '../../trade/machines/machines';
import type { Shop } from '../../trade/machines/shop';
import type { Card } from '../../trade/setups/checklist';
import { isStep, type Operation } from '../../trade/setups/operation';
import { placingOf } from '../../trade/setups/placing';
import type { Bore } from '../../trade/shelves/bore';
import { aloud } from '../shared/aloud-words';
import { isAtBench } from '../shared/block-words';
import { capital } from '../shared/capital';
import { buildWords, fromAbove, whatWords } from '../shared/cut-words';
import { doneWord } from '../shared/done-words';
import { workWord } from '../shared/part-words';
import { pieceName } from '../shared/piece-words';
import { placingWords } from '../shared/placing-words';
import { markedFrom, rowName, standsOff } from '../shared/row-words';
import { setupTitle } from '../shared/setup-title';

export const setup = 'Setup';
export const cuts = 'Cuts';
export const setupGone =
  'Nothing is cut at this setup any more: a size has changed since. What was noted at it is kept.';
export const toCuts = 'See it in Cuts';
export const cannotBeCut = 'This board cannot be cut as it stands.';
export const figureWanted = 'A figure of the machine is missing.';
export const seeMissing = 'See what is missing';

export const leave = 'Leave';
export const heading = (op: Operation, tape: Tape): string =>
  `${buildWords(op.setup, tape)}: ${setupTitle(op)}`;
export const progress = (done: number, of: number): string =>
  of === 1
    ? 'The only setting with this cutter and height'
    : `${done} of ${of} settings cut with this cutter and height`;

/** The button that changes the finish of the screen, by what a tap makes of it. */
export const finishChange = (dark: boolean): string => `Screen: ${dark ? 'bright' : 'dim'}`;

// What stands on the machine.

export const machine = 'Machine';
export const high = (machine: MachineId): string => (fromAbove(machine) ? 'Deep' : 'High');
const cutterNames: Record<Cuts, string> = {
  blade: 'Blade',
  stack: 'Stack',
  shoulders: 'Shoulders',
  bit: 'Bit',
  tool: 'Tool',
  none: '',
};
export const cutter = (kind: Cuts, now: boolean): string => `${cutterNames[kind]}${now ? ' now' : ''}`;

// Pieces.

const setupTitleOf = (op: Operation): string => (isStep(op) ? setupTitle(op) : capital(plainWhat(op)));
const plainWhat = (op: Operation): string =>
  op.what === 'length'
    ? 'the length'
    : op.what === 'rip'
      ? 'the rip'
      : op.what === 'bore' || op.what === 'slot'
        ? 'that row'
        : 'that cut';
const isBored = ({ what }: Operation): boolean => what === 'bore';
export const anyway = (op: Operation): string =>
  isAtBench(op) ? 'Go ahead anyway' : isBored(op) ? 'Bore it anyway' : 'Cut it anyway';
export const because = (op: Operation): string => `or ${anyway(op).toLowerCase()}, because`;
/** That what comes first is done: said once for all that waits for it. */
export const alreadyDone = (before: readonly Operation[]): string =>
  before.length === 1 && before[0]
    ? `${setupTitleOf(before[0])} is done already`
    : 'All that is done already';
export const alreadyAct = (before: readonly Operation[]): string =>
  `Done already: ${before.length === 1 && before[0] ? workWord(before[0].name) : `${before.length} cuts`}`;
export const aheadAct = (op: Operation): string =>
  isAtBench(op)
    ? `${setupTitle(op)} all the same: ${workWord(op.name)}`
    : `${isBored(op) ? 'Bored' : 'Cut'} anyway: ${workWord(op.name)}`;

// A row of holes.

export const holesOn = (names: readonly string[]): string => `Holes on: ${names.join(', ')}`;
export const rowDrawn = (bore: Bore): string =>
  `The ${rowName(bore)} to scale, ${markedFrom(bore)} end at the left`;
export const rowLies = (bore: Bore): string => {
  const [end, edge] = [markedFrom(bore), standsOff(bore)];
  return `${capital(end)} end at the left, ${edge} edge at the ${edge === 'left' ? 'top' : 'bottom'} of the drawing. Each hole by its number, from the ${end} end:`;
};

/** What is read aloud after the figure: the piece, and how it lies. */
export function aloudOf(op: Operation, tape: Tape): string {
  const { edge, leads } = placingWords(placingOf(op), tape);
  return [pieceName(op, tape), edge, leads].filter(Boolean).join(', ');
}

// The bar.

/** What a tap on the big bar says is done. */
export function isDone(op: Operation): string {
  if (op.what === 'test') return 'Test cut fits';
  return isStep(op) ? `${setupTitle(op)}: done` : `${workWord(op.name)} is ${lower(doneWord(op))}`;
}
const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
export const allCut = 'All cut. Back';

/** What all that is left waits for, and is not done at a machine. */
export const firstSeeTo = {
  opening: 'Measure the opening first',
  stock: 'Measure the sheet first',
  feet: 'Set the feet first',
} as const;

/** The setting that comes next, with what it is set to. */
export function nextSetting(card: Card, { plan }: Checklist): string {
  const [op] = card.operations;
  if (!op) return 'Next setting';
  const figure = op.setup.figure ? ` ${writeLength(op.setup.figure.value, plan.job.tape)}` : '';
  return `Next: ${setupTitle(op).toLowerCase()}${figure}`;
}

/** What shows that two pieces that mirror each other were cut so. */
export const cutBoth = (list: Checklist, card: Card): string | undefined =>
  card.operations.length === 2 && card.operations.every((op) => op.groove) && allDone(list, card)
    ? 'Both cut. Hold them inside to inside: the dadoes meet'
    : undefined;

// A change of stack, bit or height.

export const changeTo = (op: Operation, tape: Tape): string => `Change to ${buildWords(op.setup, tape)}`;
export const buildOf = (no: number, of: number): string => `Change ${no} of ${of}`;
export const wide = (decimals: string): string => `${decimals} wide`;
export const raiseTo = (machine: MachineId): string => (fromAbove(machine) ? 'Set to' : 'Raise to');
export const offTheTable = (machine: MachineId): string => (fromAbove(machine) ? 'deep' : 'off the table');
/** What is read aloud of a cutter and its height: both figures, as they stand on the screen. */
export function aloudSet({ setup: { machine, cutter: width, height } }: Operation, tape: Tape): string {
  const fine = cutterTape(tape);
  const both = [
    ...(width ? [`${cutter(machineAt(machine).cuts, false)} ${aloud(markAt(width, fine), fine)}`] : []),
    ...(height ? [`${raiseTo(machine)} ${aloud(markAt(height, tape), tape)}, ${offTheTable(machine)}`] : []),
  ];
  return both.join('; ');
}
export const notYet = 'Not yet';
/** A tap also says of the test cut, where one is asked for, that it fits. */
export const isSet = (tested: boolean): string => (tested ? 'Set and tested' : 'It is set');

const cutterOf = ({ setup: { machine, cutter: width } }: Operation, tape: Tape): string => {
  const kind = cutterNames[machineAt(machine).cuts].toLowerCase();
  if (!width) return kind;
  return `${writeLength(markAt(width, cutterTape(tape)).value, cutterTape(tape))} ${kind}`;
};

/** What the bar sums up: what is on, how high, and of a test that it fits. */
export const setSays = (op: Operation, tape: Tape, tested: boolean): string =>
  [
    `${cutterOf(op, tape)} on`,
    ...(op.setup.height
      ? [`${writeLength(op.setup.height, tape)} ${high(op.setup.machine).toLowerCase()}`]
      : []),
    ...(tested ? ['the test cut fits'] : []),
  ].join(', ');

/** Blades and stacks go on the arbor of a saw; a bit stands in a machine of its own. */
const onOneSpindle = (...ops: readonly [Operation, Operation]): boolean =>
  ops[0].setup.machine === ops[1].setup.machine ||
  ops.every(({ setup }) => ['blade', 'stack', 'shoulders'].includes(machineAt(setup.machine).cuts));

/** The first step: what comes off and what goes on. */
export function offAndOn(from: Operation | undefined, to: Operation, tape: Tape): string {
  const sameCutter =
    from &&
    from.setup.machine === to.setup.machine &&
    from.setup.own?.id === to.setup.own?.id &&
    from.setup.cutter?.equals(to.setup.cutter ?? 0n);
  if (sameCutter) return `Unplug. The ${cutterOf(to, tape)} stays on; only its height is changed.`;
  const off = from && onOneSpindle(from, to) ? `${cutterOf(from, tape)} off, ` : '';
  return `Unplug. ${capital(`${off}${cutterOf(to, tape)} on.`)}`;
}
export const measured = 'It measured';
export const buildStack = 'Build the stack';

/** Cards passed by with the cutter that stands: what goes with it. */
export function passedBy(cards: readonly Card[], tape: Tape): string {
  const each = cards.flatMap(({ operations: [op] }) =>
    op
      ? [`${workWord(op.name)}${op.setup.figure ? ` at ${writeLength(op.setup.figure.value, tape)}` : ''}`]
      : [],
  );
  return `Skipped with what is on now: ${each.join('; ')}. Not yet goes back to it.`;
}

// The last call.

export const lastCall = 'Last call';
export const stillWant = (n: number): string =>
  n === 1 ? 'One more piece wants this figure:' : `${n} more pieces want this figure:`;
export const unmade = (op: Operation, isBlocked: boolean, tape: Tape): string =>
  `${workWord(op.name)}, ${whatWords(op, tape)}${isBlocked ? ' (blocked for now)' : ''}`;
export const stay = (op: Operation | undefined, tape: Tape): string =>
  op ? `Stay, cut ${pieceName(op, tape)}` : 'Stay';
export const leaveWith = (n: number): string => `Leave, ${n === 1 ? 'one' : n} to come back for`;

// Ways on, and what was found out.

export const spoiled = 'Spoiled';
export const otherMachine = 'On another machine';
export function whereCut(cut: Need['cut']): string {
  if (cut === 'rip') return 'What they are ripped on';
  if (cut === 'crosscut') return 'What they are cut to length on';
  if (cut === 'slot') return 'What they are slotted with';
  return cut === 'bore' ? 'What they are bored on' : 'What they are cut on';
}
export const firstThatCan = 'The first that can';
export const asShopSays = (order: Shop['order']): string =>
  order ? 'in the order said in Shop figures' : 'the usual one, until Shop figures say an order';
export const reaches = (figure: Length | undefined, tape: Tape): string =>
  figure ? `reaches, set at ${writeMark(markAt(figure, tape), tape)}` : 'reaches';
export const stackAndTest = 'Stack and test cut';
export const kerfTest = 'Kerf by a test cut';
export const oneAtATime = 'One at a time';
export const diagonals = 'Diagonals and openings';
export const frontsDrawn = 'The fronts, drawn';

export const kept = 'Kept with this setup';
export const notNoted = 'not noted';
export const noStack = 'nothing';
export const note = 'Note';
export const noNote = 'none';
export const noteTitle = 'Note at this setup';
export const noteAct = 'Note at a setup';
