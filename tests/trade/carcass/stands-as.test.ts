import { expect, test } from 'vitest';
import type { Case, Inside } from '../../../src/trade/carcass/case';
import { numberOf } from '../../../src/trade/carcass/stands-as';
import { l } from '../grooves/sample';
import { plainCase } from './sample-case';

const of = (...inside: readonly Inside[]): readonly (number | undefined)[] => {
  const c: Case = { ...plainCase, inside };
  return inside.map((i) => numberOf(c, i));
};

test('two shelves of a bay are told apart from the bottom up, whichever was said first', () => {
  const upper: Inside = { id: 'a', kind: 'fixed', bay: 1, at: l('20') };
  const lower: Inside = { id: 'b', kind: 'fixed', bay: 1, at: l('9') };
  expect(of(upper, lower)).toEqual([2, 1]);
});

test('the only one of its kind in its bay has no number', () => {
  const shelf: Inside = { id: 'a', kind: 'fixed', bay: 1, at: l('20') };
  expect(of(shelf, { ...shelf, id: 'b', bay: 2 }, { id: 'c', kind: 'loose', bay: 1 })).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
});
