import { editBoard, editJob, editRun } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { l } from '../length/write-figures';

/** A left and a right side with so many grooves of a stack; on a sled with a stop. */
export const groovedSides = (grooves: number): readonly Change[] => [
  ...editJob({ name: 'Shell case' }),
  ...editBoard('side', {
    name: 'Side',
    made: 'pair',
    length: l('30'),
    across: l('12'),
    machine: 'stop',
    cutter: l('3/4'),
  }),
  ...editRun('side', 'r', {
    spacing: 'pitch',
    count: grooves,
    first: l('3'),
    pitch: l('8'),
    width: l('3/4'),
    depth: l('1/4'),
  }),
];
