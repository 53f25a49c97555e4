import { expect, test } from 'vitest';
import { editFitted, tickOf } from '../../../src/job/edits';
import { zero } from '../../../src/length/length';
import { takenUp } from '../../../src/screens/bank/column-of';
import { l } from '../../length/write-figures';
import { worked } from '../../plan/job-of';
import { benchOf } from '../bench-of';
import { sample } from '../sample';

const read = editFitted(
  { bank: 'drawers', column: 1, front: 1 },
  { left: l('4 15/32'), right: l('4 15/32') },
);

/** The first front measured and used, after these steps were ticked. */
function used(...done: readonly string[]) {
  const changes = [...sample, ...read, ...done.flatMap((op) => tickOf(op, zero))];
  const bank = worked(changes).job.banks.find(({ id }) => id === 'drawers');
  const found = bank && takenUp(benchOf(changes).bench, bank, { column: 1, no: 1 });
  if (!found) throw new Error('a measure is wanted');
  return { says: found.held?.says, ticks: found.changes.filter(({ kind }) => kind === 'tick').length };
}

test('a measure is used at once; the front is ticked as on only where its machine screen would tick it', () => {
  const waiting = used();
  expect(waiting.ticks).toBe(0);
  expect(waiting.says).toMatch(/^Blocked: .* comes first/);
  // its own rip and length, and the case anchored and checked again: nothing is left to wait for
  const own = ['cut/drawers~c1d1front/rip/1', 'cut/drawers~c1d1front/len/1'];
  const free = used('cut/case~bench/checkagain/1', ...own);
  expect(free).toEqual({ says: undefined, ticks: 1 });
});
