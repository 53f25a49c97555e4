import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, inches, times } from '../../../src/length/length';
import { stackFor } from '../../../src/trade/stacks/stack';
import { correct, learnCorrection, type TestCut } from '../../../src/trade/stacks/test-cut';
import { runs } from '../../runs';
import { l, w } from '../grooves/sample';
import { testSet } from './test-set';

const put = (cut: TestCut, want: string, got: string) => {
  const found = correct(cut, { want: l(want), got: l(got) });
  if (!found.ok) throw new Error(found.error.code);
  return [w(found.value.change), w(found.value.by), found.value.direction];
};

describe('correct', () => {
  test('Example 5 of stacks: a tongue of 27/64 for 13/32, turned face for face, wants 1/128 more taken', () => {
    expect(put('wood-both-sides', '13/32', '27/64')).toEqual(['-1/128', '1/128', 'take-more']);
  });

  test.each([
    ['stack', '.7145', '.7125', ['1/500', '1/500', 'add-to-stack']],
    ['stack', '.7145', '.7165', ['-1/500', '1/500', 'take-from-stack']],
    ['one-wall', '3/4', '47/64', ['1/64', '1/64', 'away-from-blade']],
    ['one-wall', '3/4', '49/64', ['-1/64', '1/64', 'toward-blade']],
    ['wood-both-sides', '13/32', '25/64', ['1/128', '1/128', 'take-less']],
    ['slot-both-sides', '13/32', '25/64', ['1/128', '1/128', 'take-more']],
    ['slot-both-sides', '13/32', '27/64', ['-1/128', '1/128', 'take-less']],
    ['depth', '9/32', '17/64', ['1/64', '1/64', 'deeper']],
    ['depth', '9/32', '19/64', ['-1/64', '1/64', 'shallower']],
    ['depth', '9/32', '9/32', ['0', '0', 'leave-it']],
  ] as const)('%s, %s wanted and %s got: %s', (cut, want, got, change) => {
    expect(put(cut, want, got)).toEqual([...change]);
  });

  test('after the correction the next cut is what was wanted, each move counting as often as there are walls', () => {
    const sixtyFourths = fc.integer({ min: 1, max: 128 }).map((n) => inches(BigInt(n), 64n));
    fc.assert(
      fc.property(
        fc.constantFrom<TestCut>('stack', 'one-wall', 'wood-both-sides', 'slot-both-sides', 'depth'),
        sixtyFourths,
        sixtyFourths,
        (cut, want, got) => {
          const found = correct(cut, { want, got });
          if (!found.ok) throw new Error(found.error.code);
          const walls = cut.endsWith('both-sides') ? 2n : 1n;
          expect(add(got, times(found.value.change, walls)).equals(want)).toBe(true);
        },
      ),
      { numRuns: runs(200) },
    );
  });

  test.each([
    ['.75', '.78125', undefined],
    ['.75', '.78126', 'check-the-stack'],
    ['.75', '.71874', 'check-the-stack'],
    ['.75', '.625', 'check-the-stack'],
  ])('%s wanted and %s got: %s', (want, got, suspicion) => {
    const found = correct('stack', { want: l(want), got: l(got) });
    expect(found.ok && found.value.suspicion).toBe(suspicion);
  });

  test('what is suspect is measured from what the recipe gives, not from what is wanted', () => {
    const found = correct('stack', { want: l('.75'), got: l('.7'), expected: l('.702') });
    expect(found.ok && [found.value.direction, found.value.suspicion]).toEqual(['add-to-stack', undefined]);
  });

  test('refuses a measure of nothing', () => {
    expect(correct('depth', { want: l('1/4'), got: l('0') })).toEqual({
      ok: false,
      error: { code: 'not-positive', what: 'got' },
    });
    expect(correct('depth', { want: l('0'), got: l('1/4') })).toEqual({
      ok: false,
      error: { code: 'not-positive', what: 'want' },
    });
  });
});

describe('learnCorrection', () => {
  const built = stackFor(testSet, l('.7145'));
  if (!built.ok) throw new Error(built.error.code);
  const stack = built.value.fewest;

  test('Example 7 of stacks: a set that cuts .7165 from .7145 cuts +.002, and the next stack cuts what is wanted', () => {
    const learned = learnCorrection(stack, l('.7165'));
    if (!learned.ok) throw new Error(learned.error.code);
    expect(learned.value.equals(l('.002'))).toBe(true);
    const next = stackFor({ ...testSet, correction: learned.value }, l('.7145'));
    expect(next.ok && next.value.fewest.nominal.equals(l('.7125'))).toBe(true);
  });

  test('a second test cut takes the place of the first, and is not added to it', () => {
    const corrected = { nominal: l('.7145'), width: l('.7165') };
    const learned = learnCorrection(corrected, l('.7155'));
    expect(learned.ok && learned.value.equals(l('.001'))).toBe(true);
  });

  test('a cut with a chipper missing teaches nothing', () => {
    const learned = learnCorrection(stack, l('.5895'));
    expect(!learned.ok && [learned.error.code, w(learned.error.off)]).toEqual(['check-the-stack', '-1/8']);
  });
});
