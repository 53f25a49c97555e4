import { describe, expect, test } from 'vitest';
import { editCase, editJob, editStock, tickOf } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { writeMillimetres } from '../../src/length/write';
import { checklistOf, misfits } from '../../src/plan/checklist';
import { begunBy, marksChosen } from '../../src/plan/usual-kept';
import { l } from '../length/write-figures';
import { worked } from './job-of';

/**
 * 900 outside in 18 mm, how deep the dadoes are not said: the bottom is 864 + 2 × 6 = 876 by the usual figures in
 * millimetres, and 864 + 2 × 6.35 = 876.7, marked 877, by those in inches.
 */
const box: readonly Change[] = [
  ...editStock('a', { name: 'Birch', kind: 'sheet', used: l('18 mm') }),
  ...editCase('c', { width: l('900 mm'), height: l('1200 mm'), depth: l('400 mm'), sideStock: 'a' }),
];
const inMillimetres = editJob({ tape: '1 mm' });
const bottomCut = (figure: string) => tickOf('cut/c~bottom/len/1', l(figure));
const bottom = ({ plan }: ReturnType<typeof worked>) => {
  const size = plan.parts.find((p) => p.id === 'c~bottom')?.length;
  return size && [writeMillimetres(size.sum.value), writeMillimetres(size.mark.value)];
};
const off = ({ plan, folded }: ReturnType<typeof worked>) => misfits(checklistOf(plan, folded)).length;

describe('marksChosen', () => {
  test('with nothing cut the usual figures follow the marks', () => {
    const { job } = worked(box);
    expect(bottom(worked([...box, ...marksChosen(job, '1 mm', false)]))).toEqual(['876 mm', '876 mm']);
  });

  test('once something is cut they stay, there and back, and what is cut still fits', () => {
    const begun = [...box, ...bottomCut('876.7 mm')];
    const metric = [...begun, ...marksChosen(worked(begun).job, '1 mm', true)];
    expect(bottom(worked(metric))).toEqual(['876.7 mm', '877 mm']);
    const back = worked([...metric, ...marksChosen(worked(metric).job, '1/32', true)]);
    expect(back.job.usual).toBeUndefined();
    expect(bottom(back)?.[0]).toBe('876.7 mm');
  });

  test('a job begun in millimetres keeps 6 mm when its marks go to inches', () => {
    const begun = [...box, ...inMillimetres, ...bottomCut('876 mm')];
    const inches = worked([...begun, ...marksChosen(worked(begun).job, '1/32', true)]);
    expect([inches.job.usual, bottom(inches)?.[0]]).toEqual(['mm', '876 mm']);
  });
});

describe('begunBy', () => {
  const begun = (figure: string) => worked([...box, ...inMillimetres, ...bottomCut(figure)]);

  test('a job in millimetres that was cut by the usual figures in inches is told, and goes back to them', () => {
    const { job, folded, plan } = begun('877 mm');
    expect(off({ ...begun('877 mm'), plan })).toBe(1);
    expect(begunBy(job, folded, {})).toBe('in');
    const back = worked([...box, ...inMillimetres, ...bottomCut('877 mm'), ...editJob({ usual: 'in' })]);
    expect([bottom(back), off(back)]).toEqual([['876.7 mm', '877 mm'], 0]);
    expect(begunBy(back.job, back.folded, {})).toBeUndefined();
  });

  test('one that fits, and one that fits neither, are left alone', () => {
    for (const figure of ['876 mm', '870 mm']) {
      const { job, folded } = begun(figure);
      expect(begunBy(job, folded, {})).toBeUndefined();
    }
  });
});
