import type { Length } from '../../length/length';

/** The face a groove is cut into. A partition has both. */
export type Face = 'A' | 'B';

/** One groove as it will be cut. Near edge from the reference end, inches. */
export type Groove = {
  /** `run~number`, or the wide groove's own id: stable whatever is changed round it. */
  readonly id: string;
  /** What it is called on the board: its number in its run (in a list, its place there), `W1` for a wide one. */
  readonly no: string;
  readonly run?: string;
  readonly face: Face;
  readonly near: Length;
  readonly width: Length;
  readonly depth?: Length;
  readonly wide: boolean;
  readonly stopped?: Length;
  readonly fits?: string;
  readonly called?: string;
  readonly calledNo?: number;
  readonly said?: string;
};

/** A narrow groove a wide one displaced: by overlap, or because the land left was too small. */
export type Dropped = {
  readonly groove: Groove;
  readonly by: Groove;
  readonly why: 'overlap' | 'land';
  /** How much they overlap, or the land that would be left, inches. */
  readonly amount: Length;
};

export type BoardField = 'length' | 'thickness' | 'datum' | 'mate' | 'copies' | 'cutter' | 'across';
export type GrooveField =
  | 'width'
  | 'depth'
  | 'count'
  | 'pitch'
  | 'first'
  | 'endRoom'
  | 'span'
  | 'part'
  | 'at'
  | 'near'
  | 'stopped';

/** A layout that cannot be cut: by how much, and what would fit. `in` is the run's or wide groove's id. */
export type Problem =
  | { readonly code: 'missing'; readonly in?: string; readonly field: BoardField | GrooveField }
  | { readonly code: 'not-positive'; readonly in?: string; readonly field: BoardField | GrooveField }
  | { readonly code: 'negative'; readonly in: string; readonly field: 'endRoom'; readonly by: Length }
  /** So many grooves on each of so many boards, at least, are more cuts than the most of one layout. */
  | {
      readonly code: 'too-many';
      readonly grooves: number;
      readonly copies: number;
      readonly most: number;
    }
  /** Not a whole number from 1 to 1000. */
  | { readonly code: 'count-not-whole'; readonly in: string }
  | { readonly code: 'pitch-too-small'; readonly in: string; readonly pitch: Length; readonly width: Length }
  | { readonly code: 'off-the-end'; readonly in: string; readonly no: string; readonly by: Length }
  | {
      readonly code: 'past-the-end';
      readonly in: string;
      readonly no: string;
      readonly by: Length;
      /** How many of the run do fit, counting those a wide groove displaced. */
      readonly fits: number;
      /**
       * Where the run would have to start, given as its start is given (from the datum, by its point); negative when
       * no start lets all fit.
       */
      readonly startAt: Length;
    }
  | { readonly code: 'none-fit'; readonly in: string; readonly short: Length }
  | { readonly code: 'no-openings'; readonly in: string; readonly short: Length; readonly fits: number }
  | { readonly code: 'part-too-thick'; readonly in: string; readonly part: Length; readonly width: Length }
  | {
      readonly code: 'overlap';
      readonly face: Face;
      readonly a: string;
      readonly b: string;
      readonly by: Length;
    }
  | { readonly code: 'too-deep'; readonly in: string; readonly depth: Length; readonly thickness: Length }
  | { readonly code: 'no-web'; readonly a: string; readonly b: string; readonly by: Length };

/** Cuttable, but worth a look. Limits are common practice, no source. */
export type Warning =
  | {
      readonly code: 'end-land';
      readonly at: string;
      readonly end: 'reference' | 'other';
      readonly land: Length;
      readonly least: Length;
    }
  | {
      readonly code: 'land';
      readonly a: string;
      readonly b: string;
      readonly land: Length;
      readonly least: Length;
    }
  | {
      readonly code: 'web';
      readonly a: string;
      /** The groove opposite; left out when only the far face is. */
      readonly b?: string;
      readonly web: Length;
      readonly least: Length;
    }
  | { readonly code: 'deep'; readonly in: string; readonly depth: Length; readonly thickness: Length };
