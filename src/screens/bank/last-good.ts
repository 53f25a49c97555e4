import type { WorkedFronts } from '../../trade/fronts/worked';
import type { Bench } from '../bench';
import * as shared from '../shared/last-good';

/** The fronts of a bank as they last could be cut; undefined where that is too far back, or never was. */
export const lastGood = (
  { entries, job, shop }: Pick<Bench, 'entries' | 'job' | 'shop'>,
  id: string,
): WorkedFronts | undefined =>
  shared.lastGood(entries.value, { job: job.value?.id ?? '', shop: shop.value }, ({ banks }) => {
    const fronts = banks.get(id)?.fronts;
    return fronts?.ok ? fronts.value : undefined;
  });
