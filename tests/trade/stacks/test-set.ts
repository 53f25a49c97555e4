import type { Piece, StackStock } from '../../../src/trade/stacks/pieces';
import { l } from '../grooves/sample';

const two = (size: string): Piece => ({ size: l(size), count: 2, kind: 'shim' });

/** The set of the worked examples: invented for the tests, no maker's box. */
export const testSet: StackStock = {
  outer: l('1/8'),
  pieces: [
    { size: l('1/8'), count: 4, kind: 'chipper' },
    { size: l('1/16'), count: 1, kind: 'chipper' },
    two('.004'),
    two('.005'),
    two('.010'),
    two('.012'),
    two('.020'),
  ],
  arbor: l('13/16'),
};
