import { describe, expect, test } from 'vitest';
import { jobOf } from '../../../src/job/job';
import { askOf } from '../../../src/screens/bank/asks';
import * as words from '../../../src/screens/bank/sentence-words';
import { type Bank, newBank } from '../../../src/trade/fronts/bank';

const bank = (over: Partial<Bank> = {}): Bank => ({ ...newBank('b'), ...over });

/** Every sentence these drawers can be said in. */
const banks = (['inset', 'overlay'] as const).flatMap((fit) =>
  (['equal', 'step', 'ratio', 'weights'] as const).flatMap((share) =>
    (['free', 'template'] as const).flatMap((tailsHow) =>
      [undefined, 'case'].flatMap((of) => [
        bank({ fit, share, tailsHow, across: 2, pulls: 2, ...(of ? { of } : {}) }),
      ]),
    ),
  ),
);
const sentences = banks.flatMap((b) => [
  words.opening(b),
  words.fronts(b, false),
  words.blank,
  words.boxes,
  words.tails(b),
  words.slides,
  words.pulls(b),
]);
const blanksOf = (sentence: string) => [...sentence.matchAll(/\{([^}]*)\}/g)].map(([, name = '']) => name);

test('each blank of each sentence asks something of its own', () => {
  const at = { bank: bank(), job: jobOf('j', new Map()), usual: {} };
  for (const sentence of sentences) {
    const titles = blanksOf(sentence).map((name) => askOf(name, at).title);
    expect(new Set(titles).size).toBe(titles.length);
  }
});

describe('the sentence of the fronts', () => {
  test('one is a front, two are fronts', () => {
    expect(words.fronts(bank({ count: 1 }), false)).toContain('{count} front of');
    expect(words.fronts(bank({ count: 2 }), false)).toContain('{count} fronts of');
  });

  test('says the step or the ratio where heights go by one', () => {
    expect(words.fronts(bank({ share: 'step' }), false)).toContain('{share}: {step} each.');
    expect(words.fronts(bank({ share: 'ratio' }), false)).toContain('{share}: times {ratio}.');
    expect(words.fronts(bank({ share: 'equal' }), false)).toContain('{share}. Gaps');
  });

  test('a covering front has no gap at the end, and one more over a partition', () => {
    expect(words.fronts(bank({ fit: 'overlay', across: 1 }), false)).not.toContain('{gap}');
    expect(words.fronts(bank({ fit: 'overlay', across: 2 }), false)).toContain(
      'covering {top} at the top, {bottom} at the bottom, {side} at the sides, {gap} over a partition.',
    );
  });

  test('once the fitting has begun the order is no blank', () => {
    expect(words.fronts(bank({ order: 'up' }), true)).toContain('They go on bottom up;');
    expect(words.fronts(bank({ order: 'up' }), false)).toContain('They go on {order};');
  });
});

test('a pull has two screws apart; two pulls stand in from each end; none has neither', () => {
  expect(words.pulls(bank({ pulls: 0 }))).toMatch(/\{pulls\} pulls a front\.$/);
  expect(words.pulls(bank({ pulls: 1 }))).toMatch(
    /\{pulls\} pull a front, screws \{centres\} apart, \{fromTop\} down\.$/,
  );
  expect(words.pulls(bank({ pulls: 2 }))).toMatch(/down, \{fromEnd\} in from each end\.$/);
});

test('in a case it says which bay and how many columns, else its own size', () => {
  expect(words.opening(bank({ of: 'case', across: 1 }))).toContain('{across} column wide');
  expect(words.opening(bank())).toContain('{width} wide, {height} high');
});
