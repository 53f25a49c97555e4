import type { Length, Ratio } from '../../../src/length/length';
import type { SheetNeed } from '../../../src/trade/buying/need';
import type { BuyingStock } from '../../../src/trade/buying/solid';
import type { Part } from '../../../src/trade/carcass/part';
import { type Bank, newBank } from '../../../src/trade/fronts/bank';
import { frontsOf, type WorkedFronts } from '../../../src/trade/fronts/worked';
import { given } from '../../../src/trade/sums/sum';
import { l } from '../grooves/sample';

export const n = (x: Length | Ratio | undefined): string => x?.toFraction(true) ?? 'none';

export const need = (over: Partial<SheetNeed> = {}): SheetNeed => ({
  stock: 'a',
  name: 'Sheet A',
  kind: 'sheet',
  long: l('96'),
  wide: l('48'),
  count: 2,
  how: 'laid',
  pieces: 9,
  have: 0,
  ...over,
});

export const stick = (over: Partial<SheetNeed> = {}): SheetNeed => {
  const { wide: _, ...rest } = need({ stock: 'oak', name: 'Oak', kind: 'stick', ...over });
  return rest;
};

export const oak: BuyingStock = {
  id: 'oak',
  name: 'Oak',
  kind: 'stick',
  thickness: l('3/4'),
  measured: true,
};

const size = (x: Length) =>
  ({ sum: given('width-said', x), mark: { value: x, rest: l('0') }, mode: 'floor' }) as const;

export const part = (over: Partial<Part> & { readonly long: string; readonly wide: string }): Part => {
  const { long, wide, ...rest } = over;
  return {
    id: `case~${long.replace(/\W/g, 'x')}`,
    of: 'case',
    name: { role: 'board', named: 'Piece' },
    copies: 1,
    stock: undefined,
    stuff: 'oak',
    thickness: l('3/4'),
    length: size(l(long)),
    width: size(l(wide)),
    end: 'left',
    stage: 'carcass',
    rabbets: [],
    notches: [],
    laps: [],
    mates: [],
    strip: false,
    comesOff: false,
    inFrame: false,
    ...rest,
  };
};

/** Two fronts, no gaps: each as wide as the opening and half as high. */
export function twoFronts(width: string, height: string, over: Partial<Bank> = {}): WorkedFronts {
  const none = l('0');
  const bank: Bank = {
    ...newBank('b'),
    name: 'Drawers',
    count: 2,
    width: l(width),
    height: l(height),
    depth: l('18'),
    top: none,
    between: none,
    bottom: none,
    side: none,
    ...over,
  };
  const made = frontsOf(bank, { worked: undefined, tape: '1/32' });
  if (!made.ok) throw new Error(JSON.stringify(made.error.map((e) => e.code)));
  return made.value;
}
