import { expect, test } from 'vitest';
import { editBank, editCase } from '../../src/job/edits';
import { writeLength as w } from '../../src/length/write';
import { packingOf } from '../../src/plan/packing';
import { packedOut } from '../../src/screens/bank/boxes-words';
import { caseDecided } from './carried-cabinet-case';
import { worked } from './job-of';

const packed = (bank: Parameters<typeof editBank>[1], more: Parameters<typeof editCase>[1] = {}) => {
  const { plan, job } = worked([
    ...caseDecided,
    ...editCase('case', more),
    ...editBank('b', { name: 'Drawers', of: 'case', ...bank }),
  ]);
  const [own] = job.banks;
  if (!own) throw new Error('a bank is wanted');
  return packingOf(plan.worked, own);
};

// a side stile 1 11/16 less 3/16 beyond the side and the side, 23/32: 25/32; half of the middle stile, 1 3/8, less the
// partition, 23/32: 21/64
test('each column is packed out by the stiles beside its own bay', () => {
  const columns = packed({ bay: 1, across: 2 });
  expect(columns.map(({ column, left, right }) => [column, w(left), w(right)])).toEqual([
    [1, '25/32', '21/64'],
    [2, '21/64', '25/32'],
  ]);
  expect(packed({ bay: 2 }).map(({ left, right }) => [w(left), w(right)])).toEqual([['21/64', '25/32']]);
  expect(packed({ bay: 1, across: 2 }, { hasFrame: false })).toEqual([]);
});

test('columns that differ are told one by one, those alike once', () => {
  expect(packedOut(packed({ bay: 1, across: 2 }))).toBe(
    ' Pack them out behind the frame: column 1: 25/32 at the left, 21/64 at the right; column 2: 21/64 at the left, 25/32 at the right.',
  );
  expect(packedOut(packed({ bay: 1 }))).toBe(
    ' Pack them out behind the frame: 25/32 at the left, 21/64 at the right.',
  );
  // the middle bays of three partitions stand between middle stiles alone
  expect(packedOut(packed({ bay: 2, across: 2 }, { partitions: 3 }))).toBe(
    ' Pack them out behind the frame: 21/64 at the left, 21/64 at the right.',
  );
  expect(packedOut([])).toBe('');
});
