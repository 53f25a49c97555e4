import type { Length } from '../../length/length';
import type { Tape } from '../../length/tape';
import { writeDecimals, writeLength } from '../../length/write';
import type { Machine } from '../../trade/machines/machine';
import { type MachineId, machineAt } from '../../trade/machines/machines';
import type { On, TailsBy } from '../../trade/setups/on';
import type { Operation } from '../../trade/setups/operation';
import type { Setup } from '../../trade/setups/setup';
import { exactly } from './exact-words';
import { cutterNamed } from './machines/groove-words';
import { machineName } from './machines/machine-names';
import { isShortEnd, wordsOf } from './machines/machine-words';
import { faceWord, sideWords } from './placing-words';
import { benchWords } from './setup-title';
import { whichAlone } from './which-words';

const isDrill = (machine: MachineId): boolean =>
  machine === 'press' || machine === 'template' || machine === 'slant' || machine === 'plate';

/** What cuts from above is let down into the work; what stands in a table is raised out of it. */
export const fromAbove = (machine: MachineId): boolean =>
  machine === 'router' ||
  machine === 'saw' ||
  machine === 'sliding' ||
  machine === 'slidingcut' ||
  isDrill(machine);

/** The dear part: machine, cutter, height. */
export function buildWords(setup: Setup, tape: Tape = '1/64'): string {
  const { machine, cutter, height } = setup;
  const width = cutter ? cutterWords(machineAt(machine), cutter, tape) : '';
  const deep = height ? `${writeLength(height, tape)} ${fromAbove(machine) ? 'deep' : 'high'}` : '';
  return [machineName(setup), width, deep].filter(Boolean).join(', ');
}

/** How wide the cutter is, or how long the cut a stack makes from shoulder to shoulder. */
function cutterWords({ cuts }: Machine, width: Length, tape: Tape): string {
  if (cuts === 'shoulders') return `${writeLength(width, tape)} long`;
  return `${cutterNamed(cuts)} ${writeDecimals(width, tape)}`;
}

const tailsWords: Record<TailsBy, string> = { template: 'by template', 'laid-out': 'laid out' };

function onWord(on: On): string {
  if (on.at === 'end' || on.at === 'edge') return sideWords(on);
  if (on.at === 'face') return faceWord(on.named);
  if (on.at === 'tails') return `${tailsWords[on.by]}, tails ${exactly(on.long)} long`;
  if (on.at === 'dowels') return on.in === 'end' ? 'outside face' : 'end beside it';
  if (on.at === 'fingers') return `beginning with a ${on.begins}`;
  return on.at === 'other-end' ? 'other end' : '';
}

/** Which of its kind on the part, or what is minded at the bench; of what joins an end how it is laid out. */
export const whichWords = (op: Operation, tape: Tape): string =>
  joinsEnd(op.what) ? onWord(op.setup.on) : whichAlone(op, tape);

const joinsEnd = (what: Operation['what']): boolean =>
  what === 'tails' || what === 'pins' || what === 'fingers';

/** What stands on stop, fence or guide. */
export const onWords = (setup: Setup): string => wordsOf(setup.machine).held?.(onWord(setup.on), setup) ?? '';

/** Of several, which: it is then called by its number alone. */
const numbered = ({ which }: Operation): boolean => which?.is === 'groove' && which.seat.no !== undefined;

/** A part stands in it, not one of a run of like ones. */
const isSeat = ({ which }: Operation): boolean => which?.is === 'groove' && which.seat.in !== 'run';

/** What is done, for a list: `rip`, `groove no. 7`, `rabbet for the top`. */
export function whatWords(op: Operation, tape: Tape): string {
  const which = whichWords(op, tape);
  if (op.what === 'hand' || op.what === 'slide' || op.what === 'runner') return which;
  if (op.what === 'test') return 'test cut';
  const bench = benchWords[op.what];
  if (bench) return `${bench.toLowerCase()}: ${which}`;
  if (op.what === 'corner') return `notch ${which}`;
  if (op.what === 'along') return `${isShortEnd(op.setup.on) ? 'dado' : 'groove'} ${which}`;
  if (op.which?.is === 'groove' && op.which.seat.in === 'said') return `dado ${which}`;
  if (op.what === 'groove' && (op.fits || isSeat(op))) {
    const groove = op.fits ? 'dado' : 'groove';
    return numbered(op) ? `${groove} for ${which}` : `${groove} for the ${which}`;
  }
  return [op.what, which].filter(Boolean).join(' ');
}
