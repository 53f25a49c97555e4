import type { ShopField } from '../../trade/machines/shop';

export const title = 'Shop figures';
export const under = 'measured once, for every job';
export const back = 'Back';
export const cameWithSample =
  'Figures came with the sample job where this phone had none. Measure your own before you cut by them.';
export const mine = 'They are mine';

/** The shop's figures by what they belong to. */
export const groups: readonly { readonly title: string; readonly fields: readonly ShopField[] }[] = [
  { title: 'Table saw', fields: ['single', 'block', 'capacity', 'tableHeight'] },
  { title: 'Sled', fields: ['sledCross', 'stopReach', 'stepError'] },
  {
    title: 'Sliding or radial saw',
    fields: ['slidingCross', 'slidingStop', 'slidingHeight', 'slidingStack'],
  },
  { title: 'Router', fields: ['routerBase', 'bit', 'routerReach', 'routerPass', 'routerGuide'] },
  { title: 'Circular saw', fields: ['kerf', 'shoeKeep', 'shoeWaste', 'circularDepth', 'circularGuide'] },
  { title: 'Passes', fields: ['overlap'] },
  { title: 'Slides', fields: ['slideThickness', 'slideHeight', 'slideLength'] },
];

const unsaid: Partial<Record<ShopField, string>> = {
  overlap: '1/16, usual',
  routerPass: '1/8, usual',
  slidingStack: 'takes none',
};

/** What stands for a figure not measured: some have a usual one. */
export const notMeasured = (field: ShopField): string => unsaid[field] ?? 'not measured';
