import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { wrapped } from '../../../src/ui/paper/ink';

const widthOf = (text: string): number => text.length;

describe('wrapped', () => {
  test.each([
    ['Cut each sheet along its line', 12, ['Cut each', 'sheet along', 'its line']],
    ['short', 12, ['short']],
    ['', 12, ['']],
    ['a averylongwordindeed b', 8, ['a', 'averylon', 'gwordind', 'eed b']],
  ])('%s', (text, wide, lines) => expect(wrapped(text, wide, widthOf)).toEqual(lines));

  test('no line is wider, and no sign is lost', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 60 }), fc.integer({ min: 1, max: 20 }), (text, wide) => {
        const lines = wrapped(text, wide, widthOf);
        expect(lines.every((line) => line.length <= Math.max(wide, 2))).toBe(true);
        expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
      }),
    );
  });
});
