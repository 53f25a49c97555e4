import { describe, expect, test } from 'vitest';
import { shortest } from '../../../src/length/length';
import { greatestWidth } from '../../../src/trade/room/greatest-width';
import { l, refusal, spelled, value } from './sample';

const allow = { left: l('1/2'), right: l('1/2') };

describe('greatestWidth', () => {
  test('Example 2 of room: 47 less 1/2 each side is 46', () => {
    expect(spelled(value(greatestWidth(l('47'), allow, l('1/32'))))).toEqual({ value: '46', rest: '0' });
  });

  test('the case goes DOWN to the mark, never to the nearest', () => {
    // 47 - 1 = 46; 47 15/256 - 1 = 46 15/256, which is 46 1/32 and 7/256
    expect(spelled(value(greatestWidth(l('47 15/256'), allow, l('1/32'))))).toEqual({
      value: '46 1/32',
      rest: '7/256',
    });
  });

  // 45 11/32 − 2 × 3/4 = 43 27/32, at a sixteenth 43 13/16 and 1/32
  test('the least of three widths less a filler of 3/4 at both sides, DOWN', () => {
    const fillers = { left: l('3/4'), right: l('3/4') };
    const least = shortest(l('45 1/2'), l('45 11/32'), l('45 5/8'));
    expect(spelled(value(greatestWidth(least, fillers, l('1/16'))))).toEqual({
      value: '43 13/16',
      rest: '1/32',
    });
  });

  test.each([
    ['a left allowance below 0', '47', { left: l('-1/8'), right: l('0') }, { side: 'left', by: '1/8' }],
    ['a right allowance below 0', '47', { left: l('0'), right: l('-1/4') }, { side: 'right', by: '1/4' }],
  ])('%s is refused', (_, width, given, want) => {
    const code = 'negative-allowance';
    expect(refusal(greatestWidth(l(width), given, l('1/32')))).toEqual({ code, ...want });
  });

  test.each([
    ['3/4', '1/4'],
    ['1', '0'],
    // 1/64 is left, and no mark at a 32nd
    ['1 1/64', '-1/64'],
  ])('allowances that take all of %s leave no room', (width, by) => {
    expect(refusal(greatestWidth(l(width), allow, l('1/32')))).toEqual({ code: 'no-room', by });
  });

  test('a 32nd is a case still', () => {
    expect(spelled(value(greatestWidth(l('1 1/32'), allow, l('1/32'))))).toMatchObject({ value: '1/32' });
  });
});
