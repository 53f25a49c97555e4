import { editCase, editInside, editJob, editReading, editStock } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { l } from '../length/write-figures';

/**
 * A bookcase for the reading corner of the nature centre, 30 × 48 × 11 1/4, its bottom 3 over the floor: ply that
 * reads .708 .714 .711 .709, two shelves in dadoes at 14 and 28 3/4 over the bottom, two loose, a face frame, a thin
 * back in a rabbet. What is not said stands at its usual figure. The marks are thirty-seconds.
 */
export const bookcase: readonly Change[] = [
  ...editJob({ name: 'Bookcase', tape: '1/32' }),
  ...editStock('ply', { name: 'Sheet A', used: l('0.714') }),
  ...['0.708', '0.714', '0.711', '0.709'].flatMap((read, k) =>
    editReading('ply', `r${k + 1}`, { size: l(read) }),
  ),
  ...editStock('thin', { name: 'Sheet B', used: l('0.22') }),
  ...editReading('thin', 'r1', { size: l('0.22') }),
  ...editStock('strips', { name: 'Sheet C', kind: 'stick', used: l('3/4') }),
  ...editReading('strips', 'r1', { size: l('3/4') }),
  ...editCase('case', {
    width: l('30'),
    height: l('48'),
    depth: l('11 1/4'),
    feet: l('3'),
    sideStock: 'ply',
    hasBack: true,
    backStock: 'thin',
    hasFrame: true,
    frameStock: 'strips',
  }),
  ...editInside('case', 'low', { kind: 'fixed', bay: 1, at: l('14') }),
  ...editInside('case', 'high', { kind: 'fixed', bay: 1, at: l('28 3/4') }),
  ...editInside('case', 'pins', { kind: 'loose', bay: 1, count: 2 }),
];
