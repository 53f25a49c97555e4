import fc from 'fast-check';
import type { TwoD } from '../../../../src/trade/sheets/two-d/two-d';

const side = fc.integer({ min: 2, max: 7 });

/** One to four pieces, and one sheet small enough that every cut of it can be tried. */
export const few: fc.Arbitrary<TwoD> = fc
  .array(fc.record({ w: side, h: side, turn: fc.boolean() }), { minLength: 1, maxLength: 4 })
  .map((all) => ({ sheets: [{ w: 8, h: 7, cost: 1 }], pieces: all.map((p) => ({ ...p, count: 1 })) }));

/** Every choice of some of the pieces. @example choices([1, 2]) // [[], [1], [2], [1, 2]] */
export const choices = <T>(all: readonly T[]): readonly (readonly T[])[] =>
  Array.from({ length: 2 ** all.length }, (_, bits) => all.filter((_x, k) => (bits >> k) & 1));
