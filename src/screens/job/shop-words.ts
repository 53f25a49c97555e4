import type { ShopField } from '../../trade/machines/shop';

export const title = 'Shop figures';
export const under = 'measured once, for every job';
export const back = 'Back';
export const cameWithSample =
  'Figures came with the sample job where this phone had none. Measure your own before you cut by them.';
export const mine = 'They are mine';

/** The shop's figures by what they belong to. */
export const groups: readonly { readonly title: string; readonly fields: readonly ShopField[] }[] = [
  { title: 'Table saw', fields: ['single', 'block', 'capacity'] },
  { title: 'Crosscut', fields: ['stopReach', 'stepError'] },
  { title: 'Router', fields: ['routerBase', 'bit'] },
  { title: 'Circular saw', fields: ['kerf', 'shoeKeep', 'shoeWaste'] },
  { title: 'Passes', fields: ['overlap'] },
  { title: 'Slides', fields: ['slideThickness', 'slideHeight', 'slideLength'] },
];

/** What stands for a figure not measured: the overlap of two passes has a usual one. */
export const notMeasured = (field: ShopField): string =>
  field === 'overlap' ? '1/16, usual' : 'not measured';
