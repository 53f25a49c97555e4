import { expect, test } from 'vitest';
import { editJob } from '../../src/job/edits';
import { editPrint, onLabels, onLists } from '../../src/job/prints';
import { fromMillimetres, toMillimetres } from '../../src/length/length';
import { labelPaperOf, labelSheets } from '../../src/plan/label-print';
import { listPaperOf, listSheet } from '../../src/plan/list-print';
import { l } from '../length/write-figures';
import { worked } from './job-of';

const mm = (n: number) => fromMillimetres(BigInt(n));

test('labels of 60 by 30 with 2 side by side and none below stand in the middle of an A4', () => {
  const { job } = worked([
    ...editJob({ tape: '1 mm' }),
    ...editPrint(onLabels, { margin: mm(12), wide: mm(60), high: mm(30), gap: mm(2), down: mm(0) }),
  ]);
  const paper = labelPaperOf(job);
  expect(paper.on).toBe('a4');
  const laid = labelSheets(paper, 40);
  if (!laid.ok) throw new Error('they fit');
  const { pages, spots } = laid.value;
  // across (186 + 2) / 62 = 3, down 273 / 30 = 9: 27 a page, two pages for 40
  expect([spots.length, pages]).toEqual([27, 2]);
  // 3 × 60 + 2 × 2 = 184 leaves 26, 13 at each side; 9 × 30 = 270 leaves 27, 13.5 above and below
  const at = spots.map(({ across, down }) => [
    toMillimetres(across).valueOf(),
    toMillimetres(down).valueOf(),
  ]);
  expect(at.slice(0, 4)).toEqual([
    [13, 13.5],
    [75, 13.5],
    [137, 13.5],
    [13, 43.5],
  ]);
});

test('one that is too large is refused by how much: 190 × 280 in 186 × 273', () => {
  const { job } = worked([
    ...editJob({ tape: '1 mm' }),
    ...editPrint(onLabels, { margin: mm(12), wide: mm(190), high: mm(280) }),
  ]);
  const laid = labelSheets(labelPaperOf(job), 1);
  if (laid.ok) throw new Error('it does not fit');
  expect([toMillimetres(laid.error.across).valueOf(), toMillimetres(laid.error.long).valueOf()]).toEqual([
    4, 7,
  ]);
});

test('a list wants 150 mm between its margins: on a Letter of 8 1/2 with 2 1/2 white 61.1 mm are missing', () => {
  const { job } = worked(editPrint(onLists, { paper: 'letter', margin: l('2 1/2') }));
  const sheet = listSheet(listPaperOf(job));
  if (sheet.ok) throw new Error('too little room');
  // 215.9 - 127 = 88.9; 150 - 88.9 = 61.1, half of it at each side; 63.5 - 30.55 = 32.95 fits
  expect(toMillimetres(sheet.error.by).valueOf()).toBeCloseTo(30.55, 9);
  expect(toMillimetres(sheet.error.most).valueOf()).toBeCloseTo(32.95, 9);
});
