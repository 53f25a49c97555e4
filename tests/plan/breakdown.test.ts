import { describe, expect, test } from 'vitest';
import {
  editCase,
  editOffcut,
  editPart,
  editSheet,
  editStock,
  spoilPiece,
  tickOf,
} from '../../src/job/edits';
import type { Change } from '../../src/job/entry';
import { add, equals, inches, type Length, subtract } from '../../src/length/length';
import { writeLength } from '../../src/length/write';
import { isSettled, stepsOf, useIn } from '../../src/plan/breakdown';
import { needsOf } from '../../src/plan/needs';
import { layOp } from '../../src/plan/progress';
import { isProved, leastSheets, sheetCount } from '../../src/plan/take-plan';
import { problemWords } from '../../src/screens/sheets/problem-words';
import { proofWords, useWords } from '../../src/screens/sheets/words';
import { laidSheetsOf } from '../../src/trade/sheets/laid-sheet';
import { piecesIn, placesOf, withBranch } from '../../src/trade/sheets/tree';
import type { Laid } from '../../src/trade/sheets/two-d/two-d';
import { stillGood } from '../../src/trade/sheets/wrong-cut';
import { l } from '../length/write-figures';
import { faultsOf } from '../trade/sheets/verify';
import { at, kerf, opened, poolOf, sampleLog, searched, takenUp, withMore } from './laid-sample';

describe('the sample job', () => {
  test('every stock lays out without a fault, cut apart by another hand', () => {
    for (const view of at(sampleLog).found.pools) {
      const { laid, problem } = searched(view);
      const sheets = laidSheetsOf(laid.sheets, problem);
      if (view.pool.kind === 'sheet')
        expect(faultsOf(sheets, view.pool.pieces, { kerf, grain: 'long', exact: true })).toEqual([]);
      expect(sheetCount(laid, problem)).toBeGreaterThanOrEqual(leastSheets(laid, problem) ?? 0);
    }
  });

  test('frame and filler strip come out of 4 sticks, and that is proved', () => {
    // 96 long, as wide as the strip, 3 3/32. Strip 64 1/4, two stiles 60 1/8 and middle stile 56 1/2: no two of
    // them end to end, and none side by side: the narrowest two, 1 11/16 + 1/8 + 1 3/8, make 3 3/16. So at least 4.
    // The strip leaves 31 5/8 for the middle rail of 17, each stile 35 3/4 for a rail of 35 3/8: 4 do.
    const { laid, problem } = searched(poolOf(sampleLog, 'maple'));
    expect([sheetCount(laid, problem), isProved(laid, problem)]).toEqual([4, true]);
  });

  test('left and right side share a sheet, and so do the fronts of a column', () => {
    const groups = at(sampleLog).found.pools.flatMap((v) =>
      v.pool.pieces.map((p) => [p.part, p.together] as const),
    );
    const of = (part: string) => groups.find(([id]) => id === part)?.[1];
    expect(of('case~left')).toBeDefined();
    expect(of('case~left')).toBe(of('case~right'));
    expect(of('drawers~c1d1front')).toBe(of('drawers~c1d5front'));
    expect(of('case~bottom')).toBeUndefined();
  });

  test('pieces are rough 1/4 over, and only the stick is cut to its length', () => {
    const { pieces } = at(sampleLog).found;
    const own = (id: string) => pieces.get(id);
    expect([
      writeLength(own('case~left/1')?.long as Length),
      writeLength(own('case~left/1')?.wide as Length),
    ]).toEqual(['64 1/2', '17 3/4']);
    expect(writeLength(own('case~stile/1')?.long as Length)).toBe('60 1/8');
  });
});

test('the plans of the sample are plans: cut apart they give every piece', () => {
  for (const id of ['sheeta', 'maple']) {
    const view = poolOf(opened.entries, id);
    expect(isSettled(view)).toBe(true);
    if (view.pool.kind === 'sheet')
      expect(faultsOf(view.sheets, view.pool.pieces, { kerf, grain: 'long', exact: true })).toEqual([]);
  }
});

