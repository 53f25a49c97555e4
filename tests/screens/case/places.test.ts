import { expect, test } from 'vitest';
import { placeOf, placeOfWarning } from '../../../src/screens/case/places';
import { l } from '../../length/write-figures';
import { plainCase } from '../../trade/carcass/sample-case';

test('what is missing is asked for at its own blank, stock at the sentence that names it', () => {
  expect(placeOf({ code: 'missing', field: 'toeBack' }, plainCase).at).toBe('toe');
  expect(placeOf({ code: 'missing-stock', stock: 'side' }, plainCase)).toEqual({
    at: 'stock',
    blanks: ['What the sides are of'],
  });
  expect(placeOf({ code: 'missing-stock', stock: 'frame' }, plainCase).at).toBe('frame');
});

test('openings held are wrong at the opening, outside sizes at the outside', () => {
  const problem = { code: 'no-opening', across: true, by: l('1') } as const;
  expect(placeOf(problem, plainCase).blanks).toEqual(['Outside width']);
  expect(placeOf(problem, { ...plainCase, hold: 'openings' }).blanks).toEqual(['Clear width of each bay']);
});

test('bays that do not add up are wrong at every bay that is given', () => {
  const c = { ...plainCase, bays: [l('10'), l('12')] };
  expect(placeOf({ code: 'bays-off', by: l('1') }, c).blanks).toHaveLength(2);
});

test('a thing worth a look that no one blank makes stands under the whole', () => {
  expect(placeOfWarning({ code: 'two-thicknesses' }, plainCase)).toEqual({ at: 'whole', blanks: [] });
  expect(
    placeOfWarning({ code: 'small-bearing', in: 'trays', bearing: l('0'), least: l('1/8') }, plainCase).at,
  ).toBe('in trays');
});

test('a bottom that lies too low is wrong at how it is joined, and at what the case stands off the floor', () => {
  expect(placeOf({ joined: true, code: 'bottom-low', joint: 'over', by: l('4') }, plainCase)).toEqual({
    at: 'joints',
    blanks: ['How the bottom meets the sides', 'Floor to the underside of the case'],
  });
});
