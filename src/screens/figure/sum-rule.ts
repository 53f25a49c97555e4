import type { ComponentChildren } from 'preact';
import type { Length } from '../../length/length';
import type { Tape } from '../../length/tape';

/** A sentence in pieces: words, and blanks by name. */
export type Piece = string | { readonly blank: string; readonly label: string; readonly count?: boolean };

/** What a quick sum is called in their list, and its sentence. */
export type SumWords = {
  readonly title: string;
  readonly hint: string;
  readonly sentence: readonly Piece[];
};

/** A quick sum: its words, and what its blanks come to. */
export type SumRule = SumWords & {
  readonly result: (blanks: Blanks, tape: Tape) => ComponentChildren;
};

export type Blanks = {
  readonly length: (name: string) => Length | undefined;
  readonly count: (name: string) => number | undefined;
};
