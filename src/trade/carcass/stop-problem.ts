import type { Length } from '../../length/length';
import type { DrawerPlace } from './part-name';

/** Why a stop strip cannot stand as said; `stop` names it. Inches. */
export type StopProblem = { readonly stop: string } & (
  | /** Nothing is left of it between its clearances. */
  { readonly code: 'stop-short'; readonly by: Length }
  /** It stands past what is in front of the back, or before the front edges. */
  | { readonly code: 'stop-behind'; readonly by: Length; readonly most: Length }
  | { readonly code: 'stop-before'; readonly by: Length }
  | { readonly code: 'stop-narrow' }
);

/** Trays of the bay that come out where it stands; drawers, whose boxes pass it. */
export type StopWarning = { readonly stop: string } & (
  | { readonly code: 'stop-on-trays' | 'stop-on-drawers' }
  /** The box of a drawer runs into it: where it just clears all of them, and the widest that would. */
  | {
      readonly code: 'stop-strikes';
      readonly drawer: DrawerPlace;
      readonly by: Length;
      readonly at: Length | undefined;
      readonly most: Length;
    }
);
