import type { Operation, What } from '../../trade/setups/operation';
import type { Sets, SetupMachine } from '../../trade/setups/setup';

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

export const machineWords: Record<SetupMachine, string> = {
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

/** What is done at the bench, where no machine is set. */
export const benchWords: Partial<Record<What, string>> = {
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
