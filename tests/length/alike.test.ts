import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { alike } from '../../src/length/alike';
import { inches } from '../../src/length/length';
import { runs } from '../runs';

test('figures are alike by what they say, whatever they were made of', () => {
  expect(alike({ at: inches(2n, 4n) }, { at: inches(1n, 2n) })).toBe(true);
  expect(alike({ at: inches(1n, 2n) }, { at: inches(-1n, 2n) })).toBe(false);
});

test('a key without a value is not a key that is not there; a list is no record', () => {
  expect(alike({ a: undefined }, {})).toBe(false);
  expect(alike({ a: undefined }, { b: undefined })).toBe(false);
  expect(alike([], {})).toBe(false);
  expect(alike(['a'], { 0: 'a' })).toBe(false);
});

test('what holds a function, a map or a set is like itself alone', () => {
  const one = { of: new Map([[1, 2]]), how: () => 1 };
  expect(alike(one, one)).toBe(true);
  expect(alike({ of: new Map() }, { of: new Map() })).toBe(false);
  expect(alike({ of: new Set() }, { of: new Set() })).toBe(false);
  expect(alike({ how: () => 1 }, { how: () => 1 })).toBe(false);
});

// against Node's own comparison: plain values, few enough keys and numbers that many are the same
const plain = fc.letrec((tie) => ({
  any: fc.oneof(
    { maxDepth: 3 },
    fc.constantFrom(undefined, null, 0, 1, 'a', 2n, true),
    fc.array(tie('any'), { maxLength: 2 }),
    fc.dictionary(fc.constantFrom('a', 'b'), tie('any'), { maxKeys: 2, noNullPrototype: true }),
  ),
})).any;

test('it finds what Node finds', () => {
  fc.assert(
    fc.property(plain, plain, (a, b) => {
      expect(alike(a, b)).toBe(isDeepStrictEqual(a, b));
      expect(alike(a, structuredClone(a))).toBe(true);
    }),
    { numRuns: runs(500) },
  );
});
