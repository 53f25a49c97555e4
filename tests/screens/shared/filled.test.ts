import { describe, expect, test } from 'vitest';
import { filled } from '../../../src/screens/shared/filled';

describe('filled', () => {
  test('puts each blank in its place, and leaves the words as they stand', () => {
    expect(filled('Each bay {wide} wide.', () => '3')).toEqual(['Each bay ', '3', ' wide.']);
    const blank = (name: string) => name.toUpperCase();
    expect(filled('{a} and {b}', blank).join('')).toBe('A and B');
  });

  test('a sentence without a blank stays whole', () => {
    expect(filled('No blank here.', () => 'x')).toEqual(['No blank here.']);
  });
});
