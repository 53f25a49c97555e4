import type { Need } from './limits';

/** Holes and slots: nothing of the piece limits them. */
export const isDrilled = (need: Need): need is Extract<Need, { readonly cut: 'bore' | 'slot' }> =>
  need.cut === 'bore' || need.cut === 'slot';