describe('what a plan rests on', () => {
  const planned = takenUp(sampleLog, 'sheeta');
  test.each<[string, readonly Change[]]>([
    ['its size', editStock('sheeta', { long: l('60') })],
    ['its trim', editStock('sheeta', { trim: l('1') })],
    ['its grain', editStock('sheeta', { grain: 'wide' })],
    ['a part across the grain', editPart('case~left', { lies: 'across' })],
    ['a part made smaller', editCase('case', { depth: l('9') })],
  ])('%s: once changed the plan no longer holds, and nothing is called proved', (_, changes) => {
    const changed = withMore(planned, changes);
    expect(isSettled(poolOf(planned, 'sheeta'))).toBe(true);
    expect(poolOf(changed, 'sheeta').changed).toBe(true);
    expect(isSettled(poolOf(changed, 'sheeta'))).toBe(false);
    expect(needsOf(at(changed).found).find((n) => n.stock === 'sheeta')?.how).not.toBe('proved');
  });

  test('an offcut of it gone from the rack, or measured down', () => {
    const offcut = editOffcut('off1', { stock: 'backply', length: l('61'), width: l('38') });
    const used = takenUp(withMore(sampleLog, offcut), 'backply');
    expect(poolOf(used, 'backply').changed).toBe(false);
    expect(poolOf(withMore(used, editOffcut('off1', { gone: true })), 'backply').changed).toBe(true);
    expect(poolOf(withMore(used, editOffcut('off1', { width: l('20') })), 'backply').changed).toBe(true);
  });

  test('a sheet cut on one phone stands when the other lays out anew, and what lies twice is named', () => {
    const [sheet] = at(planned).job.sheets;
    if (!sheet) throw new Error('no sheet');
    const there = takenUp(planned, 'sheeta');
    const both = withMore(there, tickOf(layOp(sheet.id, 'r'), l('1')));
    const { standing, sheets } = poolOf(both, 'sheeta');
    expect(sheets.some((s) => s.id === sheet.id)).toBe(true);
    expect(standing.twice.map((p) => p.part)).toEqual(['case~left', 'case~right']);
  });

  test('a piece that grew on a sheet begun is laid elsewhere, and its old place is left over', () => {
    const [sheet] = at(planned).job.sheets;
    if (!sheet) throw new Error('no sheet');
    const begun = withMore(planned, tickOf(layOp(sheet.id, 'r'), l('1')));
    const grown = withMore(begun, editCase('case', { depth: l('18') }));
    const view = poolOf(grown, 'sheeta');
    expect(view.outgrown.length).toBeGreaterThan(0);
    const again = takenUp(grown, 'sheeta');
    expect(isSettled(poolOf(again, 'sheeta'))).toBe(true);
    expect(poolOf(again, 'sheeta').sheets.length).toBe(2);
  });

  test('spoiled and laid again it settles: what came out of the first sheet is not called unwanted', () => {
    const [sheet] = at(planned).job.sheets;
    if (!sheet) throw new Error('no sheet');
    const { job, found } = at(planned);
    const steps = stepsOf(sheet, job, found);
    const cut = withMore(
      planned,
      steps.flatMap((s) => tickOf(layOp(sheet.id, s.path), s.figure.value)),
    );
    const again = takenUp(withMore(cut, spoilPiece('case~left', '1', 1)), 'sheeta');
    expect(isSettled(poolOf(again, 'sheeta'))).toBe(true);
    expect(needsOf(at(again).found).find((n) => n.stock === 'sheeta')?.count).toBe(2);
  });
});

describe('a cut a little out', () => {
  const planned = takenUp(sampleLog, 'sheeta');
  const { job, found } = at(planned);
  const [sheet] = job.sheets;
  if (!sheet) throw new Error('no sheet');
  const steps = stepsOf(sheet, job, found);

  test('leaves the plan settled, and nothing is asked to be laid out again', () => {
    for (const step of steps.filter((s) => s.keep === 'near')) {
      const place = placesOf(sheet, kerf).find((p) => p.path === step.path);
      if (place?.branch.is !== 'cut') throw new Error('no cut');
      const wrong = { ...place, cut: place.branch, at: subtract(place.branch.at, inches(1n, 8n)) };
      const stock = found.stocks.get('sheeta');
      if (!stock) throw new Error('no stock');
      const on = { stock, whole: sheet.size, kerf, wanted: found.pieces, offcut: false };
      const good = stillGood(wrong, on);
      if (!good) throw new Error('1/8 of 1/4 over still leaves a final cut’s worth');
      const log = withMore(planned, [
        ...editSheet(sheet.id, { tree: withBranch(sheet.tree, step.path, good) }),
        ...tickOf(layOp(sheet.id, 'r'), wrong.at),
      ]);
      const view = poolOf(log, 'sheeta');
      expect([isSettled(view), view.outgrown, view.toLay.pieces]).toEqual([true, [], []]);
    }
  });
});

