import { boxParts, frontParts } from '../../../../src/trade/boxes/bank-parts';
import { drawersOf } from '../../../../src/trade/boxes/drawers';
import { hungParts } from '../../../../src/trade/boxes/hung-parts';
import { type Bank, type BankStock, newBank } from '../../../../src/trade/fronts/bank';
import { frontsOf } from '../../../../src/trade/fronts/worked';
import type { Operation } from '../../../../src/trade/setups/operation';
import { operationsOf } from '../../../../src/trade/setups/operations';
import { l } from '../../grooves/sample';

/**
 * Two drawers behind fronts of equal height. Sides, backs and bottoms 1/2, box fronts 3/4; 1/2 taken at each side of an
 * opening of 16 9/16 makes the boxes 15 9/16 wide: those of example K1b, 16 3/4 deep.
 */
export const bank: Bank = {
  ...newBank('b'),
  width: l('16 9/16'),
  height: l('24'),
  depth: l('20'),
  boxDeep: l('16 3/4'),
  clearance: l('1/2'),
  backDado: l('1/4'),
  behind: l('1/2'),
  grooveFit: l('1/64'),
  count: 2,
  stocks: { front: 'sheet', side: 'half', boxFront: 'sheet', boxBottom: 'quarter', runner: 'sheet' },
};

const thick = {
  front: '3/4',
  side: '1/2',
  boxFront: '3/4',
  boxBack: '1/2',
  boxBottom: '1/4',
  runner: '3/4',
} as const;

/** A side of stuff called thin is 15/32, of one called thick 5/8; strips in sides are 1/4. */
const thickOf =
  ({ stocks, hung }: Bank) =>
  (stock: BankStock) => {
    if (stock === 'runner' && hung === 'strips') return l('1/4');
    if (stock === 'side' && stocks.side === 'thick') return l('5/8');
    return l(stock === 'side' && stocks.side === 'thin' ? '15/32' : thick[stock]);
  };

/** The drawers of the bank with what is said besides. */
export function drawersWith(more: Partial<Bank>) {
  const fronts = frontsOf({ ...bank, ...more }, { worked: undefined, tape: '1/32' });
  if (!fronts.ok) throw new Error('no fronts');
  return drawersOf(fronts.value, { thick: thickOf({ ...bank, ...more }), shop: {}, tape: '1/32' });
}

/** Its operations, by part and cut, as `side fingers left`. */
export function cutsWith(more: Partial<Bank>): ReadonlyMap<string, Operation> {
  const drawers = drawersWith(more);
  if (!drawers.ok) throw new Error(drawers.error.map(({ code }) => code).join());
  const at = { tape: '1/32', thick: thickOf({ ...bank, ...more }), waits: [] } as const;
  const own = more.frontIs ? frontParts(drawers.value.fronts, { ...at, drawers: drawers.value }) : [];
  const parts = [...own, ...boxParts(drawers.value, at), ...hungParts(drawers.value, at)];
  const ops = operationsOf({ parts, cases: [], hand: [], recuts: () => ({}) }, { shop: {}, tape: '1/32' });
  return new Map(ops.map((op) => [op.id.replace('cut/b~c1d1', '').replaceAll('/', ' '), op]));
}
