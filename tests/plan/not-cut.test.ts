import { describe, expect, test } from 'vitest';
import { editSheet, tickOf } from '../../src/job/edits';
import type { Entry } from '../../src/job/entry';
import { leftoversOf, stepsOf } from '../../src/plan/breakdown';
import { begunBelow, notCut } from '../../src/plan/not-cut';
import { offcutId } from '../../src/plan/offcut-id';
import { layOp } from '../../src/plan/progress';
import { keepLeftover } from '../../src/plan/take-plan';
import { l } from '../length/write-figures';
import { at, kerf, sampleLog, takenUp, withMore } from './laid-sample';

describe('a cut taken back', () => {
  const planned = takenUp(sampleLog, 'sheeta');
  const { job, found } = at(planned);
  const [sheet] = job.sheets;
  if (!sheet) throw new Error('no sheet');
  const steps = stepsOf(sheet, job, found);
  const cut = withMore(
    planned,
    steps.flatMap((s) => tickOf(layOp(sheet.id, s.path), s.figure.value)),
  );
  const [left] = leftoversOf(sheet, () => true);
  if (!left) throw new Error('nothing left');
  const id = offcutId(sheet.id, left.path);
  const kept = withMore(cut, keepLeftover(id, sheet, left.size));
  const root = steps.find((s) => s.path === 'r');
  if (!root) throw new Error('no first cut');

  test('takes the offcut kept of it out of the rack', () => {
    expect(at(kept).job.offcuts.map((o) => o.id)).toEqual([id]);
    const back = withMore(kept, notCut(root, { sheet, done: steps, job: at(kept).job }));
    expect(at(back).job.offcuts).toEqual([]);
    expect([...at(back).folded.ticks.keys()].filter((op) => op.startsWith('lay/'))).toEqual([]);
  });

  test('is held back while that offcut is itself begun', () => {
    const other = editSheet('other', {
      stock: 'sheeta',
      no: 1,
      left: id,
      long: left.size.long,
      wide: left.size.wide,
      kerf,
      tree: { is: 'cut', way: 'rip', at: l('1'), near: { is: 'left' }, far: { is: 'left' } },
    });
    const laid = withMore(kept, other);
    const begun = withMore(laid, tickOf(layOp('other', 'r'), l('1')));
    const below = (log: readonly Entry[]) =>
      begunBelow(root, { sheet, job: at(log).job, folded: at(log).folded })?.id;
    expect([below(kept), below(laid), below(begun)]).toEqual([undefined, undefined, 'other']);
  });
});
