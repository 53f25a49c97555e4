import { blank, type Keypad } from '../../length/keypad-state';
import type { Line } from './lines';

/**
 * What takes one change of the strip back: lines it added, and lines as they were with their places. Lines another page
 * has added since stay.
 */
export type StripBack = {
  readonly drop: readonly string[];
  readonly put: readonly { readonly line: Line; readonly at: number }[];
};

/** What undo goes back to. Beside the keys, only what was changed is kept. */
export type Before = {
  readonly keys: Keypad;
  readonly current: string;
  readonly made: number;
  readonly strip?: StripBack;
  readonly from?: string;
  readonly sums?: Readonly<Record<string, string>>;
  readonly typed?: string;
};

/** Everything of Figure, plain JSON: kept at each key, there again after a restart. */
export type FigureState = {
  readonly keys: Keypad;
  readonly lines: readonly Line[];
  /** Lines made on this strip so far: no id is used twice. */
  readonly made: number;
  /** Set apart from those of other pages by this in their ids. */
  readonly tag?: string;
  /** The line on the keys, the one just finished or the one being changed; empty when there is none. */
  readonly current: string;
  /** What answers are also measured back from: a length as text, or `#` and a line; empty when nothing. */
  readonly from: string;
  /** Blanks of the quick sums, as stored lengths and counts. */
  readonly sums: Readonly<Record<string, string>>;
  readonly typed: string;
  readonly typing: boolean;
  readonly undo: readonly Before[];
  /** How many steps there were to go back from the beginning: the last one of `undo` is this one. */
  readonly steps: number;
};

export const emptyFigure: FigureState = {
  keys: blank,
  lines: [],
  made: 0,
  current: '',
  from: '',
  sums: {},
  typed: '',
  typing: false,
  undo: [],
  steps: 0,
};

export const undoDepth = 50;
/** A strip of sixty can still be added up in one line. */
export const mostLines = 60;
