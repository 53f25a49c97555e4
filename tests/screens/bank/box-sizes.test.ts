import { describe, expect, test } from 'vitest';
import { sizesOf } from '../../../src/screens/bank/box-sizes';
import { sizes } from '../../../src/screens/bank/boxes-words';
import { boxParts } from '../../../src/trade/boxes/bank-parts';
import { drawersOf } from '../../../src/trade/boxes/drawers';
import { type Bank, type BankStock, newBank } from '../../../src/trade/fronts/bank';
import { l, w } from '../../trade/grooves/sample';
import { worked } from './sample';

// The box of example 7a of the trade's figures, on a tape of sixteenths: opening 17 3/32, sides and back 15/32, box
// front 5/8, bottom 11/32, 16 deep. Worked by hand: wide 16 1/16; the back 15 1/8 inside and two dadoes of 7/32;
// the bottom 14 15/32 deep inside, two grooves of 3/16, 1/16 easy: 14 25/32, which must go in.
const bank: Bank = {
  ...newBank('b'),
  width: l('17 3/32'),
  height: l('10'),
  depth: l('20'),
  count: 1,
  boxDeep: l('16'),
  lap: l('5/32'),
  backDado: l('7/32'),
  behind: l('7/16'),
  grooveDeep: l('3/16'),
  grooveUp: l('13/32'),
  ease: l('1/16'),
  clearance: l('1/2'),
  fronts: { 1: { boxHigh: l('4 1/8') } },
};
const thicks: Readonly<Record<BankStock, string>> = {
  front: '3/4',
  side: '15/32',
  boxFront: '5/8',
  boxBack: '15/32',
  boxBottom: '11/32',
  runner: '3/4',
};
const at = { thick: (stock: BankStock) => l(thicks[stock]), shop: {}, tape: '1/16' } as const;

describe('the sizes of a box', () => {
  const fronts = worked(bank);
  const drawers = drawersOf(fronts, at);
  if (!drawers.ok) throw new Error('no drawers');
  const [drawer] = drawers.value.drawers;
  if (!drawer) throw new Error('no drawer');
  const parts = boxParts(drawers.value, { ...at, waits: [] });
  const found = { bank, fronts: { ok: true, value: fronts } as const, drawers, parts, work: undefined };
  const lines = new Map(sizesOf(drawer, found, '1/16').map((line) => [line.name, line.mark]));

  test.each([
    [sizes.side, '15 7/8', '-1/32'],
    [sizes.back, '15 9/16', '0'],
    [sizes.backHeight, '4 1/8', '0'],
    [sizes.bottomWide, '15 7/16', '0'],
    [sizes.bottomDeep, '14 3/4', '1/32'],
    [sizes.insideDeep, '14 1/2', '-1/32'],
  ])('%s: %s, and what rounding left', (name, mark, rest) => {
    const line = lines.get(name);
    expect(line && [w(line.value), w(line.rest)]).toEqual([mark, rest]);
  });
});
