import { isPositive } from '../../length/length';
import type { Part } from '../carcass/part';
import type { PartName } from '../carcass/part-name';
import type { Slab } from './stuff';
import type { Belongs, Weighable } from './weights';

/** What a stock is of, where somebody said; by its id. */
type KindOf = (stock: string) => Pick<Slab, 'stuff' | 'perFoot'> | undefined;

/** Pieces of a box and its front, whose names say so. */
const drawerRoles: readonly PartName['role'][] = ['front', 'side', 'boxfront', 'boxback', 'boxbottom'];

/** A loose shelf or a tray comes out before the case is moved; a drawer goes with its front. */
function belongsTo({ name }: Part): Belongs {
  if (name.role === 'inside') return name.kind === 'loose' || name.kind === 'trays' ? 'loose' : 'case';
  if (name.role === 'shelfedge') return 'loose';
  return drawerRoles.includes(name.role) ? 'drawer' : 'case';
}

type ToWeigh = {
  readonly list: readonly Weighable[];
  /** Parts whose size or thickness is not known: their weight is missing, and that is said. */
  readonly unknown: readonly string[];
};

/**
 * The parts of a job as pieces to be weighed, at their exact sizes. What fronts are cut out of is no piece of the case:
 * the fronts are weighed. A kind nobody said is birch ply, a strip hardwood.
 *
 * @param parts inches; @param kindOf what is known of a stock
 * @example partsToWeigh(parts, () => undefined).list // Example 9 of loads
 */
export function partsToWeigh(parts: readonly Part[], kindOf: KindOf): ToWeigh {
  const own = parts.filter((part) => part.name.role !== 'blank');
  const isKnown = ({ thickness, length, width }: Part): boolean =>
    thickness !== undefined && [thickness, length.sum.value, width.sum.value].every(isPositive);
  const list = own.flatMap((part): readonly Weighable[] => {
    const { id, copies, thickness, length, width, strip, corner, stuff: stock } = part;
    if (!thickness || !isKnown(part)) return [];
    const kind = stock === undefined ? undefined : kindOf(stock);
    const slab: Slab = {
      long: length.sum.value,
      wide: width.sum.value,
      thick: thickness,
      ...(corner ? { notch: corner } : {}),
      stuff: strip ? 'hardwood' : 'ply',
      ...kind,
    };
    return [{ id, of: belongsTo(part), count: copies, slab }];
  });
  return { list, unknown: own.filter((part) => !isKnown(part)).map(({ id }) => id) };
}
