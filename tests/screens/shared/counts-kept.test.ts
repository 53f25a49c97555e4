import { expect, test } from 'vitest';
import { editBank, editCase, editPutUp, editScrews } from '../../../src/job/edits';
import type { Change } from '../../../src/job/entry';
import type { Job } from '../../../src/job/job';
import { askOf } from '../../../src/screens/bank/asks';
import { caseCount } from '../../../src/screens/case/asks';
import { anchorAsks } from '../../../src/screens/install/anchor-asks';
import { screwAsks } from '../../../src/screens/install/screw-asks';
import type { Ask } from '../../../src/screens/shared/ask';
import { l } from '../../length/write-figures';
import { worked } from '../../plan/job-of';

const made: readonly Change[] = [
  ...editCase('c', { name: 'Cabinet', width: l('30'), height: l('40'), depth: l('12') }),
  ...editBank('b', { name: 'Drawers' }),
  ...editScrews('s', { of: 'c', kind: 'cleat' }),
  ...editPutUp('c', { wall: 'framing' }),
];
const { plan, job } = worked(made);
const [bank, c, screws] = [job.banks[0], job.cases[0], job.screws[0]];
if (!bank || !c || !screws) throw new Error('a bank, a case and screws are wanted');

const inBank = (field: 'bay' | 'across' | 'count' | 'tails' | 'frontScrews' | 'pulls') => ({
  ask: askOf(field, { bank, job, usual: {} }),
  now: (kept: Job) => kept.banks[0]?.[field],
});
const inCase = (field: 'partitions' | 'cleats' | 'mitres' | 'crosses') => ({
  ask: caseCount(c, field, field),
  now: (kept: Job) => kept.cases[0]?.[field],
});
const asked: Readonly<Record<string, { readonly ask: Ask; readonly now: (kept: Job) => unknown }>> = {
  bay: inBank('bay'),
  columns: inBank('across'),
  fronts: inBank('count'),
  tails: inBank('tails'),
  'screws of a front': inBank('frontScrews'),
  pulls: inBank('pulls'),
  partitions: inCase('partitions'),
  cleats: inCase('cleats'),
  mitres: inCase('mitres'),
  crosses: inCase('crosses'),
  'rows of screws': {
    ask: screwAsks(screws, {
      through: undefined,
      into: undefined,
      bite: 'stud',
      run: undefined,
      leastBite: l('1'),
    }).rows,
    now: (kept) => kept.screws[0]?.rows,
  },
  'screws in all': {
    ask: screwAsks(screws, {
      through: undefined,
      into: undefined,
      bite: 'stud',
      run: undefined,
      leastBite: l('1'),
    }).many,
    now: (kept) => kept.screws[0]?.many,
  },
  fixings: { ask: anchorAsks(plan, 'c').fixings, now: (kept) => kept.putUp.c?.fixings },
};

// three digits are the most the keys take
test.each(Object.entries(asked))(
  '%s: what is keyed is kept as keyed, or refused in words',
  (_, { ask, now }) => {
    if (ask.as !== 'count') throw new Error('a count is wanted');
    const lost = Array.from({ length: 1000 }, (_, n) => n).filter(
      (n) => ask.refuse?.(n) === undefined && now(worked([...made, ...ask.save(n)]).job) !== n,
    );
    expect(lost).toEqual([]);
    expect(ask.refuse?.(1)).toBeUndefined();
  },
);

test('a bank of 30 fronts is refused by how much, and what fits is said', () => {
  const { ask } = inBank('count');
  // 30 - 24 = 6
  expect(ask.as === 'count' && ask.refuse?.(30)).toBe('30 is 6 more than there can be: 1 to 24 fronts fits.');
  expect(ask.as === 'count' && ask.refuse?.(0)).toBe('0 cannot be: 1 to 24 fronts fits.');
  const pulls = inBank('pulls').ask;
  expect(pulls.as === 'count' && pulls.refuse?.(3)).toBe('3 is 1 more than there can be: 0 to 2 pulls fits.');
});
