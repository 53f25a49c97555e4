import { expect, test } from 'vitest';
import { drawersOf } from '../../../src/trade/boxes/drawers';
import { stopStrikes } from '../../../src/trade/boxes/stop-strikes';
import type { Inside } from '../../../src/trade/carcass/case';
import { type Bank, newBank } from '../../../src/trade/fronts/bank';
import { frontsOf } from '../../../src/trade/fronts/worked';
import { plainCase, sheets, work } from '../carcass/sample-case';
import { l, w } from '../grooves/sample';

/** The right bay of the case of Example 1: 58 11/16 high. Reveals 3/32, boxes 1/2 over the edges of their fronts. */
const bank: Bank = {
  ...newBank('b'),
  of: 'c1',
  bay: 2,
  count: 1,
  top: l('3/32'),
  between: l('3/32'),
  bottom: l('3/32'),
  boxUp: l('1/2'),
  boxDeep: l('14'),
  stocks: { front: 'a', side: 'a', boxBottom: 'a' },
};
const stop: Inside = { id: 'stop', kind: 'stop', bay: 2 };

/** What strips strike, by how much, where they clear, and the widest that would. */
function strikes(own: Partial<Bank>, stops: Partial<Inside>, ...more: readonly Inside[]) {
  const worked = work({ ...plainCase, inside: [{ ...stop, ...stops }, ...more] }, sheets());
  const fronts = frontsOf({ ...bank, ...own }, { worked, tape: '1/32' });
  if (!fronts.ok) throw new Error(fronts.error.map(({ code }) => code).join());
  const drawers = drawersOf(fronts.value, { thick: () => l('1/2'), shop: {}, tape: '1/32' });
  if (!drawers.ok) throw new Error(drawers.error.map(({ code }) => code).join());
  return stopStrikes(worked.sizes, drawers.value).map((x) =>
    x.code === 'stop-strikes' ? [x.drawer.no, w(x.by), x.at && w(x.at), w(x.most)] : x.code,
  );
}
/** One box so high: it stands from 3/32 + 1/2 = 19/32 up. */
const box = (high: string): Partial<Bank> => ({ fronts: { 1: { boxHigh: l(high) } } });

test('a box that runs into a strip, by how much, and where the strip just clears', () => {
  // the box ends at 10 19/32, 58 11/16 − 10 19/32 = 48 3/32 is left over it; a strip at 10 stands 19/32 in it
  expect(strikes(box('10'), { at: l('10') })).toEqual([[1, '19/32', '10 19/32', '48 3/32']]);
  expect(strikes(box('10'), { at: l('10 19/32') })).toEqual([]);
  // right under the top, while no place is said
  expect(strikes(box('10'), {})).toEqual([]);
  expect(strikes(box('10'), { at: l('10'), bay: 1 })).toEqual([]);
});

// the box from 3/32 + 1 = 1 3/32 to 11 3/32; over it 1/16 and a block of 1/2 on the wall, to 11 21/32; under it a
// runner of 3/4, from 11/32: a strip of 1/4 at 1/4 stands 5/32 in that. Its place nearest is right under the runner
test('what carries a box and what stops it keep clear of a strip too', () => {
  const hung: Partial<Bank> = { ...box('10'), hung: 'runners', boxUp: l('1') };
  expect(strikes(hung, { at: l('11 1/2') })).toEqual([[1, '5/32', '11 21/32', '47 1/32']]);
  expect(strikes(hung, { at: l('11 21/32') })).toEqual([]);
  expect(strikes(hung, { at: l('1/4'), wide: l('1/4') })).toEqual([[1, '5/32', '3/32', '47 1/32']]);
  expect(strikes({ ...hung, hung: undefined }, { at: l('11 1/2') })).toEqual([]);
});

test('a strip that fits nowhere is told how wide one may be', () => {
  // the box ends at 58 19/32: 3/32 is left over it, 19/32 under it; down out of it the strip goes 11 1/2 − 19/32
  expect(strikes(box('58'), { at: l('10') })).toEqual([[1, '10 29/32', undefined, '19/32']]);
});

test('of two boxes the one it stands deeper in, and it goes between them', () => {
  // Fronts of 20 and 58 11/16 − 20 − 3 × 3/32 = 38 13/32. The lower box stands from 19/32 to 30 19/32, the upper one
  // from 3/32 + 38 13/32 + 3/32 + 1/2 = 39 3/32: between them 8 1/2, over them
  // 58 11/16 − 49 3/32 = 9 19/32.
  const two: Partial<Bank> = {
    count: 2,
    fronts: { 1: { high: l('20'), boxHigh: l('10') }, 2: { boxHigh: l('30') } },
  };
  // 39 + 1 1/2 − 39 3/32 = 1 13/32; down to 39 3/32 − 1 1/2
  expect(strikes(two, { at: l('39') })).toEqual([[1, '1 13/32', '37 19/32', '9 19/32']]);
  // 30 19/32 − 30; up to 30 19/32
  expect(strikes(two, { at: l('30') })).toEqual([[2, '19/32', '30 19/32', '9 19/32']]);
});

test('one farther back than the boxes reach is clear: 14 behind a front of 1/2', () => {
  expect(strikes(box('10'), { at: l('10'), front: l('14 1/2') })).toEqual([]);
  expect(strikes(box('10'), { at: l('10'), front: l('14 15/32') })).toHaveLength(1);
});
