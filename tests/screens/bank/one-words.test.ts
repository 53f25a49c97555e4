import { expect, test } from 'vitest';
import * as words from '../../../src/screens/bank/one-words';
import { said } from '../said';

test('the heading names the bank; without a name it is drawers', () => {
  expect(words.heading('fit', { name: 'Shells' })).toBe('Fitting fronts, Shells');
  expect(words.heading('sticks', { name: 'Shells', hung: 'runners' })).toBe('Runners on sticks, Shells');
  expect(words.heading('marks', { name: '' })).toBe('Story stick, drawers');
});

test('a slide is on by its side; other ticks say what they are', () => {
  expect(words.toTick('sticks', 'left')).toBe('Left slide is on');
  expect(words.toTick('sticks', 'right', 'runner')).toBe('Right runner is on');
  expect(words.toTick('marks', 'Marked')).toBe('Marked');
});

test('after a front comes its measure; after a mark the next, until all are done', () => {
  expect(words.onward('fit', true)).toBe('Measure it');
  expect(words.onward('marks', false)).toBe('Next');
  expect(words.onward('sticks', true)).toBe('All done');
});

test('the log tells a tick from one taken back', () => {
  expect(words.tickAct(false, 'Front 1, top edge', 'Marked')).toBe('Done: Front 1, top edge, marked');
  expect(words.tickAct(true, 'Drawer 2, stick', 'left')).toBe('Not yet: Drawer 2, stick, left');
});

test('a stick says what it measures', () =>
  expect(said(words.stickMeasures('7'))).toBe('This stick measures 7'));
