import { expect, test } from 'vitest';
import * as words from '../../../src/screens/bank/step-words';
import { l } from '../../trade/grooves/sample';

test('an edge over the opening says past which end it lies', () => {
  const edge = { front: 1, edge: 'top' };
  expect(words.edgeTitle(edge, 'down', false)).toBe('Front 1, top edge');
  expect(words.edgeTitle(edge, 'down', true)).toBe('Front 1, top edge, past the top of the opening');
  expect(words.edgeTitle(edge, 'up', true)).toContain('past the bottom');
});

test('an opening out of square is spoken of only where it is', () => {
  expect(words.edgeSays('down', undefined)).toBe(
    'On the story stick, from its top end. Mark once, carry to both uprights.',
  );
  expect(words.edgeSays('up', l('1/8'))).toContain('One side is 1/8 higher');
  expect(words.edgeSays('up', l('1/8'))).toContain('leaves that at the top.');
});

test('a front names its column where there are several, and its right side where it differs', () => {
  expect(words.frontTitle(2, undefined, 'down')).toBe('Front 2, lower edge');
  expect(words.frontTitle(2, 3, 'up')).toBe('Front 2, column 3, upper edge');
  const gap = words.gapSays({ left: l('5/64'), right: l('5/64') }, '1/32');
  expect(words.frontSays('down', { right: undefined, gap, shims: words.shims('1/16 and 1/64') })).toBe(
    'From the top of the opening. Gap before it 5/64: shims 1/16 and 1/64.',
  );
  expect(words.frontSays('up', { right: '9 1/2', gap, shims: '' })).toBe(
    'From the bottom of the opening at the left, 9 1/2 at the right. Gap before it 5/64.',
  );
});

test('a front that covers the case stands past its opening', () =>
  expect(words.gapSays({ left: l('-1/2'), right: l('-1/2') }, '1/32')).toBe('It stands 1/2 past that'));

test('what comes off a stick says what it was measured to be only where that is another length', () => {
  const five = { value: l('5'), rest: l('0') };
  expect(words.comesOff(five, undefined, '1/32')).toMatch(/^5 and the kerf come off the stick before\./);
  expect(words.comesOff(five, l('20 1/16'), '1/32')).toContain('before, which measures 20 1/16.');
});

test('what comes off a stick is told with what rounding left', () => {
  const off = { value: l('5 1/16'), rest: l('1/64') };
  expect(words.comesOff(off, undefined, '1/16')).toMatch(/^5 1\/16 \(strong 0\.016\) and the kerf/);
});

test('a slide names its column where there are several', () => {
  expect(words.slide('left', undefined)).toBe('left');
  expect(words.slide('right', 2)).toBe('Column 2, right');
});
