import type { Length } from '../../length/length';
import { usualOverlap, usualPass } from '../../trade/machines/depths';
import type { ShopField } from '../../trade/machines/shop';
import { unitInHand } from '../../ui/unit-in-hand';
import { exactly } from '../shared/exact-words';

export const title = 'Shop figures';
export const under = 'measured once, for every job';
export const back = 'Back';
export const cameWithSample =
  'Figures came with the sample job where this phone had none. Measure your own before you cut by them.';
export const mine = 'They are mine';

/** The shop's figures by what they belong to. */
export const groups: readonly { readonly title: string; readonly fields: readonly ShopField[] }[] = [
  {
    title: 'Table saw',
    fields: ['single', 'block', 'capacity', 'tableHeight', 'tableBehind', 'tableBeside'],
  },
  { title: 'Sled', fields: ['sledCross', 'stopReach', 'stepError'] },
  {
    title: 'Sliding or radial saw',
    fields: ['slidingCross', 'slidingStop', 'slidingHeight', 'slidingStack'],
  },
  { title: 'Router', fields: ['routerBase', 'bit', 'routerReach', 'routerPass', 'routerGuide'] },
  { title: 'Circular saw', fields: ['kerf', 'shoeKeep', 'shoeWaste', 'circularDepth', 'circularGuide'] },
  { title: 'Drill press', fields: ['pressThroat', 'pressStroke', 'pressBit'] },
  { title: 'Plate joiner', fields: ['plateDeep', 'plateFence', 'plateBase'] },
  { title: 'Passes', fields: ['overlap'] },
  { title: 'Slides', fields: ['slideThickness', 'slideHeight', 'slideLength'] },
  { title: 'Two tapes', fields: ['tapeShort', 'otherShort', 'tapeLong', 'otherLong'] },
];

/** What stands for a figure not measured: some have a usual one. */
export function notMeasured(field: ShopField): string {
  switch (field) {
    case 'overlap':
      return usually(usualOverlap[unitInHand()]);
    case 'routerPass':
      return usually(usualPass[unitInHand()]);
    case 'slidingStack':
      return 'takes none';
    default:
      return 'not measured';
  }
}

const usually = (figure: Length): string => `${exactly(figure)}, usual`;
