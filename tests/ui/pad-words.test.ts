import { describe, expect, test } from 'vitest';
import { readLength } from '../../src/length/read';
import { amountUnderNothing, underNothing, unread } from '../../src/ui/pad-words';
import { l } from '../length/write-figures';

const readOf = (text: string) => {
  const read = readLength(text);
  if (!read.ok) throw new Error(text);
  return read.value;
};
const errorOf = (text: string) => {
  const read = readLength(text);
  if (read.ok) throw new Error(text);
  return read.error;
};

describe('what a blank says of what it does not take', () => {
  test('a figure below nothing: by how much, and what would do', () => {
    expect(underNothing(readOf('-5'), 'length')).toBe(
      '5 inches less than nothing. A length is 1/2 to 192 inches.',
    );
    expect(underNothing(readOf('-2 mm'), 'gap')).toBe('2 mm less than nothing. A gap is 0 to 40 mm.');
    expect(underNothing(readOf('-1/4'))).toBe('1/4 inches less than nothing. It is nothing or more.');
    expect(amountUnderNothing(l('-3'))).toBe('3 less than nothing. It is nothing or more.');
  });

  test('a fraction over 0 is said so; what may be half done is not a length yet', () => {
    expect(unread(errorOf('1/0'))).toBe('“1/0” divides by zero. The figure under the line is 1 or more.');
    expect(unread(errorOf('3 1'))).toBe('Not a length yet.');
  });
});
