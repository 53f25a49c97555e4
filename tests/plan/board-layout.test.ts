import { describe, expect, test } from 'vitest';
import { editBoard, editRun, tickOf } from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { cutGrooves, isMarked, lastGood, rowsOf, tried, viewOf } from '../../src/plan/board-layout';
import { markOp } from '../../src/trade/grooves/copies';
import { l, w } from '../length/write-figures';
import { logOf, worked } from './job-of';

/** Two dadoes 3/4 wide, 10 apart from 4 on, in a board of 30; two copies alike. */
const rack: readonly Change[] = [
  ...editBoard('rack', { name: 'Rack', copies: 2, length: l('30'), machine: 'stop' }),
  ...editRun('rack', 'pegs', {
    ...({ spacing: 'pitch', count: 2 } as const),
    width: l('3/4'),
    depth: l('1/4'),
    first: l('4'),
    pitch: l('10'),
  }),
];
const shop = { single: l('1/8'), stopReach: l('60') };

function at(changes: readonly Change[]) {
  const { job, folded } = worked(changes, shop);
  const [board] = job.boards;
  if (!board) throw new Error('no board');
  const view = viewOf(board, shop, job.tape);
  return { folded, view, rows: rowsOf(view, folded.ticks) };
}

describe('lastGood', () => {
  test('is the board before the edit that no longer fits, also several edits back', () => {
    const pitch = (text: string) => editRun('rack', 'pegs', { pitch: l(text) });
    const wrong = [...rack, ...pitch('50'), ...pitch('60')];
    expect(at(wrong).view.layout.problems.length).toBeGreaterThan(0);
    expect(at(wrong).view.settings.settings).toEqual([]);
    const good = lastGood(logOf(wrong), 'j', 'rack');
    expect(good?.runs.map((run) => run.pitch && w(run.pitch))).toEqual(['10']);
  });

  test('is none where the board never could be cut', () => {
    expect(lastGood(logOf(rack.slice(0, 4)), 'j', 'rack')).toBeUndefined();
  });
});

describe('tried', () => {
  test('is the board with a change that is not kept', () => {
    const { folded } = at(rack);
    expect(tried(folded, 'j', 'rack', editBoard('rack', { length: l('36') }))?.length).toEqual(l('36'));
    expect(tried(folded, 'j', 'rack', [])?.length).toEqual(l('30'));
  });
});

describe('rowsOf', () => {
  test('a groove is cut once every copy is ticked, and not by one', () => {
    const [row] = at(rack).rows;
    if (!row) throw new Error('no row');
    const groove = row.setting.groove.id;
    const mine = at(rack).rows.filter((r) => r.setting.groove.id === groove);
    const [first, ...others] = mine.flatMap((r) => r.copies.map((copy) => copy.op));
    const tick = (op: string) => tickOf(op, l('4'));
    const one = at([...rack, ...tick(first ?? '')]);
    expect(cutGrooves(one.rows).size).toBe(0);
    const all = at([...rack, ...[first ?? '', ...others].flatMap(tick)]);
    expect([...cutGrooves(all.rows)]).toEqual([groove]);
  });
});

describe('isMarked', () => {
  test('a mark is made when it is ticked', () => {
    const op = markOp('rack', 'pegs~1');
    expect(isMarked(at(rack).folded.ticks, 'rack', 'pegs~1')).toBe(false);
    expect(isMarked(at([...rack, ...tickOf(op, l('4'))]).folded.ticks, 'rack', 'pegs~1')).toBe(true);
  });
});
