import { isPositive, type Length, times } from '../length/length';
import type { EdgedShelves } from '../trade/buying/edging';
import type { ShelfSet } from '../trade/buying/shelf-hardware';
import type { Inside } from '../trade/carcass/case';
import type { Sizes } from '../trade/carcass/sizes';
import { pinsOf } from '../trade/shelves/pins';
import { sameRows } from '../trade/shelves/same-rows';
import { stripsOf } from '../trade/shelves/strips';
import { woodEdging } from '../trade/shelves/wood-edging';
import type { Plan } from './plan';

type Loose = { readonly place: string; readonly i: Inside; readonly sizes: Sizes };

/** The loose shelves of every case that works out. */
const looseIn = ({ job, worked }: Pick<Plan, 'job' | 'worked'>): readonly Loose[] =>
  job.cases.flatMap(({ id, name }) => {
    const found = worked.get(id);
    if (!found?.ok) return [];
    const { sizes } = found.value;
    const place = name || 'Case';
    return sizes.case.inside.flatMap((i) => (i.kind === 'loose' ? [{ place, i, sizes }] : []));
  });

const shelvesIn = ({ i }: Loose): number => i.count ?? 1;

/** What the loose shelves of a job lie on, for the list to buy. */
export const shelvesToHold = (plan: Pick<Plan, 'job' | 'worked'>): readonly ShelfSet[] =>
  looseIn(plan)
    .filter((loose) => shelvesIn(loose) > 0)
    .map((loose) => ({
      place: loose.place,
      shelves: shelvesIn(loose),
      spares: loose.i.spares ?? 0,
      on: onWhat(loose),
    }));

function onWhat({ i, sizes }: Loose): ShelfSet['on'] {
  const strips = stripsOf(sizes, i);
  if (!strips || !i.width || !i.stripThick) {
    const pins = pinsOf(sizes, i);
    return { is: 'pins', ...(pins ? { dia: pins.dia } : {}) };
  }
  const own = sameRows(sizes, i) ? [] : strips.pieces;
  const pieces = own.map(({ long }) => long).filter(isPositive);
  return { is: 'strips', width: i.width, thick: i.stripThick, pieces, sold: i.stripSold };
}

/** The front edges of loose shelves that have edging stuck on, each set with its band. */
export const shelvesToEdge = (plan: Pick<Plan, 'job' | 'worked' | 'parts'>): readonly EdgedShelves[] =>
  looseIn(plan).flatMap(({ place, i, sizes }): readonly EdgedShelves[] => {
    const part = plan.parts.find(({ id }) => id === `${sizes.case.id}~${i.id}`);
    if (!i.heldBy || !i.band || !isPositive(i.band) || !part?.thickness) return [];
    if (woodEdging(sizes, i)) return [];
    const long: Length = times(part.length.mark.value, BigInt(part.copies));
    return [{ name: place, shelves: part.copies, around: long, thick: i.band, wide: part.thickness }];
  });
