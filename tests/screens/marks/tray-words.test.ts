import { describe, expect, test } from 'vitest';
import * as words from '../../../src/screens/marks/tray-words';
import { l } from '../../length/write-figures';
import { said } from '../said';

test('the sentence of a tray has a dash where the grooves have no depth yet', () => {
  const blanks = { opening: '20', slack: '3/64', bow: '1/16', part: '1/2' };
  expect(said(words.Slip({ ...blanks, depth: l('1/4') }))).toBe(
    'Between sides 20 apart, in grooves 1/4 deep, a tray 1/2 thick with 3/64 of slack, the sides bowed out by 1/16.',
  );
  expect(said(words.Slip({ ...blanks, depth: undefined }))).toContain('in grooves — deep');
});

test('a tray that sits too little in its groove is told of', () => {
  expect(words.bearing(l('3/16'), false)).toMatch(/3\/16 in the far groove\.$/);
  expect(words.bearing(l('1/16'), true)).toMatch(/: under 1\/8 it may drop out\.$/);
});

describe('what keeps a tray from being made is said by how much', () => {
  test.each([
    [{ code: 'no-width', by: l('1/8') }, 'takes 1/8 more'],
    [{ code: 'slack-negative', by: l('1/64') }, 'Slack 1/64 below 0'],
    [{ code: 'bow-negative', by: l('1/32') }, 'come in by 1/32'],
    [{ code: 'not-positive', what: 'opening' }, 'must stand apart'],
    [{ code: 'not-positive', what: 'depth' }, 'must have a depth'],
  ] as const)('%o', (error, says) => expect(words.errorText(error)).toContain(says));
});
