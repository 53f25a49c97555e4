import { describe, expect, test } from 'vitest';
import { editCase, editOffcut, editStock, spoilPiece, tickOf } from '../../src/job/edits';
import type { Change, Entry } from '../../src/job/entry';
import { readJobFile, writeJobFile } from '../../src/job/file';
import { fold } from '../../src/job/log';
import { inches } from '../../src/length/length';
import { isSettled, stepsOf } from '../../src/plan/breakdown';
import { needsOf } from '../../src/plan/needs';
import { layOp } from '../../src/plan/progress';
import { isCurrent } from '../../src/plan/take-plan';
import { cannotWords } from '../../src/screens/sheets/problem-words';
import { layProblemOf } from '../../src/trade/sheets/lay-problem';
import { solve } from '../../src/trade/sheets/solve';
import { l } from '../length/write-figures';
import { at, jobId, kerf, poolOf, sampleLog, searched, takenUp, withMore } from './laid-sample';

describe('a plan taken up', () => {
  const planned = takenUp(sampleLog, 'sheeta');

  test('survives a job file to the letter, and settles its pool', () => {
    const text = writeJobFile({ job: jobId, entries: planned });
    const again = readJobFile(text);
    expect(again.ok && writeJobFile(again.value)).toBe(text);
    expect(again.ok && isSettled(poolOf(again.value.entries, 'sheeta'))).toBe(true);
  });

  test('stays when nothing of it is cut and is replaced by a new one', () => {
    const twice = takenUp(planned, 'sheeta');
    const standing = (entries: readonly Entry[]) => at(entries).job.sheets.filter((s) => !s.gone).length;
    expect([standing(planned), standing(twice)]).toEqual([1, 1]);
  });

  test('names what a changed case no longer agrees with', () => {
    const wider = withMore(planned, editCase('case', { depth: l('18') }));
    const { standing } = poolOf(wider, 'sheeta');
    expect(standing.misfits.map((m) => [m.piece.part, m.short])).toEqual([
      ['case~left', true],
      ['case~right', true],
    ]);
  });

  test('a sheet begun stays; what is spoiled out of it is laid on the rest alone', () => {
    const [sheet] = at(planned).job.sheets;
    if (!sheet) throw new Error('no sheet');
    const { folded, job, found } = at(planned);
    const steps = stepsOf(sheet, job, found);
    expect(folded.ticks.size).toBe(fold(sampleLog).ticks.size);
    const cut = withMore(
      planned,
      steps.flatMap((s) => tickOf(layOp(sheet.id, s.path), s.figure.value)),
    );
    const spoiled = withMore(cut, spoilPiece('case~left', '1', 1));
    const view = poolOf(spoiled, 'sheeta');
    expect(view.standing.missing.map((p) => p.id)).toEqual(['case~left/1~2']);
    expect(view.toLay.pieces.map((p) => p.id)).toEqual(['case~left/1~2']);
    const again = at(takenUp(spoiled, 'sheeta')).job.sheets;
    expect(again.map((s) => s.no)).toEqual([1, 2]);
    expect(again[0]?.id).toBe(sheet.id);
  });

  test('an offcut in the register is used before a sheet, and is not offered twice', () => {
    const withOffcut = withMore(
      sampleLog,
      editOffcut('off1', { stock: 'backply', length: l('61'), width: l('38') }),
    );
    const used = takenUp(withOffcut, 'backply');
    expect(at(used).job.sheets.map((s) => s.left)).toEqual(['off1']);
    expect(poolOf(used, 'backply').pool.lefts).toEqual([]);
    expect(needsOf(at(used).found).find((n) => n.stock === 'backply')).toBeUndefined();
  });

  test('the buying list counts its sheets, and says what is proved', () => {
    const need = needsOf(at(planned).found).find((n) => n.stock === 'sheeta');
    expect([need?.count, need?.how, need?.pieces]).toEqual([1, 'proved', 2]);
    expect(needsOf(at(sampleLog).found).find((n) => n.stock === 'trayply')?.how).toBe('least');
  });

  test('sheets at hand are not bought, and when no more are to be had and they do not do, it is said', () => {
    const few = withMore(sampleLog, editStock('trayply', { have: 1, noMore: true }));
    const view = poolOf(few, 'trayply');
    const problem = layProblemOf(view.toLay, kerf);
    const search = solve(problem.two, { seed: 1, effort: 20 });
    let end = search.next();
    while (!end.done) end = search.next();
    const result = end.value as { ok: false; error: Parameters<typeof cannotWords>[0] };
    expect(result.ok).toBe(false);
    expect(cannotWords(result.error, view, problem.alike)).toMatch(
      /^\d+ pieces do not fit on what is at hand/,
    );
  });
});

describe('a search still under way', () => {
  const view = poolOf(sampleLog, 'sheeta');
  const { problem } = searched(view);
  test('answers while nothing has changed', () => {
    expect(isCurrent(view, problem, kerf)).toBe(true);
  });
  test.each<[string, readonly Change[]]>([
    ['its sheets are another size', editStock('sheeta', { long: l('80') })],
    ['they are trimmed', editStock('sheeta', { trim: l('1') })],
    ['their grain runs the other way', editStock('sheeta', { grain: 'wide' })],
    ['no more are to be had', editStock('sheeta', { have: 1, noMore: true })],
    [
      'an offcut has come to the rack',
      editOffcut('o1', { stock: 'sheeta', length: l('70'), width: l('20') }),
    ],
    ['a part is larger', editCase('case', { depth: l('18') })],
    ['a part is spoiled', spoilPiece('case~left', '1', 1)],
  ])('does not once %s', (_, changes) => {
    expect(isCurrent(poolOf(withMore(sampleLog, changes), 'sheeta'), problem, kerf)).toBe(false);
  });
  test('does not once the kerf is another, or unknown', () => {
    expect(isCurrent(view, problem, inches(3n, 32n))).toBe(false);
    expect(isCurrent(view, problem, undefined)).toBe(false);
  });
});
