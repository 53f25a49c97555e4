import { describe, expect, test } from 'vitest';
import { editSheet, editStock } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { breakdownCount, isBegun, layOp, standingSheets } from '../../src/plan/progress';
import type { Branch } from '../../src/trade/sheets/tree';
import { l } from '../length/write-figures';
import { worked } from './job-of';

/** A rip, and a crosscut of what lies near: two cuts. */
const tree: Branch = {
  ...({ is: 'cut', way: 'rip', at: l('12'), far: { is: 'left' } } as const),
  near: {
    ...({ is: 'cut', way: 'cross', at: l('30'), far: { is: 'waste' } } as const),
    near: { is: 'piece', piece: 'side/1', turned: false },
  },
};
const sheet = (id: string, stock: string) =>
  editSheet(id, { stock, no: 1, long: l('96'), wide: l('48'), kerf: l('1/8'), tree });
const cut = (id: string, path: string): Change => ({ kind: 'tick', op: layOp(id, path), figure: '12' });
const a = editStock('a', { name: 'A' });
const laid = [...a, ...sheet('s1', 'a'), ...sheet('s2', 'a')];
const at = (changes: readonly Change[]) => {
  const { job, folded } = worked(changes);
  const begun = job.sheets.filter((one) => isBegun(one, folded)).map(({ id }) => id);
  return {
    begun,
    stand: standingSheets(job, folded).map(({ id }) => id),
    count: breakdownCount(job, folded),
  };
};

describe('breakdownCount', () => {
  test('counts the cuts of every sheet, and those that are made', () => {
    expect(at(laid).count).toEqual({ cut: 0, of: 4 });
    expect(at([...laid, cut('s1', 'r'), cut('s1', 'rn')]).count).toEqual({ cut: 2, of: 4 });
  });

  test('leaves out sheets whose stock is taken away', () => {
    expect(at([...laid, ...sheet('s3', 'b')]).count.of).toBe(4);
  });
});

describe('standingSheets', () => {
  test('a sheet laid out anew is away; once one of its cuts is ticked it stands', () => {
    const anew = [...laid, ...editSheet('s1', { gone: true })];
    expect(at(anew)).toMatchObject({ begun: [], stand: ['s2'], count: { cut: 0, of: 2 } });
    expect(at([...anew, cut('s1', 'rn')])).toMatchObject({
      begun: ['s1'],
      stand: ['s1', 's2'],
      count: { cut: 1, of: 4 },
    });
  });
});
