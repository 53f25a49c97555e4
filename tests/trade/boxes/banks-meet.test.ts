import { expect, test } from 'vitest';
import { banksMeet } from '../../../src/trade/boxes/banks-meet';
import { drawersOf, type WorkedDrawers } from '../../../src/trade/boxes/drawers';
import type { Case, Inside } from '../../../src/trade/carcass/case';
import { type Bank, type BankStock, newBank } from '../../../src/trade/fronts/bank';
import { frontsOf } from '../../../src/trade/fronts/worked';
import { framedCase, sheets, work } from '../carcass/sample-case';
import { l, w } from '../grooves/sample';

/** A rail 3/4 high across the right opening of the frame, its lower edge 20 over the sill. */
const rail: Inside = { id: 'rail', kind: 'rail', bay: 2, at: l('20'), wide: l('3/4') };
const railed: Case = { ...framedCase, inside: [rail] };

/** One drawer, its gaps 3/32, its box 1/2 over the edge of its front; runners 3/4, 1/16 free over a box. */
const bank: Bank = {
  ...newBank('low'),
  name: 'Below',
  of: 'c1',
  bay: 2,
  count: 1,
  top: l('3/32'),
  between: l('3/32'),
  bottom: l('3/32'),
  boxUp: l('1/2'),
  boxDeep: l('14'),
  hung: 'runners',
  kickers: 'over',
  runHigh: l('3/4'),
  kickRoom: l('1/16'),
  stocks: { front: 'a', side: 'a', boxBottom: 'a', runner: 'a' },
};

function drawers(own: Partial<Bank>): WorkedDrawers {
  const fronts = frontsOf({ ...bank, ...own }, { worked: work(railed, sheets()), tape: '1/32' });
  if (!fronts.ok) throw new Error(fronts.error.map(({ code }) => code).join());
  const strip = own.hung === 'strips' ? '3/16' : '1/2';
  const thick = (stock: BankStock) => l(stock === 'runner' ? strip : '1/2');
  const made = drawersOf(fronts.value, { thick, shop: {}, tape: '1/32' });
  if (!made.ok) throw new Error(made.error.map(({ code }) => code).join());
  return made.value;
}
const below = (high: string, own: Partial<Bank> = {}) =>
  drawers({ fronts: { 1: { boxHigh: l(high) } }, ...own });
const above = (own: Partial<Bank> = {}) =>
  drawers({ id: 'up', name: 'Above', over: 'rail', fronts: { 1: { boxHigh: l('6') } }, ...own });
const told = (own: WorkedDrawers, other: WorkedDrawers) =>
  banksMeet(own, [own, other]).map(
    ({ drawer, over, other: { name }, no, by, fits }) =>
      `${drawer} ${over ? 'over' : 'under'} ${no} of ${name} by ${w(by)}: ${w(fits)}`,
  );

// Over the sill: the box above stands at 20 3/4 + 3/32 + 1/2 = 21 11/32, its runner from 20 19/32. The box below, from
// 19/32, with 1/16 and a kicker of 3/4 over it, ends 1 13/32 over its own height: 19 1/4 high at 20 21/32, 1/16 too far
test('the lowest runner over a rail is held against the kicker under it, from both', () => {
  expect(told(above(), below('19 1/4'))).toEqual(['1 over 1 of Below by 1/16: 9/16']);
  expect(told(below('19 1/4'), above())).toEqual(['1 under 1 of Above by 1/16: 19 3/16']);
});

test('what is told fits: so much farther up, or so much lower, they are clear', () => {
  expect(told(above({ boxUp: l('9/16') }), below('19 1/4'))).toEqual([]);
  expect(told(above(), below('19 3/16'))).toEqual([]);
  expect(told(above({ boxUp: l('17/32') }), below('19 1/4'))).toEqual(['1 over 1 of Below by 1/32: 9/16']);
});

test('a strip at the side of the box above needs no room under it, nor do slides', () => {
  expect(told(above({ hung: 'strips' }), below('19 1/4'))).toEqual([]);
  // the kicker below is held against the box alone: 21 11/32 - 1 13/32 = 19 15/16
  expect(told(above({ hung: undefined }), below('19 15/16'))).toEqual([]);
  expect(told(above({ hung: undefined }), below('20'))).toEqual(['1 over 1 of Below by 1/16: 9/16']);
  // of two banks on slides the fronts and what is over each say it
  expect(told(above({ hung: undefined }), below('22', { hung: undefined }))).toEqual([]);
});

test('another bay, another case or no case is another room', () => {
  expect(told(above(), below('19 1/4', { bay: 1 }))).toEqual([]);
  const put = (made: WorkedDrawers, of: string | undefined): WorkedDrawers => {
    const { fronts } = made;
    return { ...made, fronts: { ...fronts, bank: { ...fronts.bank, of } } };
  };
  expect(told(above(), put(below('19 1/4'), 'c2'))).toEqual([]);
  expect(told(put(above(), undefined), put(below('19 1/4'), undefined))).toEqual([]);
});
