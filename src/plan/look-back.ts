import { equals, type Length } from '../length/length';
import type { Shop } from '../trade/machines/shop';
import type { Plan } from './plan';

type SlideField = 'slideLength' | 'slideHeight' | 'slideThickness';

/** A figure of the shop that a job knows otherwise, and whose drawers say so. Inches. */
export type Learned = {
  readonly field: SlideField;
  readonly now: Length | undefined;
  readonly learned: Length;
  readonly from: string;
};

/** Shop figures that the job worked with and the shop does not have, or has otherwise: each may be taken over. */
export function learnedOf({ job }: Pick<Plan, 'job'>, shop: Shop): readonly Learned[] {
  const found = job.banks.flatMap((bank): readonly Learned[] => {
    const own: Readonly<Record<SlideField, Length | undefined>> = {
      slideLength: bank.slideLong,
      slideHeight: bank.slideHigh,
      slideThickness: bank.clearance,
    };
    return (Object.keys(own) as SlideField[]).flatMap((field): readonly Learned[] => {
      const [learned, now] = [own[field], shop[field]];
      return !learned || (now && equals(learned, now))
        ? []
        : [{ field, now, learned, from: bank.name ?? '' }];
    });
  });
  return found.filter(
    (one, k) => found.findIndex((x) => x.field === one.field && equals(x.learned, one.learned)) === k,
  );
}
