import { describe, expect, test } from 'vitest';
import { editBoard, editJob } from '../../../src/job/edits';
import { checklistOf } from '../../../src/plan/checklist';
import { setupCodes } from '../../../src/plan/setup-codes';
import * as labels from '../../../src/screens/paper/label-print-words';
import * as lists from '../../../src/screens/paper/list-words';
import * as prints from '../../../src/screens/paper/print-words';
import { writing } from '../../../src/screens/paper/printing-words';
import * as sheet from '../../../src/screens/paper/setup-sheet-words';
import * as tickIn from '../../../src/screens/paper/tick-in-words';
import { l } from '../../length/write-figures';
import { worked } from '../../plan/job-of';

const { plan, folded } = worked([
  ...editJob({ name: 'Cabinet' }),
  ...editBoard('shelf', { name: 'Shelf', copies: 2, length: l('30'), across: l('12') }),
]);
const list = checklistOf(plan, folded);
const codes = setupCodes(list);
const [code] = codes;
const [rip] = code?.card.operations ?? [];
if (!code || !rip) throw new Error('a rip is wanted');

describe('a setup sheet', () => {
  test.each([
    [codes.slice(0, 1), 'Setup 1'],
    [codes, 'Setups 1 to 2'],
    [[code, { ...code, no: 4 }], 'Setups 1, 4'],
  ])('says which setups stand on it', (some, says) => {
    const under = sheet.underTitle({ job: 'Cabinet', day: '', codes: some, no: 2, page: 3 });
    expect(under).toBe(`Cabinet · ${says} · continued · page 3`);
  });
  test('says the figure again on the next page', () =>
    expect(sheet.goesOn(code, rip, '1/32')).toBe(`1 ${code.check}  Rip fence at 12, continued`));
  test('says what rounding left as the figure does', () => {
    expect(sheet.rest({ value: l('12'), rest: l('1/128') }, '1/32')).toBe('strong 0.008');
    expect(sheet.rest({ value: l('12'), rest: l('0') }, '1/32')).toBe('');
  });
  test('keeps a hole and its number on one line', () =>
    expect(sheet.holes(['1: 3', '2: 4'])).toBe('1:\u00a03   2:\u00a04'));
});

describe('ticked in', () => {
  test('one box and several', () => {
    expect([0, 1, 3].map(tickIn.all)).toEqual([
      'All of it: it is set',
      'All of it: 1 box',
      'All of it: 3 boxes',
    ]);
    expect(tickIn.allAct(code, 2)).toBe('Setup 1 off the paper: 2 boxes');
    expect([tickIn.held(1), tickIn.held(2)].map((says) => says.split(' open')[0])).toEqual([
      '1 box stays',
      '2 boxes stay',
    ]);
  });
  test('of a sheet, by its name and its signs', () => {
    expect(tickIn.sheetAct('Sheet 1, birch', 1)).toBe('Sheet 1, birch off the paper: 1 box');
    expect(lists.oneSetting('3A', '3B')).toBe('Cuts of one number, as 3A and 3B, are made at one setting.');
    expect(tickIn.cutFirst('3B')).toBe('Blocked: cut 3B comes first');
    expect(tickIn.compareSheet('K7')).toContain('stands K7.');
  });
  test('a number there is none of is refused with what there is', () =>
    expect(tickIn.noSetup(9, 4)).toBe('There is no setup 9: they go from 1 to 4.'));
});

describe('labels', () => {
  test('too wide, too high, or both, by how much', () => {
    expect(labels.tooLarge({ across: l('1'), long: l('0') })).toContain('lies: 1 too wide. Make');
    expect(labels.tooLarge({ across: l('1'), long: l('2') })).toContain('1 too wide and 2 too high.');
  });
  test('say what is known of a part, and no more', () => {
    expect(labels.lies({ end: 'left' })).toBe('');
    expect(labels.lies({ end: 'bottom', face: 'inside', up: 'top' })).toBe('on the inside face, top end up');
    expect(labels.lies({ end: 'bottom', face: 'left' })).toBe('on face A (left)');
    expect(labels.end({ end: 'left' })).toBe('Reference end: left');
    expect(labels.end({ end: 'left', endAt: 'left' })).toBe('left end');
  });
});

test('what is left out is counted', () => {
  expect([prints.leftOut(1), prints.leftOut(2)]).toEqual([
    '1 setup is done and left out.',
    '2 setups are done and left out.',
  ]);
  expect([lists.sheetsDone(1), lists.sheetsDone(2)]).toEqual([
    'One sheet is cut and left out.',
    '2 sheets are cut and left out.',
  ]);
});

test('a file is named without signs no file may have', () =>
  expect(prints.fileName('Case: a/b', 'Setup sheets')).toBe('Case ab, setup sheets'));

test('how far a print is, with and without knowing of how many pages', () => {
  expect(writing(0, undefined)).toBe('Page 1 …');
  expect(writing(2, 9)).toBe('Page 3 of 9 …');
});
