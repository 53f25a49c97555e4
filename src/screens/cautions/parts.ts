import type { Caution } from '../../trade/cautions/caution';

/** Parts of *Before you cut*, as they follow one another: by machine, then by moment. */
export const parts = [
  'all-cutting',
  'table-saw',
  'crosscut-saw',
  'circular-saw',
  'router',
  'dovetails',
  'small-pieces',
  'fasteners',
  'bench',
  'old-finishes',
  'lifting',
  'tall-units',
  'finish',
  'loads',
] as const;

export type Part = (typeof parts)[number];

/** The part that belongs to a caution: where the page opens when its line is tapped. */
export const partOf: Readonly<Record<Caution, Part>> = {
  rip: 'table-saw',
  fence: 'table-saw',
  rabbet: 'table-saw',
  notch: 'table-saw',
  lap: 'table-saw',
  stack: 'table-saw',
  crosscut: 'crosscut-saw',
  mitre: 'crosscut-saw',
  stop: 'crosscut-saw',
  spacers: 'crosscut-saw',
  index: 'crosscut-saw',
  saw: 'circular-saw',
  'sheet-cut': 'circular-saw',
  router: 'router',
  dovetail: 'dovetails',
  stick: 'small-pieces',
  'stick-cut': 'small-pieces',
  jig: 'fasteners',
  'frame-on': 'fasteners',
  'front-on': 'fasteners',
  hand: 'bench',
  marks: 'bench',
  'dry-fit': 'bench',
  'glue-up': 'bench',
  'box-up': 'bench',
  'as-built': 'bench',
  'old-finish': 'old-finishes',
  carry: 'lifting',
  shims: 'lifting',
  hang: 'tall-units',
  level: 'tall-units',
  'finish-inside': 'finish',
  load: 'loads',
};
