import { type DrawersAt, drawersOf } from '../../../src/trade/boxes/drawers';
import { type Bank, newBank } from '../../../src/trade/fronts/bank';
import { frontsOf, type WorkedColumn, type WorkedFronts } from '../../../src/trade/fronts/worked';
import { l } from '../../trade/grooves/sample';

/** Two fronts of 12, gaps of 1/8 over them, 1/16 between them and 3/32 under them. */
export const twoFronts: Bank = {
  ...newBank('b'),
  width: l('18'),
  height: l('24 9/32'),
  depth: l('20'),
  count: 2,
  top: l('1/8'),
  between: l('1/16'),
  bottom: l('3/32'),
};

export function worked(bank: Bank): WorkedFronts {
  const made = frontsOf(bank, { worked: undefined, tape: '1/32' });
  if (!made.ok) throw new Error(made.error.map((e) => e.code).join());
  return made.value;
}

export function firstColumn(bank: Bank): WorkedColumn {
  const [column] = worked(bank).columns;
  if (!column) throw new Error('no column');
  return column;
}

const at: DrawersAt = { thick: () => l('1/2'), shop: {}, tape: '1/32' };

export const planned = (bank: Bank) => {
  const fronts = worked(bank);
  return {
    bank,
    fronts: { ok: true, value: fronts } as const,
    drawers: drawersOf(fronts, at),
    parts: [],
    work: undefined,
  };
};
