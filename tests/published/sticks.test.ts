import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { stickLowerBound } from '../../src/trade/sheets/one-d/bounds';
import { relaxation } from '../../src/trade/sheets/one-d/relax';
import { instancesIn } from '../trade/sheets/one-d/instances';
import { run } from '../trade/sheets/one-d/verify';

// Source of the pieces: E. Falkenauer 1996 (OR-Library, MIT); A. Scholl, R. Klein, C. Jürgens 1997; P. Schwerin,
// G. Wäscher 1997; G. Wäscher, T. Gau 1996; J. E. Schoenfield 2002 (all ESICUP data sets, CC0 1.0).
//
// Source of the fewest sticks: R. F. F. da Silva, R. C. S. Schouery, INFORMS Journal on Computing 2025, doi
// 10.1287/ijoc.2023.0399, its solution files at github.com/INFORMSJoC/2023.0399, results/CSP-10min, lines "Z:" and
// "Status: Optimal". Read there for 27 of the 28; of u120_01 no file is kept where they were read, and its 49 is
// noted from an earlier reading. BPPLIB (M. Delorme, M. Iori, S. Martello, Optimization Letters 12, 2018) is noted to
// have the same bounds.
const instances = instancesIn(path.join(import.meta.dirname, 'data'));

describe('published instances', () => {
  test('there are 28', () => expect(instances).toHaveLength(28));

  test.each(instances)('$name takes $optimum sticks', ({ problem, optimum }) => {
    const { sticks, bound } = run(problem, { seed: 1, effort: 1500 });
    expect(sticks.length).toBe(optimum);
    expect(bound).toBeLessThanOrEqual(optimum);
    expect(stickLowerBound(problem)).toBeLessThanOrEqual(bound);
  });

  // the solution files name the programme's value too ("Root_Obj:"), as 55.007 of HARD0 and 55.473 of HARD9
  test.each([
    ['HARD0', 55.007],
    ['HARD9', 55.473],
  ])('%s has the printed value of the programme, and its 56 sticks are proved', (name, printed) => {
    const problem = instances.find((i) => i.name === `Scholl3/${name}`)?.problem ?? {
      capacity: 0,
      items: [],
    };
    expect(relaxation(problem)).toBeCloseTo(printed, 3);
    const { sticks, proved } = run(problem, { seed: 1, effort: 1000 });
    expect([sticks.length, proved]).toEqual([56, true]);
  });
});
