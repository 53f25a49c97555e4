import type { Caution } from '../../trade/cautions/caution';
import type { OwnCaution } from '../../trade/machines/machines';
import type { Part } from '../shared/caution-parts';
import { isOfMachine, machineWords } from '../shared/machines/machine-words';

const atStep: Readonly<Record<Exclude<Caution, OwnCaution>, Part>> = {
  stack: 'table-saw',
  'sheet-cut': 'circular-saw',
  plunge: 'circular-saw',
  'stick-cut': 'small-pieces',
  filler: 'small-pieces',
  cleat: 'fasteners',
  'frame-on': 'fasteners',
  'front-on': 'fasteners',
  marks: 'bench',
  'dry-fit': 'bench',
  'glue-up': 'bench',
  'box-up': 'bench',
  'as-built': 'bench',
  scribe: 'bench',
  'old-finish': 'old-finishes',
  carry: 'lifting',
  shims: 'lifting',
  'carry-in': 'lifting',
  hang: 'tall-units',
  'stop-block': 'tall-units',
  level: 'tall-units',
  anchor: 'tall-units',
  'check-again': 'tall-units',
  'look-back': 'tall-units',
  label: 'tall-units',
  'finish-inside': 'finish',
  cure: 'finish',
  load: 'loads',
};

/** The part that belongs to a caution: where the page opens when its line is tapped. */
export const partOf = (caution: Caution): Part =>
  isOfMachine(caution) ? machineWords[caution].part : atStep[caution];
