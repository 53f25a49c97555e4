import type { Along } from '../carcass/part';
import type { Sizes } from '../carcass/sizes';
import type { Face } from '../grooves/layout';
import { rowOf, sameRows } from './same-rows';
import { stripsOf } from './strips';

/** The grooves for strips in one wall of a bay, each measured from the front edge. */
export const stripGrooves = (sizes: Sizes, bay: number, face: Face): readonly Along[] =>
  sizes.case.inside
    .filter((i) => i.bay === bay && !sameRows(sizes, i))
    .flatMap((i) => {
      const strips = stripsOf(sizes, i);
      return strips
        ? (['front', 'rear'] as const).map((row) => ({
            ...rowOf(sizes, i, row),
            takes: { part: 'strip' as const },
            edge: { at: 'edge', named: 'front' } as const,
            near: strips[row],
            width: strips.width,
            depth: strips.deep,
            face,
          }))
        : [];
    });
