import { describe, expect, test } from 'vitest';
import { inches } from '../../../src/length/length';
import { err, ok } from '../../../src/length/result';
import type { BankPlan } from '../../../src/plan/bank-plan';
import { askedOf, formPages, pageNamed } from '../../../src/screens/bank/form-pages';
import type { DrawersProblem } from '../../../src/trade/boxes/drawers';
import { newBank } from '../../../src/trade/fronts/bank';
import type { FrontsProblem } from '../../../src/trade/fronts/worked';

const bank = newBank('b');
const none = { bank, parts: [], work: undefined };
const fronts = (...error: readonly FrontsProblem[]): BankPlan => ({
  ...none,
  fronts: err(error),
  drawers: undefined,
});
const boxes = (...error: readonly DrawersProblem[]): BankPlan => ({
  ...none,
  fronts: ok({} as never),
  drawers: err(error),
});

test('pages are spelled in addresses for good', () => expect(formPages).toEqual(['fronts', 'boxes', 'wood']));

test.each([undefined, 'elsewhere', ''])('“%s” names the first page', (name) =>
  expect(pageNamed(name)).toBe('fronts'),
);

describe('what a bank asks for', () => {
  test('one thing at a time while something is missing', () => {
    const asked = askedOf(
      fronts(
        { code: 'missing', field: 'width' },
        { code: 'missing', field: 'height' },
        { code: 'count-not-whole' },
      ),
    );
    expect(asked.map((x) => x.text)).toEqual(['Say how wide the opening is.']);
  });

  test('one stock at a time, on the page of the wood', () => {
    const found = boxes({ code: 'missing-stock', stock: 'front' }, { code: 'missing-stock', stock: 'side' });
    expect(askedOf(found)).toHaveLength(1);
    expect(askedOf(found, 'wood')).toHaveLength(1);
    expect(askedOf(found, 'fronts')).toEqual([]);
  });

  test('everything that is wrong, once nothing is missing', () => {
    const found = boxes(
      { code: 'inside-gone', drawer: 1, by: inches(1n) },
      { code: 'groove-through', drawer: 1, which: 'side', deep: inches(1n), thickness: inches(1n, 2n) },
    );
    expect(askedOf(found).map((x) => x.page)).toEqual(['boxes', 'wood']);
    expect(askedOf(found, 'wood')).toHaveLength(1);
  });

  test('slides and depths are asked beside each other, a joint beside the wood', () => {
    const not = (field: 'clearance' | 'depth' | 'lap') =>
      askedOf(boxes({ code: 'not-positive', drawer: 1, field }))[0]?.page;
    expect([not('clearance'), not('depth'), not('lap')]).toEqual(['boxes', 'boxes', 'wood']);
  });
});
