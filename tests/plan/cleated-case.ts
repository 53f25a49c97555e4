import { editCase, editStock } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { l } from '../trade/grooves/sample';

/** Sheet of 3/4, 60 high with a top, its bottom 4 off the floor: inside from 4 3/4 to 59 1/4. */
export const cleatedCase = (cleats: number): readonly Change[] => [
  ...editStock('s', { name: 'Ply', kind: 'sheet', planned: l('3/4') }),
  ...editCase('c1', {
    ...{ hold: 'outside', width: l('36'), height: l('60'), depth: l('16'), feet: l('4') },
    sideStock: 's',
    hasTop: true,
    cleats,
  }),
];
