import { describe, expect, test } from 'vitest';
import { jobOf } from '../../../src/job/job';
import { inches } from '../../../src/length/length';
import { askOf } from '../../../src/screens/bank/asks';
import { type FormPage, formPages } from '../../../src/screens/bank/form-pages';
import * as words from '../../../src/screens/bank/sentence-words';
import { type Bank, newBank } from '../../../src/trade/fronts/bank';
import { drawerJointIds } from '../../../src/trade/fronts/corner';

const bank = (over: Partial<Bank> = {}): Bank => ({ ...newBank('b'), ...over });

/** Every sentence these drawers can be said in. */
const banks = (['inset', 'overlay'] as const)
  .flatMap((fit) =>
    (['equal', 'step', 'ratio', 'weights'] as const).flatMap((share) =>
      (['free', 'template'] as const).flatMap((tailsHow) =>
        [undefined, 'case'].flatMap((of) =>
          [undefined, ...drawerJointIds].flatMap((boxJoint) =>
            [undefined, 'box' as const].map((frontIs) =>
              bank({ fit, share, tailsHow, boxJoint, frontIs, across: 2, pulls: 2, ...(of ? { of } : {}) }),
            ),
          ),
        ),
      ),
    ),
  )
  .flatMap((b) => [b, { ...b, hung: 'runners' as const }, { ...b, hung: 'strips' as const }]);
const pagesOf = (b: Bank): Readonly<Record<FormPage, readonly string[]>> => ({
  fronts: [words.opening(b), words.fronts(b), words.ends(b, false), words.blank],
  boxes: [words.slides(b), words.seat(b), words.pulls(b)],
  wood: [words.wood(b), words.corner(b), words.joint(b), words.layout(b)],
});
const sentences = banks.flatMap((b) => formPages.flatMap((page) => pagesOf(b)[page]));
const blanksOf = (sentence: string) => [...sentence.matchAll(/\{([^}]*)\}/g)].map(([, name = '']) => name);

test('each blank of each sentence asks something of its own', () => {
  const at = { bank: bank(), job: jobOf('j', new Map()), usual: {} };
  for (const sentence of sentences) {
    const titles = blanksOf(sentence).map((name) => askOf(name, at).title);
    expect(new Set(titles).size).toBe(titles.length);
  }
});

test('a page shows ten blanks at most before it is unfolded, of a covering bank fourteen, in wood one more', () => {
  for (const b of banks.map((x) => ({ ...x, pulls: 0 }))) {
    const most = (b.fit === 'inset' ? 10 : 14) + ('hung' in b ? 1 : 0);
    const shown = {
      fronts: [words.opening(b), words.fronts(b)],
      boxes: [words.slides(b), words.pulls(b)],
      wood: [words.wood(b), words.corner(b)],
    };
    for (const page of formPages) expect(shown[page].flatMap(blanksOf).length).toBeLessThanOrEqual(most);
  }
});

test('no blank stands on two pages', () => {
  for (const b of banks) {
    const all = formPages.flatMap((page) => [...new Set(pagesOf(b)[page].flatMap(blanksOf))]);
    expect(new Set(all).size).toBe(all.length);
  }
});

test('the way on names the next page', () => {
  expect(words.onward.fronts.toLowerCase()).toContain(words.pages.boxes.toLowerCase());
  expect(words.onward.boxes.toLowerCase()).toContain(words.pages.wood.toLowerCase());
  expect(words.onward.wood).toBe('To the fronts');
});

describe('the sentence of the fronts', () => {
  test('one is a front, two are fronts', () => {
    expect(words.fronts(bank({ count: 1 }))).toContain('{count} front,');
    expect(words.fronts(bank({ count: 2 }))).toContain('{count} fronts,');
  });

  test('says the step or the ratio where heights go by one', () => {
    expect(words.fronts(bank({ share: 'step' }))).toContain(
      '{share}, each {step} higher than the one above.',
    );
    expect(words.fronts(bank({ share: 'ratio' }))).toContain('{share}, each {ratio} times the one above.');
    expect(words.fronts(bank({ share: 'equal' }))).toContain('{share}. Gaps');
  });

  test('the gap is the same all round until one at an end is said', () => {
    expect(words.fronts(bank())).toContain('Gaps {between} all round.');
    expect(words.fronts(bank({ bottom: inches(1n, 4n) }))).toContain('Gaps {between} between them.');
  });

  test('a covering front has no gap at the end, and one more over a partition', () => {
    expect(words.fronts(bank({ fit: 'overlay', across: 1 }))).not.toContain('{gap}');
    expect(words.fronts(bank({ fit: 'overlay', across: 2 }))).toContain(
      'covering {top} at the top, {bottom} at the bottom, {side} at the sides, {gap} over a partition.',
    );
    expect(words.ends(bank({ fit: 'overlay' }), false)).not.toContain('{top}');
  });

  test('once the fitting has begun the order is no blank', () => {
    expect(words.ends(bank({ order: 'up' }), true)).toContain('Fit them bottom up;');
    expect(words.ends(bank({ order: 'up' }), false)).toContain('Fit them {order};');
  });
});

test('a pull has two screws apart; two pulls stand in from each end; none has neither', () => {
  expect(words.pulls(bank({ pulls: 0 }))).toMatch(/\{pulls\} pulls a front\.$/);
  expect(words.pulls(bank({ pulls: 1 }))).toMatch(
    /\{pulls\} pull a front, screws \{centres\} apart, \{fromTop\} down\.$/,
  );
  expect(words.pulls(bank({ pulls: 2 }))).toMatch(/down, \{fromEnd\} in from each end\.$/);
});

test('only an opening of its own asks how high its lower edge is', () => {
  expect(words.ends(bank(), false)).toContain('{sill}');
  expect(words.ends(bank({ of: 'case' }), false)).not.toContain('{sill}');
});

test('in a case it says which bay and how many columns, else its own size', () => {
  expect(words.opening(bank({ of: 'case', across: 1 }))).toContain('{across} column wide');
  expect(words.opening(bank())).toContain('{width} wide, {height} high');
});
