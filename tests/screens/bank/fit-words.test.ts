import { expect, test } from 'vitest';
import * as words from '../../../src/screens/bank/fit-words';
import { l } from '../../trade/grooves/sample';
import { said } from '../said';

test('one front is on, or all of several', () => {
  expect(words.allOn(1)).toBe('The front is on');
  expect(words.allOn(5)).toBe('All 5 fronts are on');
});

test('fitted downward the lower edge is read from the top; upward the upper edge from the bottom', () => {
  expect(words.heading(2, 'down')).toBe('Front 2, lower edge from the top');
  expect(words.keysTitle(2, 'left', 'up')).toBe('Front 2, left: upper edge from the bottom');
});

test('what was planned is said once, or at both sides where they differ', () => {
  const one = words.planned({ left: '4 29/64', state: words.inUse });
  expect(said(one)).toBe('planned 4 29/64, in use');
  const two = words.planned({ left: '9 3/4', right: '9 1/2', state: words.shimsBefore('1/16') });
  expect(said(two)).toBe('planned 9 3/4 left, 9 1/2 right. Shims before it: 1/16');
});

test('one gap, several gaps, and the last gap', () => {
  const left = (toGo: number, gaps: number) => words.gapsLeft({ toGo, gaps, each: '5/64' });
  expect(left(2, 3)).toBe('3 gaps to go: 5/64.');
  expect(left(1, 1)).toBe('1 gap to go: 5/64.');
  expect(left(0, 1)).toBe('The last gap: 5/64.');
});

test('a front gives, or may be taller', () => {
  expect(words.gives(3, l('1/32'))).toBe('Take 1/32 off front 3');
  expect(words.gives(3, l('-1/32'))).toBe('Front 3 may be 1/32 taller');
  expect(words.trimInAll(l('1/16'))).toContain('take 1/16 in all off');
  expect(words.trimInAll(l('-1/16'))).toContain('may be 1/16 taller in all');
  expect(said(words.heightChange('5', '4 31/32'))).toBe('5 → 4 31/32');
});

test('the bar says whether a front follows; a bank without a name is called drawers', () => {
  expect(words.use(1)).toBe('Use it, next front');
  expect(words.use(0)).toBe('Use it, all are on');
  expect(words.fittedAct('Minerals')).toBe('Front fitted, Minerals');
  expect(words.fittedAct('')).toBe('Front fitted, drawers');
});
