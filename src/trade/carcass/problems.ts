import type { Length } from '../../length/length';
import type { PinProblem, PinWarning } from '../shelves/pin-problem';
import type { Case, StockRole } from './case';
import type { JoinProblem, JoinWarning } from './join-problem';
import type { JointField } from './meetings';
import type { RoundProblem, RoundWarning } from './round-problems';
import type { StopProblem, StopWarning } from './stop-problem';

/** A figure of the case or of something standing in it. */
export type CaseField = {
  [K in keyof Case]-?: NonNullable<Case[K]> extends Length ? K : never;
}[keyof Case];

/** Why a case cannot be cut as it stands. `in` names the thing in a bay. Inches. */
export type CaseProblem =
  | JoinProblem
  | PinProblem
  | StopProblem
  | { readonly code: 'missing'; readonly field: CaseField }
  | {
      readonly code: 'missing-inside';
      readonly in: string;
      readonly field: 'at' | 'first' | 'pitch' | 'width' | 'depth' | 'count' | 'stripThick';
    }
  | { readonly code: 'missing-stock'; readonly stock: StockRole }
  | { readonly code: 'not-positive'; readonly field: CaseField }
  | { readonly code: 'negative'; readonly field: CaseField; readonly by: Length }
  /** More than there is room for. */
  | {
      readonly code: 'too-much';
      readonly field: CaseField;
      readonly by: Length;
      readonly most: Length;
    }
  | {
      readonly code: 'negative-inside';
      readonly in: string;
      readonly field: NegativeInside;
      readonly by: Length;
    }
  /** Nothing is left between: `by` how much too small the outside is. */
  | { readonly code: 'no-opening'; readonly across: boolean; readonly by: Length }
  /** Every bay is given and they do not make the clear width: > 0 too wide together. */
  | { readonly code: 'bays-off'; readonly by: Length }
  | {
      readonly code: 'through';
      readonly field: CaseField;
      readonly depth: Length;
      readonly thickness: Length;
    }
  | { readonly code: 'back-too-wide'; readonly wide: Length; readonly depth: Length }
  | RoundProblem
  | { readonly code: 'no-bay'; readonly in: string; readonly bay: number; readonly bays: number }
  | {
      readonly code: 'above-the-top';
      readonly in: string;
      readonly by: Length;
      /** The highest its lower face can stand. */
      readonly most: Length;
    }
  /** Two shelves, or two rails, of one bay that stand in each other: `in` is the one said last. */
  | {
      readonly code: 'overlap';
      readonly in: string;
      readonly with: string;
      readonly by: Length;
      /** Where it clears the other: its lower face at most, or at least; left out where there is no room there. */
      readonly under?: Length | undefined;
      readonly over?: Length | undefined;
    }
  | { readonly code: 'frame-closed'; readonly bay: number; readonly by: Length }
  | { readonly code: 'crosses-overlap'; readonly by: Length; readonly fit: number }
  | { readonly code: 'rails-meet'; readonly by: Length }
  | { readonly code: 'crosses-count' };

/** Figures of what stands in a bay that may be nothing, but not less. */
export const neverLess = [
  'at',
  'endRoom',
  'slack',
  'wide',
  'flange',
  'play',
  'frontPlay',
  'backPlay',
  'band',
  'stripThick',
  'stripRoom',
  'stripSold',
] as const;
type NegativeInside = (typeof neverLess)[number];

/** Cuttable, but worth a look. Limits are common practice, no source. */
export type CaseWarning =
  | JoinWarning
  | PinWarning
  | StopWarning
  | {
      readonly code: 'deep';
      readonly field: JointField;
      readonly depth: Length;
      readonly thickness: Length;
    }
  /** A stile of the frame stands over tray grooves: no wider than `widest`, or it must come off. */
  | {
      readonly code: 'trays-locked';
      readonly stile: 'left' | 'right' | 'middle';
      readonly bay: number;
      readonly widest: Length;
      /** A middle stile set off centre, just clear of the grooves. */
      readonly free?: Length;
      readonly wide: Length;
      readonly comesOff: boolean;
    }
  | { readonly code: 'trays-wider'; readonly bay: number; readonly tray: Length; readonly opening: Length }
  | { readonly code: 'sill'; readonly sill: Length }
  /** The top hangs so far under the top rail, into the opening: one so wide as `least` covers it. */
  | { readonly code: 'top-in-opening'; readonly by: Length; readonly least: Length }
  | { readonly code: 'packing'; readonly bay: number; readonly left: Length; readonly right: Length }
  /** A rabbet, notch and cleat that should be one figure and are not: the cleat stands proud (or sunk: negative). */
  | { readonly code: 'cleat-proud'; readonly where: 'side' | 'partition'; readonly by: Length }
  | { readonly code: 'notch-deep'; readonly deep: Length; readonly half: Length }
  | {
      readonly code: 'small-bearing';
      readonly in: string;
      readonly bearing: Length;
      readonly least: Length;
    }
  | RoundWarning
  | { readonly code: 'two-thicknesses' };
