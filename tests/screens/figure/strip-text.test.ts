import { describe, expect, test } from 'vitest';
import { stripText } from '../../../src/screens/figure/strip-text';

const line = (id: string, text: string, name = '') => ({ id, name, text });

describe('stripText', () => {
  test('a sum stands by its name, what it was worked from and what it comes to', () =>
    expect(stripText([line('1', '1/2 + 1/4', 'Side')], '1/32')).toBe('Side: 1/2 + 1/4 = 3/4'));

  test('a line built on another says its name, a bracket stands tight, a count is no length', () => {
    const lines = [line('a', '3', ''), line('b', '( #a + 2 ) × 2', 'Rail'), line('c', '#b ÷ #a', 'Times')];
    const text = stripText(lines, '1/32').split('\n');
    expect(text[0]).toMatch(/^line 1: 3/);
    expect(text[1]).toBe('Rail: (line 1 + 2) × 2 = 10');
    expect(text[2]).toBe('Times: Rail ÷ line 1 = 3.333');
  });

  test('what rounding left is said', () =>
    expect(stripText([line('1', '1/64', 'Gap')], '1/32')).toMatch(/^Gap: 1\/64 = 1\/32 scant/));

  test('a line that cannot be worked out has its working alone', () =>
    expect(stripText([line('1', '#gone + 1', 'Rest')], '1/32')).toBe('Rest: a line that is gone + 1'));
});
