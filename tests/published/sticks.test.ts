import { describe, expect, test } from 'vitest';
import { lowerBound } from '../../src/trade/sheets/one-d/bounds';
import { run } from '../trade/sheets/one-d/verify';
import { instances } from './sticks-data';

// Source of the pieces: E. Falkenauer 1996 (OR-Library, MIT); A. Scholl, R. Klein, C. Jürgens 1997; P. Schwerin,
// G. Wäscher 1997; G. Wäscher, T. Gau 1996; J. E. Schoenfield 2002 (all ESICUP data sets, CC0 1.0). Source of the fewest
// sticks: solution files of R. F. F. da Silva, R. C. S. Schouery, INFORMS Journal on Computing 2025 (column Z, status
// "Optimal"), the same as the bounds of BPPLIB (M. Delorme, M. Iori, S. Martello, Optimization Letters 12, 2018). Those
// called synth1d are ours: sticks cut up at random, so that the fewest are known.
describe('published instances', () => {
  test.each(instances)('$name takes $optimum sticks', ({ problem, optimum }) => {
    const { sticks, bound } = run(problem, { seed: 1, effort: 1500 });
    expect(sticks.length).toBe(optimum);
    expect(bound).toBeLessThanOrEqual(optimum);
    expect(lowerBound(problem)).toBeLessThanOrEqual(bound);
  });
});
