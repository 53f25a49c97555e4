import { assertNever } from '../../length/result';
import { isMetric, markAt, type Tape } from '../../length/tape';
import { writeDecimal, writeLength } from '../../length/write';
import type { Operation, What } from '../../trade/setups/operation';
import type { Sets, Setup, SetupMachine } from '../../trade/setups/setup';

/** What is set, in the order of the hand: machine, then what the figure stands on. */
const setWords: Record<Sets, string> = {
  'rip-fence': 'Rip fence at',
  'length-stop': 'Crosscut, stop at',
  'long-point': 'Mitre, long point at',
  'stop-to-near-teeth': 'Stop block at',
  'other-stop-to-teeth': 'Stop block at, other end',
  'fence-scale': 'Fence scale at',
  'guide-edge': 'Guide edge at',
  spacer: 'Spacer in the stop',
  'fence-mark': 'Fence pencil mark at',
  exposed: 'Teeth showing past the fence',
  'near-shoulder': 'Near shoulder at',
  'stick-length': 'Stick under the slides at',
  'from-end': 'Hole at',
  'as-said': 'Set at',
};

const machineWords: Record<SetupMachine, string> = {
  rip: 'Table saw, single blade',
  crosscut: 'Crosscut, single blade',
  mitre: 'Crosscut, blade at 45°',
  stop: 'Sled and stop',
  fence: 'Table saw, fence',
  router: 'Router and guide',
  saw: 'Circular saw and guide',
  spacers: 'Stop and spacers',
  index: 'Fence pencil marks',
  rabbet: 'Table saw, sacrificial fence',
  notch: 'Notches, on edge',
  lap: 'Laps, face down',
  dovetail: 'Dovetails',
  stick: 'Sticks',
  jig: 'Drilling jig',
  hand: 'By hand',
  bench: 'At the bench',
};

const benchWords: Partial<Record<What, string>> = {
  'dry-fit': 'Dry-fit',
  'finish-inside': 'Finish the inside',
  'glue-up': 'Glue up',
  'frame-on': 'Frame on',
  marks: 'Mark the story stick',
  'box-up': 'Glue up the boxes',
  slide: 'Slides on their stick',
  hang: 'Hang the boxes',
  level: 'Level and anchor',
  'front-on': 'Fit the fronts',
  pulls: 'Drill for the pull',
};

/** Heading of a setup: `Rip fence at`, `Dry-fit`, or what was said by hand. */
export function setupTitle(op: Operation): string {
  const { setup } = op;
  if (op.what === 'hand') return setup.figure ? `${op.which}, set at` : op.which;
  if (setup.sets) return setWords[setup.sets];
  return benchWords[op.what] ?? machineWords[setup.machine];
}

/** The dear part: machine, cutter, height. */
export function buildWords({ machine, cutter, height }: Setup, tape: Tape = '1/64'): string {
  const cuts = machine === 'notch' || machine === 'lap' ? 'long' : machine === 'router' ? 'bit' : 'stack';
  const width = cutter
    ? cuts === 'long'
      ? `${writeLength(cutter, tape)} long`
      : `${cuts} ${isMetric(tape) ? writeLength(markAt(cutter, '1/2 mm').value, tape) : writeDecimal(cutter)}`
    : '';
  const deep = height ? `${writeLength(height, tape)} high` : '';
  return [machineWords[machine], width, deep].filter(Boolean).join(', ');
}

/** What stands on stop, fence or guide. */
export function onWords(setup: Setup): string {
  switch (setup.machine) {
    case 'rip':
      return setup.on === 'strip'
        ? 'strip off the true edge, fence to the near face of the teeth'
        : 'true edge on the fence, fence to the near face of the teeth';
    case 'crosscut':
      return 'squared end on the stop, stop to the near teeth';
    case 'mitre':
      return 'measured to the long points';
    case 'rabbet':
      return `${setup.on} against the sacrificial fence`;
    case 'notch':
      return `parts clamped as one, ${setup.on} on the stop`;
    case 'lap':
      return `${setup.on} on the stop, cut both shoulders, then between`;
    case 'fence':
      return setup.on === 'back end'
        ? 'back end on the fence, kept square by a wide push block'
        : `${setup.on} on the fence`;
    case 'router':
    case 'saw':
      return `from the ${setup.on.split(',')[0]} to the guide`;
    case 'stop':
    case 'spacers':
      return `${setup.on} on the stop, to the near teeth`;
    case 'index':
      return `${setup.on} on the pencil mark, mark to the near teeth`;
    case 'dovetail':
      return `${setup.on}, inside face in, bottom edge to the stop`;
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
  if (op.what === 'along') return `${op.setup.on === 'back end' ? 'dado' : 'groove'} ${op.which}`;
  if (op.what === 'groove' && op.fits) return `dado for the ${op.which}`;
  return [op.what, op.which].filter(Boolean).join(' ');
}

/** What is said where a step at the bench can hurt. Common practice, no source. */
const stepCautions: Partial<Record<What, string>> = {
  level:
    'Anchor before anything is loaded. Check for pipes, wires and heating tubes before any fastener in a wall or floor. Nobody below.',
  hang: 'One drawer out at a time until the case is anchored.',
  'front-on': 'One drawer out at a time. Pilot first; hand clear of the tip.',
  'box-up': 'Clamps snug, not hard. Hands out from under them.',
};

/** The line of caution of an operation's card: of the step, else of its machine. */
export const cautionOf = (op: Operation): string => stepCautions[op.what] ?? setupCautions[op.setup.machine];

/** Common practice, no source. The tool's own manual, local codes and licensed practice come first. */
const setupCautions: Record<SetupMachine, string> = {
  rip: 'Push block for a narrow piece by the fence, or let it fall on the free side off a stop clear of the blade. Riving knife on.',
  crosscut:
    'Stop clear of chips. Both ends held level, hands outside the line, saw stopped before you reach in.',
  mitre: 'Work held, never freehand. Hands outside the line, saw stopped before you reach in.',
  stop: 'Work level and tight to the fence, stop clear of chips. Saw stopped before you reach in.',
  fence:
    'Guard and knife go straight back on after. Wide insert, push blocks, nothing freehand; never fence and mitre gauge together on a cut that goes through.',
  router:
    'Clamp guide and work. Feed so the bit draws into the guide. No light pass on the climbing side. Bit stopped before lifting.',
  saw: 'Both halves held up so the kerf cannot close. Depth set to the cut, never deeper. Cord and hands behind.',
  spacers: 'Spacers lie flat on a clean stop. Work tight to the fence, hands outside the line.',
  index: 'These pencil marks belong to one stack. Long work held level, hands outside the line.',
  rabbet:
    'Guard and knife go straight back on after. Wide insert, feather board or push block, nothing freehand.',
  notch: 'Parts clamped as one to a tall fence or carriage. Wide insert; guard back on straight after.',
  lap: 'Work held to the mitre gauge or sled, no fence touching the end as it is cut through. Wide insert.',
  dovetail:
    'Do not raise the router inside the fingers; clamps checked, scrap behind. Chisel away from the hand that holds.',
  stick: 'Short sticks: cut from long stock and held with a block, not fingers.',
  jig: 'Front and jig clamped, scrap behind where the bit comes through.',
  hand: 'Clamp the work; both hands behind the edge.',
  bench: 'Two people over 50 lb, path cleared, nobody below.',
};
