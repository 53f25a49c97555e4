import { describe, expect, test } from 'vitest';
import { editBoard, editJob, editStock } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { needsOf } from '../../src/plan/needs';
import { takePlan } from '../../src/plan/take-plan';
import { layProblemOf } from '../../src/trade/sheets/lay-problem';
import { solve } from '../../src/trade/sheets/solve';
import { l } from '../length/write-figures';
import { worked } from './job-of';

const shop = { kerf: l('1/8') };
/** Example 6 of sheets: four shelves 49 × 25 out of 96 × 48, and no two of them go on one sheet. */
const shelves: readonly Change[] = [
  ...editJob({ over: l('0') }),
  ...editStock('a', { name: 'Birch', long: l('96'), wide: l('48'), planned: l('3/4'), have: 1 }),
  ...editBoard('shelf', { name: 'Shelf', copies: 4, length: l('49'), across: l('25'), stock: 'a' }),
];

/** The changes that take up the plan the search finds. */
function takenUp(changes: readonly Change[]): readonly Change[] {
  const { job, found } = worked(changes, shop);
  const [view] = found.pools;
  if (!view) throw new Error('no pool');
  const problem = layProblemOf(view.toLay, shop.kerf);
  const search = solve(problem.two, { seed: 1, effort: 10 });
  let step = search.next();
  while (!step.done) step = search.next();
  if (!step.value.ok) throw new Error(step.value.error.code);
  let made = 0;
  const newId = () => {
    made += 1;
    return `s${made}`;
  };
  return [
    ...changes,
    ...takePlan(view, { laid: step.value.value, problem }, { job, stocks: found.stocks, newId }),
  ];
}

const needs = (changes: readonly Change[], of: Parameters<typeof worked>[1] = shop) =>
  needsOf(worked(changes, of).found);

describe('needsOf', () => {
  test('before a layout says how many sheets at least', () => {
    expect(needs(shelves)).toMatchObject([{ name: 'Birch', count: 4, how: 'least', pieces: 4, have: 1 }]);
  });

  test('a layout taken up says how many it takes, and that no fewer do', () => {
    expect(needs(takenUp(shelves))).toMatchObject([{ count: 4, how: 'proved', pieces: 4 }]);
  });

  test('a layout no longer proves anything, nor holds, once its stock is trimmed', () => {
    const trimmed = [...takenUp(shelves), ...editStock('a', { trim: l('1/2') })];
    expect(needs(trimmed)).toMatchObject([{ count: 4, how: 'least' }]);
  });

  test('says nothing while the kerf is not known, or nothing is to be cut', () => {
    expect(needs(shelves, {})).toEqual([]);
    expect(needs([...shelves, ...editBoard('shelf', { gone: true })])).toEqual([]);
  });
});
