import { editBank, editCase, editStock, editThing } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { ratio } from '../../src/length/length';
import { l } from '../length/write-figures';

/** A low case of two bays with two drawers in each, and a lot in the lowest of the second column. */
export const twoColumns: readonly Change[] = [
  ...editStock('s', { name: 'Ply', kind: 'sheet', planned: l('3/4') }),
  ...editCase('c1', {
    name: 'Low case',
    hold: 'outside',
    width: l('36'),
    height: l('24'),
    depth: l('18'),
    partitions: 1,
    sideStock: 's',
    bottomStock: 's',
    partitionStock: 's',
    topStock: 's',
    hasTop: true,
  }),
  ...editBank('b', {
    name: 'Shells',
    of: 'c1',
    bay: 1,
    across: 2,
    count: 2,
    frontStock: 's',
    sideStock: 's',
    boxFrontStock: 's',
    boxBackStock: 's',
    boxBottomStock: 's',
    slideLong: l('16'),
    slideHigh: l('1 25/32'),
    clearance: l('1/2'),
    rating: ratio(75n),
  }),
  ...editThing('near', { name: 'Cowries', count: 3, heavy: ratio(2n), bank: 'b', front: 2 }),
  ...editThing('far', { name: 'Conches', count: 2, heavy: ratio(5n), bank: 'b', front: 2, column: 2 }),
];
