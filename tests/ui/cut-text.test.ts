import { expect, test } from 'vitest';
import { cutTo } from '../../src/ui/cut-text';

const family = '👨‍👩‍👧';

test.each([
  ['a text that fits stays', 'Shells', 6, 'Shells'],
  ['letters are cut at the limit', 'Shells', 4, 'Shel'],
  ['a family is never cut in two', `ab${family}`, 2 + family.length - 1, 'ab'],
  ['it stays where it just fits', `ab${family}c`, 2 + family.length, `ab${family}`],
  ['nor is a letter parted from its accent', 'e\u0301e\u0301', 3, 'e\u0301'],
])('%s', (_, text, most, cut) => expect(cutTo(text, most)).toBe(cut));
