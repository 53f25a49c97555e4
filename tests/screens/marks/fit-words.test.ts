import { describe, expect, test } from 'vitest';
import * as words from '../../../src/screens/marks/fit-words';
import { l } from '../../length/write-figures';
import { said } from '../said';

describe('the sentence of a fit', () => {
  const blanks = { sheet: 'Sheet A', kind: 'glued', clearance: '0.005' };

  test('names readings only where they are given on the screen', () => {
    expect(said(words.Slip({ ...blanks, readings: false }))).toBe(
      'The parts are from Sheet A. They are glued, with 0.005 of clearance.',
    );
    expect(said(words.Slip({ ...blanks, readings: '0.709' }))).toBe(
      'The parts are from Sheet A reading 0.709. They are glued, with 0.005 of clearance.',
    );
  });

  test('numbers the readings that are given', () => {
    expect([words.reading(0, true), words.reading(1, false)]).toEqual(['Reading 1', 'Another reading']);
  });
});

test('a loose glue line asks for less clearance, or names the readings of two stacks', () => {
  expect(words.weakGlueLine(undefined)).toMatch(/: take less clearance\.$/);
  expect(words.weakGlueLine([[l('0.69')], [l('0.71'), l('0.72')]])).toContain(
    'one for 0.690, one for 0.710, 0.720.',
  );
});

test('without a reading the bar asks for one', () => {
  expect([words.useWidth(l('0.717')), words.useWidth(undefined)]).toEqual([
    'Cut grooves 0.717 wide',
    'Give a reading first',
  ]);
});

test('what keeps a groove from being fitted says by how much', () => {
  expect(words.errorText({ code: 'clearance-negative', by: l('1/64') })).toContain('1/64 narrower');
  expect(words.errorText({ code: 'no-readings' })).toContain('give each reading');
});