test('a stick with one bad place whose end is not said is that one stick', () => {
  const log = withMore(sampleLog, editStock('maple', { bad: [l('80')] }));
  expect(at(log).found.stocks.get('maple')).toMatchObject({ have: 1, noMore: true });
});

describe('what is said', () => {
  test('a piece that is too large, by how much and what fits', () => {
    const narrow = withMore(sampleLog, editStock('backply', { wide: l('30') }));
    const { found } = at(narrow);
    const [problem] = poolOf(narrow, 'backply').problems;
    expect(problem && problemWords(problem, found, '1/32')).toBe(
      'Back is rough 60 5/16 × 37 13/16: 7 13/16 too wide. The most that fits is 96 × 30.',
    );
  });

  test('grain that forbids the only way, and what would help', () => {
    const across = withMore(sampleLog, [
      ...editPart('case~left', { lies: 'across' }),
      ...editPart('case~right', { share: 'anywhere' }),
    ]);
    const { found } = at(across);
    const [problem] = poolOf(across, 'sheeta').problems;
    expect(problem && problemWords(problem, found, '1/32')).toContain('Let it lie either way');
  });

  test('proved is said of what is proved alone', () => {
    expect(proofWords({ kind: 'sheet', count: 1, least: 1, proved: true })).toBe(
      '1 sheet. Fewest sheets possible.',
    );
    expect(proofWords({ kind: 'sheet', count: 4, least: 3, proved: false })).toBe(
      '4 sheets; at least 3 are needed.',
    );
    expect(proofWords({ kind: 'stick', count: 3, least: undefined, proved: false })).toBe('3 sticks.');
  });

  test('while the width of a stick is not said nothing is proved: a wider one may take two side by side', () => {
    const words = proofWords({ kind: 'stick', count: 2, least: 2, proved: true, asWide: '1 1/2' });
    expect(words).toContain('2 sticks, taken as wide as the widest piece, 1 1/2.');
    expect(words).not.toContain('possible');
  });

  test('what a stick is used up to is said of the whole, or of what is usable of it', () => {
    const size = { long: l('96'), wide: l('2') };
    expect(useWords({ used: l('87 1/8'), usable: l('96') }, size, '1/32')).toBe('uses 87\u00a01/8 of 96');
    expect(useWords({ used: l('87 1/8'), usable: l('95') }, size, '1/32')).toBe(
      'uses 87\u00a01/8 of 95 usable',
    );
  });

  test('a stick of the sample says how much of it its parts and their kerfs use; a sheet does not', () => {
    const log = takenUp(sampleLog, 'maple');
    const { job, found } = at(log);
    const uses = job.sheets.map((sheet) => useIn(sheet, found.stocks.get(sheet.stock)));
    const own = job.sheets.flatMap((sheet, k) => (sheet.stock === 'maple' ? [{ sheet, use: uses[k] }] : []));
    expect(own.length).toBeGreaterThan(0);
    for (const { sheet, use } of own) {
      const pieces = piecesIn(sheet.tree).map((id) => found.pieces.get(id)?.long ?? l('999'));
      const kerfs = inches(BigInt(pieces.length - 1)).mul(kerf);
      expect(use && equals(use.used, pieces.reduce(add).add(kerfs) as Length)).toBe(true);
    }
    expect(job.sheets.every((sheet, k) => sheet.stock === 'maple' || uses[k] === undefined)).toBe(true);
  });

  test('a trim below nothing is told from one that eats the sheet', () => {
    const { found } = at(sampleLog);
    const [stock = ''] = [...found.stocks.keys()];
    const words = problemWords({ code: 'trim-negative', stock, trim: l('1').neg() as Length }, found, '1/32');
    expect(words).toBe(`A trim takes wood off: -1 would add some to ${found.stocks.get(stock)?.name}.`);
  });

  test('a bound made of offcuts alone proves nothing of whole sheets', () => {
    const problem = {
      ...searched(poolOf(sampleLog, 'backply')).problem,
      samePrice: true,
    };
    const two = { ...problem.two, sheets: [...problem.two.sheets, { w: 10, h: 10, cost: 1, count: 1 }] };
    const bound = (cost: number): Pick<Laid, 'bound'> => ({ bound: cost });
    expect(leastSheets(bound(1000), { ...problem, two })).toBe(1);
    expect(leastSheets(bound(1), { ...problem, two })).toBe(0);
    expect(leastSheets(bound(1001), { ...problem, two })).toBe(1);
  });
});
