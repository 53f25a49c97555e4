import type { Facts } from './facts';
import type { stopOffers } from './stop-offers';

/** What the page of a board shows once the second file of the app is there. */
export type MarksLater = {
  readonly Facts: typeof Facts;
  readonly stopOffers: typeof stopOffers;
};
