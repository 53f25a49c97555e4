import type { BandKind } from '../../length/bands';
import type { OwnField } from '../../trade/machines/shop';

/** What a figure is for, as far as that says how large it can be. */
export const kinds: Partial<Record<OwnField, BandKind>> = {
  single: 'kerf',
  kerf: 'kerf',
  bit: 'cutter',
  block: 'place',
  capacity: 'place',
  stopReach: 'place',
  routerBase: 'place',
  shoeKeep: 'place',
  shoeWaste: 'place',
  guideEdge: 'place',
  pressThroat: 'place',
  pressStroke: 'place',
  pressBit: 'place',
  plateDeep: 'place',
  plateFence: 'place',
  plateBase: 'place',
  slideThickness: 'gap',
  slideHeight: 'length',
  slideLength: 'length',
  tapeShort: 'length',
  otherShort: 'length',
  tapeLong: 'length',
  otherLong: 'length',
};
