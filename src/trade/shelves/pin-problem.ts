import type { Length } from '../../length/length';
import type { RowName } from './bore';

/** What is cut in the walls for loose shelves. */
export type ShelfCut = 'hole' | 'strip';

/** Why rows of holes, or grooves for strips, cannot be cut as said. `in` names the loose shelves. Inches. */
export type PinProblem =
  /** First hole and room at the top are more than there is: by how much. */
  | { readonly code: 'no-hole'; readonly in: string; readonly by: Length }
  /** Holes that run into each other: the pitch is no more than a hole is wide. */
  | { readonly code: 'holes-touch'; readonly in: string; readonly dia: Length }
  /** The rows stand in each other, or one runs off the edge; how much farther in a row may stand at most. */
  | { readonly code: 'rows-cross'; readonly in: string; readonly cut: ShelfCut; readonly by: Length }
  | {
      readonly code: 'row-off';
      readonly in: string;
      readonly cut: ShelfCut;
      readonly row: RowName;
      readonly by: Length;
    }
  /** Through the wall. */
  | {
      readonly code: 'hole-through';
      readonly in: string;
      readonly cut: ShelfCut;
      readonly depth: Length;
      readonly thickness: Length;
    }
  /** Two holes from the two faces of a partition run into each other; so deep each leaves a third. */
  | {
      readonly code: 'holes-meet';
      readonly in: string;
      readonly cut: ShelfCut;
      readonly with: string;
      readonly by: Length;
      readonly most: Length;
    }
  /** No opening is higher than strips are to end short of it: too much by, in the highest. */
  | { readonly code: 'no-strips'; readonly in: string; readonly by: Length }
  /** Nothing is left of the shelf. */
  | { readonly code: 'no-shelf'; readonly in: string; readonly across: boolean; readonly by: Length };

/** Can be bored, but worth a look. Limits are common practice, no source. */
export type PinWarning =
  /** Holes left out of every row of the bay. */
  | { readonly code: 'holes-left-out'; readonly in: string; readonly numbers: readonly number[] }
  /** Little wood behind a hole, or between holes of the two faces. */
  | {
      readonly code: 'hole-web';
      readonly in: string;
      readonly cut: ShelfCut;
      readonly web: Length;
      readonly least: Length;
      readonly both: boolean;
    }
  /** What is cut for these runs into what is cut for others of their bay: the rows overlap by so much. */
  | { readonly code: 'sets-meet'; readonly in: string; readonly with: string; readonly by: Length }
  /** Edging of a stock thinner than the shelves: by how much. */
  | { readonly code: 'edge-thin'; readonly in: string; readonly by: Length }
  /** Looks like 32 mm and is not: off so much a hole, and at the last. */
  | { readonly code: 'not-32'; readonly in: string; readonly each: Length; readonly last: Length }
  /** Trays of the bay run where its strips stand. */
  | { readonly code: 'strips-crossed'; readonly in: string }
  /** An opening between fixed shelves, so high, takes no strip. */
  | { readonly code: 'no-strip'; readonly in: string; readonly opening: Length }
  /** Strips are sold shorter than the highest opening wants: by how much. */
  | { readonly code: 'strips-short'; readonly in: string; readonly by: Length };
