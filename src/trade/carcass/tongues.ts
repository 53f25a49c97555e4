import { subtract } from '../../length/length';
import type { Case, Hugs, StockRole } from './case';
import { jointAt, type Meeting, type Meets, reachOf } from './meetings';
import type { Tongue } from './part';

type Tongued = Exclude<Meeting, 'back' | 'cleat'>;

/** At which face a tongue lies. Over a top there may be no wood, so its own lies at the under face. */
export function hugsAt(c: Case, meeting: Meeting): Hugs {
  if (meeting === 'bottom' || meeting === 'bottomRight') return c.bottomHugs ?? 'far';
  if (meeting === 'partition') return c.partitionHugs ?? 'near';
  return meeting === 'top' || meeting === 'topRight' ? 'near' : (c.shelfHugs ?? 'far');
}

/** The face beside the tongue: the one that is cut away. */
function cutFace(c: Case, meeting: Tongued): Tongue['face'] {
  const far = hugsAt(c, meeting) === 'far';
  if (meeting === 'partition')
    return far ? { named: 'left', toward: 'left' } : { named: 'right', toward: 'right' };
  return far ? { named: 'under', toward: 'bottom' } : { named: 'upper', toward: 'top' };
}

/**
 * The tongues of a part, one at each end that has one.
 *
 * @param ends where it has them: by which joint, and what the part is of
 * @example tonguesOf(sizes, 'bottom', { left: 'bottom', right: 'bottom' })[0].shoulder // 15/32 of 23/32: tongue 1/4
 */
export const tonguesOf = (
  sizes: Meets,
  stock: StockRole,
  ends: Readonly<Record<string, Tongued>>,
): readonly Tongue[] =>
  Object.entries(ends)
    .filter(([, meeting]) => jointAt(sizes.case, meeting) === 'tongue')
    .map(([end, meeting]) => ({
      end,
      long: reachOf(sizes, meeting),
      shoulder: subtract(sizes.thick(stock), sizes.joints.tongue),
      face: cutFace(sizes.case, meeting),
    }));
