import { describe, expect, test } from 'vitest';
import { span, stands } from '../../../src/screens/shared/timer-words';

describe('span', () => {
  test.each([
    [0, '0 min'],
    [45, '45 min'],
    [60, '1 h'],
    [135, '2 h 15 min'],
    [2879, '47 h 59 min'],
    [2880, '2 days'],
    [7 * 1440 + 300, '7 days 5 h'],
  ])('%i', (minutes, words) => expect(span(minutes)).toBe(words));
});

test('how a timer stands is one sentence', () => {
  expect(stands({ is: 'runs', left: 5, until: 0 })).toBe('5 min left.');
  expect(stands({ is: 'over', past: 0, until: 0 })).toBe('Over now.');
  expect(stands({ is: 'over', past: 61, until: 0 })).toBe('Over since 1 h 1 min.');
  expect(stands({ is: 'clock-back', by: 10 })).toContain('10 min ahead');
});
