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

test('sides that run past the top are wrong at how far, with what else makes it so', () => {
  const past = 'How far the sides run past the upper face of the top';
  const low = { ...plainCase, topJoint: 'dado' } as const;
  const up = { code: 'no-opening', across: false, by: l('1') } as const;
  expect(placeOf(up, low).blanks).toEqual(['Outside height', past]);
  expect(placeOf(up, plainCase).blanks).toEqual(['Outside height']);
  expect(placeOf({ joined: true, code: 'top-low', by: l('2') }, low)).toEqual({
    at: 'joints',
    blanks: ['How the right end of the top meets its side', past],
  });
  expect(placeOf({ joined: true, code: 'no-top-under', on: 'edging', by: l('2') }, low).blanks).toEqual([
    past,
  ]);
  const thin = { joined: true, code: 'thin-over', over: l('1/4'), least: l('3/8') } as const;
  expect(placeOfWarning(thin, low).blanks).toEqual([past]);
  const rail = { code: 'top-in-opening', by: l('1/2'), least: l('2') } as const;
  expect(placeOfWarning(rail, low).blanks).toEqual(['How wide the top rail is']);
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
