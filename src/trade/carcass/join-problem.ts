import type { Length } from '../../length/length';
import type { StockRole } from './case';

/** Why parts cannot be joined as said. Inches. */
export type JoinProblem = { readonly joined: true } & (
  | /** A bottom that lies at the lower ends of the sides, in a case that stands off the floor: by so much. */
  { readonly code: 'bottom-low'; readonly joint: 'rabbet' | 'over' | 'mitre'; readonly by: Length }
  /** A tongue as thick as the part it is cut of, or thicker. */
  | {
      readonly code: 'tongue-thick';
      readonly part: StockRole;
      readonly tongue: Length;
      readonly thickness: Length;
    }
  /** A bottom or top mitred with sides of another thickness: by so much. */
  | {
      readonly code: 'mitre-unlike';
      readonly part: 'bottom' | 'top';
      readonly own: Length;
      readonly side: Length;
      readonly by: Length;
    }
  /** The right end of a top lies in a rabbet at the end of its side, and the sides are to run so much past it. */
  | { readonly code: 'top-low'; readonly by: Length }
  /** A loose top lies on the ends of the sides, edging goes round them: the top of the case lies so much under. */
  | { readonly code: 'no-top-under'; readonly on: 'loose' | 'edging'; readonly by: Length }
  /** The tongue of a bottom at its under face, with nothing of the sides under it. */
  | { readonly code: 'tongue-low' }
);

/** What is worth a look in how parts are joined. Limits are common practice, no source. */
export type JoinWarning = { readonly joined: true; readonly least: Length } & (
  | /** Too little room under a tongue for glue. */
  { readonly code: 'tongue-room'; readonly room: Length }
  /** Too little of the sides over the dadoes for the top. */
  | { readonly code: 'thin-over'; readonly over: Length }
);
