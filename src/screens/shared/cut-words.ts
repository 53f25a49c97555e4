import { assertNever } from '../../length/result';
import { cutterTape, markAt, type Tape, unitsOf } from '../../length/tape';
import { writeDecimals, writeLength } from '../../length/write';
import type { On, Side, TailsBy } from '../../trade/setups/on';
import type { Operation } from '../../trade/setups/operation';
import type { Setup } from '../../trade/setups/setup';
import { benchWords, machineWords } from './setup-title';

/** The dear part: machine, cutter, height. */
export function buildWords({ machine, cutter, height }: Setup, tape: Tape = '1/64'): string {
  const cuts = machine === 'notch' || machine === 'lap' ? 'long' : machine === 'router' ? 'bit' : 'stack';
  const width = cutter
    ? cuts === 'long'
      ? `${writeLength(cutter, tape)} long`
      : `${cuts} ${writeDecimals(unitsOf(tape) === 'mm' ? markAt(cutter, cutterTape(tape)).value : cutter, tape)}`
    : '';
  const deep = height ? `${writeLength(height, tape)} high` : '';
  return [machineWords[machine], width, deep].filter(Boolean).join(', ');
}

/** An end or an edge of a part. @example sideWords({ at: 'edge', named: 'back' }) // 'back edge' */
export const sideWords = ({ at, named }: Side): string => `${named} ${at}`;

const isBackEnd = (on: On): boolean => on.at === 'end' && on.named === 'back';

const tailsWords: Record<TailsBy, string> = { template: 'by template', 'laid-out': 'laid out' };

function onWord(on: On): string {
  if (on.at === 'end' || on.at === 'edge') return sideWords(on);
  if (on.at === 'tails') return `${tailsWords[on.by]}, tails ${writeLength(on.long)} long`;
  return on.at === 'other-end' ? 'other end' : '';
}

/** Which of its kind on the part. */
export const whichWords = ({ what, which, setup }: Operation): string =>
  what === 'tails' || what === 'pins' ? onWord(setup.on) : which;

/** What stands on stop, fence or guide. */
export function onWords(setup: Setup): string {
  switch (setup.machine) {
    case 'rip':
      return setup.on.at === 'strip'
        ? 'strip off the true edge, fence to the near face of the teeth'
        : 'true edge on the fence, fence to the near face of the teeth';
    case 'crosscut':
      return 'squared end on the stop, stop to the near teeth';
    case 'mitre':
      return 'measured to the long points';
    case 'rabbet':
      return `${onWord(setup.on)} against the sacrificial fence`;
    case 'notch':
      return `parts clamped as one, ${onWord(setup.on)} on the stop`;
    case 'lap':
      return `${onWord(setup.on)} on the stop, cut both shoulders, then between`;
    case 'fence':
      return isBackEnd(setup.on)
        ? 'back end on the fence, kept square by a wide push block'
        : `${onWord(setup.on)} on the fence`;
    case 'router':
    case 'saw':
      return `from the ${onWord(setup.on)} to the guide`;
    case 'stop':
    case 'spacers':
      return `${onWord(setup.on)} on the stop, to the near teeth`;
    case 'index':
      return `${onWord(setup.on)} on the pencil mark, mark to the near teeth`;
    case 'dovetail':
      return `${onWord(setup.on)}, inside face in, bottom edge to the stop`;
    case 'stick':
      return setup.figure ? 'case bottom to the lower edge of the slide' : '';
    case 'jig':
      return 'end stop to the middle of the hole';
    case 'hand':
    case 'bench':
      return '';
    default:
      return assertNever(setup.machine);
  }
}

/** What is done, for a list: `rip`, `groove no. 7`, `rabbet for the top`. */
export function whatWords(op: Operation): string {
  if (op.what === 'hand') return op.which;
  if (op.what === 'test') return 'test cut';
  if (op.what === 'slide') return op.which;
  const bench = benchWords[op.what];
  if (bench) return `${bench.toLowerCase()}: ${op.which}`;
  if (op.what === 'along') return `${isBackEnd(op.setup.on) ? 'dado' : 'groove'} ${op.which}`;
  if (op.what === 'groove' && op.fits) return `dado for the ${op.which}`;
  return [op.what, whichWords(op)].filter(Boolean).join(' ');
}
