import { describe, expect, test } from 'vitest';
import { editNote } from '../../../src/job/notes';
import { checklistOf } from '../../../src/plan/checklist';
import { sheetCodes } from '../../../src/plan/sheet-codes';
import { sheetName } from '../../../src/screens/paper/list-words';
import { partPages } from '../../../src/screens/paper/part-list';
import { sheetPages, sheetsOnPaper } from '../../../src/screens/paper/sheet-list';
import { at, opened, withMore } from '../../plan/laid-sample';
import { a4, expectNeat, letter, textOf, widthOf } from './on-pages';

const { plan, folded, found } = at(opened.entries);
const list = checklistOf(plan, folded);
const day = '30 Nov 2026';

describe.each([
  ['A4', a4],
  ['Letter', letter],
])('of the sample on %s', (_, leaf) => {
  test('the cut list has every part and a box for every cut of it, inside the margins, no text on another', () => {
    const pages = [...partPages({ list, day, leaf, widthOf })];
    expectNeat(pages, leaf);
    const boxes = pages.flatMap(({ ink }) => ink.filter((one) => one.draw === 'box'));
    const ids = new Set(plan.parts.map(({ id }) => id));
    expect(boxes.length).toBe(plan.operations.filter((op) => ids.has(op.part)).length);
  });

  test('what is noted of a part stands under it', () => {
    const noted = at(
      withMore(opened.entries, editNote({ of: 'part', id: 'case~left' }, 'Knot at the front')),
    );
    const pages = [...partPages({ list: checklistOf(noted.plan, noted.folded), day, leaf, widthOf })];
    expectNeat(pages, leaf);
    expect(textOf(pages[0] ?? { wide: 0, high: 0, ink: [] })).toMatch(
      /^Left side\n[^\n]*\n[^\n]*\nNote: Knot at the front\n/m,
    );
  });

  test('each sheet has its pieces by name and its cuts by number', () => {
    const pages = [...sheetPages({ plan, folded, found, day, leaf, widthOf })];
    expectNeat(pages, leaf);
    const all = pages.map(textOf).join('\n');
    const sheets = found.pools.flatMap((pool) => pool.sheets);
    expect(sheetsOnPaper({ plan, folded, found }).open).toBe(sheets.length);
    expect(pages.length).toBeGreaterThanOrEqual(sheets.length);
    expect(all).toContain('Left side, ');
    expect(all).toMatch(/\n1[A-Z]?\n(Rip|Trim|Crosscut), /);
    // what the boxes are for stands over them
    expect(all.replaceAll('\n', ' ')).toContain('takes it back by number and letter.');
    // beside the name stand its two signs, and every box has a code no other of the sheet has
    for (const { sheet, check, steps, codes } of sheetCodes(plan, found)) {
      expect(all).toContain(`${sheetName(sheet, found.stocks.get(sheet.stock), plan.job.tape)}\n${check}\n`);
      expect(new Set(codes.values()).size).toBe(steps.length);
      for (const code of codes.values()) expect(all).toContain(`\n${code}\n`);
    }
  });
});
