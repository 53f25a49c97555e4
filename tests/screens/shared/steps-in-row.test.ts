import { describe, expect, test } from 'vitest';
import { nextNotDone, stepToShow } from '../../../src/screens/shared/steps-in-row';

const ids = ['a', 'b', 'c'];

describe('stepToShow', () => {
  test.each([
    ['the one the address names, done or not', [true, false, false], 'a', 0],
    ['without one in the address, the first not done', [true, false, false], undefined, 1],
    ['where the address names one that is gone, the first not done', [true, false, true], 'gone', 1],
    ['where all are done, the last', [true, true, true], undefined, 2],
  ])('%s', (_, done, asked, at) => expect(stepToShow(ids, done, asked)).toBe(at));

  test('none where there is no step', () => expect(stepToShow([], [], 'a')).toBe(-1));
});

describe('nextNotDone', () => {
  test.each([
    ['one after the step in hand comes first', [false, true, false], 1, 2],
    ['then one that was skipped, from the start', [true, false, true], 2, 1],
    ['the step in hand itself, where it alone is left', [true, false, true], 1, 1],
    ['none where all are done', [true, true, true], 0, undefined],
  ])('%s', (_, done, at, next) => expect(nextNotDone({ done, at })).toBe(next));
});
