import type { Gauge } from '../../trade/machines/gauges';
import type { Operation, What } from '../../trade/setups/operation';
import { exactly } from './exact-words';
import { machineName } from './machines/machine-names';
import { setWords } from './machines/set-words';

/** What is set, in the order of the hand: machine, then what the figure stands on. */
const gaugeWords: Record<Gauge, string> = {
  ...setWords,
  'other-stop-to-teeth': 'Stop block at, other end',
  'rip-fence': 'Rip fence at',
  'length-stop': 'Crosscut, stop at',
  'long-point': 'Mitre, long point at',
  exposed: 'Teeth showing past the fence',
  'near-shoulder': 'Near shoulder at',
  'stick-length': 'Stick under the slides at',
  'from-end': 'Hole at',
  'as-said': 'Set at',
  'fence-to-bit': 'Fence to the middle of the bit',
  'row-from-front': 'Row from the front edge',
  'first-slot': 'First slot at',
  'edge-slot': 'Slot at the edge, up to',
  'bit-fence': 'Fence to the bit at',
  'line-in': 'Line in from the edge',
  'row-middle': 'Middle of the dowels at',
  'seat-back': 'Stop collar, seat back by',
};

/** What is done at the bench, where no machine is set. */
export const benchWords: Partial<Record<What, string>> = {
  'dry-fit': 'Dry-fit',
  'finish-inside': 'Finish the inside',
  'glue-up': 'Glue up',
  'frame-on': 'Frame on',
  marks: 'Mark the story stick',
  'box-up': 'Glue up the boxes',
  slide: 'Slides on their stick',
  runner: 'Runners on their stick',
  hang: 'Hang the boxes',
  'stop-block': 'Stop the drawers',
  'carry-in': 'Carry in',
  level: 'Level',
  scribe: 'Scribe the edge',
  filler: 'Fit the filler',
  cleat: 'Drive the cleat’s screws',
  anchor: 'Anchor',
  'check-again': 'Check again',
  'front-on': 'Fit the fronts',
  pulls: 'Drill for the pull',
  finish: 'Finish',
  cure: 'Let it cure',
  load: 'Load',
  label: 'Label',
  'look-back': 'Look back',
};

/** What stands on the stick where boxes hang in wood. */
const restsOn = ({ name: { of } }: Operation): string =>
  of.role === 'slide' && of.as ? { runner: 'runner', hangstrip: 'strip', kicker: 'kicker' }[of.as] : 'runner';

/** Heading of a setup: `Rip fence at`, `Dry-fit`, or what was said by hand. */
export function setupTitle(op: Operation): string {
  const { setup, which, what } = op;
  if (which?.is === 'own') return setup.figure ? `${which.said}, set at` : which.said;
  if (setup.on.at === 'corner') return `Notch ${exactly(setup.on.high)} up, line in at`;
  if (what === 'runner') return `Stick under the ${restsOn(op)} at`;
  if (setup.sets === 'row-from-front' && setup.on.at === 'edge') return `Row from the ${setup.on.named} edge`;
  if (setup.machine === 'plate') return 'Middle of the slots at';
  if (setup.sets) return gaugeWords[setup.sets];
  // a cleat in the case is what anchors it: one act, one tick
  if (op.cleat === 'case') return benchWords.cleat ?? '';
  return benchWords[what] ?? machineName(setup);
}
