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
