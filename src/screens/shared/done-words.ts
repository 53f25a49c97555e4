import { type Doing, isStep, type Operation, type What } from '../../trade/setups/operation';

/** What was done at the bench and on site, so that *not* before it takes it back. */
const doneWords: Record<Doing, string> = {
  'dry-fit': 'Dry-fitted',
  'finish-inside': 'Finished inside',
  'glue-up': 'Glued up',
  'frame-on': 'Fitted with its frame',
  marks: 'Marked on the stick',
  'box-up': 'Glued up',
  slide: 'Set on its stick',
  runner: 'Screwed on its stick',
  hang: 'Hung',
  'stop-block': 'Stopped',
  'carry-in': 'Carried in',
  level: 'Levelled',
  scribe: 'Scribed',
  filler: 'Fitted with its filler',
  cleat: 'Fitted with its cleat',
  anchor: 'Anchored',
  'check-again': 'Checked again',
  'front-on': 'Fitted',
  pulls: 'Drilled for its pull',
  finish: 'Finished',
  cure: 'Cured',
  load: 'Loaded',
  label: 'Labelled',
  'look-back': 'Looked back at',
};

const isNamed = (what: What): what is Doing => what in doneWords;

/** What a tick says of a piece. @example doneWord(level) // 'Levelled' */
export function doneWord(op: Operation): string {
  if (isNamed(op.what)) return doneWords[op.what];
  if (op.what === 'bore') return 'Bored';
  if (op.what === 'slot') return 'Slotted';
  return isStep(op) ? 'Done' : 'Cut';
}
