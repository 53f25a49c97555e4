import type { Length } from '../../length/length';

type Round = 'front' | 'back' | 'base';

/** Why what goes round a case cannot be as said. Inches. */
export type RoundProblem = { readonly round: Round } & (
  | /** The back does not go into its groove. */
  { readonly code: 'back-too-thick'; readonly by: Length; readonly groove: Length }
  /** Groove and what is left behind it take the whole depth. */
  | { readonly code: 'no-depth'; readonly by: Length }
  /** Cleats lie behind a back in a groove: `least` must be left there. */
  | { readonly code: 'cleats-behind'; readonly by: Length; readonly least: Length }
  /** Nailers take more than the clear height, or all the depth; cleats take their place. */
  | { readonly code: 'nailers-full' | 'nailers-deep'; readonly by: Length }
  | { readonly code: 'nailers-and-cleats' }
  /** Let in away from an edge: before a back in a groove whose land is `by` short for them. */
  | { readonly code: 'nailers-no-edge'; readonly by: Length; readonly least: Length }
  /** The toe board stands before the sides: the recess must be more than `least`. */
  | { readonly code: 'board-proud'; readonly by: Length; readonly least: Length }
  /** Nothing is left of the plinth between its ends, or between its rails. */
  | { readonly code: 'plinth-no-length' | 'plinth-rails-meet'; readonly by: Length }
  /** Its cross members take more than its length; it has too few. */
  | { readonly code: 'plinth-full'; readonly by: Length }
  | { readonly code: 'plinth-crosses'; readonly least: number }
  /** The rails of the face frame leave no opening between them. */
  | { readonly code: 'frame-shut'; readonly by: Length }
  /** The top rail ends over the top, which the sides run past: the frame stands open there. */
  | { readonly code: 'rail-over-top'; readonly by: Length; readonly least: Length }
  /** Stiles to the floor: nothing is left of the bottom rail, whose toe opening must be lower than `under`. */
  | { readonly code: 'no-lower-rail'; readonly by: Length; readonly under: Length }
  /** It hangs lower than they do; they hang past a case on a plinth. */
  | { readonly code: 'rail-under-stiles'; readonly by: Length; readonly least: Length }
  | { readonly code: 'stiles-and-plinth' }
  /** The notches take the whole depth of the sides. */
  | { readonly code: 'no-foot'; readonly by: Length }
);

/** What is worth a look in what goes round a case. Limits are common practice, no source. */
export type RoundWarning = { readonly round: Round } & (
  | /** Little wood behind the groove for the back. */
  { readonly code: 'thin-land'; readonly land: Length; readonly least: Length }
  /** The notch for the toe board takes over a third of the sides. */
  | { readonly code: 'small-foot'; readonly foot: Length; readonly deep: Length }
  /** A nailer that is thin, or narrow. */
  | { readonly code: 'nailer-thin' | 'nailer-narrow'; readonly is: Length; readonly least: Length }
  /** Nailers lie inside, for the land behind the back is `by` short. */
  | { readonly code: 'nailers-inside'; readonly by: Length; readonly takes: Length }
  /** A plinth and a lapped frame under the same case. */
  | { readonly code: 'two-bases' }
  /** A toe space that is low, or not deep. */
  | {
      readonly code: 'low-toe' | 'low-toe-opening' | 'shallow-toe';
      readonly is: Length;
      readonly least: Length;
    }
);
