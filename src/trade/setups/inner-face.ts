import type { Part } from '../carcass/part';
import type { PartName } from '../carcass/part-name';
import { rowEdgeOf, standsIn } from '../joints/edges';
import type { FaceName } from './placing';
import { farSide, opposite, type Toward, towardOf } from './turn';

/** Stand at the back of the case: what they show inside looks to the front. */
const atBack: readonly PartName['role'][] = ['back', 'cleat', 'nailer'];

/** Where the inner face of a part looks that has no name by what is cut in it: up, or into the case. */
function looksTo({ name }: Part): Toward | undefined {
  if (name.role === 'board' || name.role === 'plinthcross') return undefined;
  const stands = standsIn(name);
  if (stands === 'flat') return 'top';
  if (stands === 'across') return atBack.includes(name.role) ? 'front' : 'back';
  return name.role === 'edgeleft' ? 'right' : 'left';
}

/**
 * The face of a part that a row is bored in where no groove says which it is. One that is told by nothing is the face
 * the marks are on, its reference end at your left with the edge of the row toward you.
 *
 * @example innerOf(shelf) // { named: 'upper', toward: 'top' }
 */
export function innerOf(part: Part): { readonly named: FaceName; readonly toward?: Toward } {
  const looks = looksTo(part);
  if (looks === 'top') return { named: 'upper', toward: looks };
  if (looks) return { named: 'inside', toward: looks };
  const [near, end] = [towardOf(rowEdgeOf(part)), towardOf(part.end)];
  const toward = (['left', 'right', 'front', 'back', 'bottom', 'top'] as const).find(
    (face) => near && end && farSide({ face, lies: 'up', end, endAt: 'left' }) === opposite(near),
  );
  return { named: 'marked', ...(toward ? { toward } : {}) };
}
