import type { Length } from '../../length/length';

/** Sheets or sticks of one stock that a layout takes; lengths in inches. */
export type SheetNeed = {
  readonly stock: string;
  readonly name: string;
  readonly kind: 'sheet' | 'stick';
  readonly long: Length;
  readonly wide?: Length;
  /**
   * So many it takes; `how`: laid out and proved fewest, laid out, or not laid out yet: at least so many, by the
   * bound.
   */
  readonly count: number;
  readonly how: 'proved' | 'laid' | 'least';
  /** Pieces that come out of them. */
  readonly pieces: number;
  /** At hand, not bought. */
  readonly have: number;
  /** A spare part's worth for test cuts lies in what is left (its size), or does not. */
  readonly spare?: { readonly long: Length; readonly wide: Length };
};
