import type { Entry } from '../../job/entry';
import type { Worked } from '../../trade/carcass/parts';
import type { Shop } from '../../trade/machines/shop';
import { lastGood } from '../shared/last-good';

/** The case as it last could be cut; undefined where that is too far back, or never was. */
export const lastGoodCase = (
  entries: readonly Entry[],
  at: { readonly job: string; readonly id: string; readonly shop: Shop },
): Worked | undefined =>
  lastGood(entries, at, ({ worked }) => {
    const found = worked.get(at.id);
    return found?.ok ? found.value : undefined;
  });
