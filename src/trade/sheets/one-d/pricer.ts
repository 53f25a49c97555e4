import type { Stick } from './kinds';

/** The stick worth most at whole prices. `most`: no stick is worth more; `others`: good ones met on the way. */
type Priced = { readonly stick: Stick; readonly others: readonly Stick[]; readonly most: number };

/**
 * Finds the stick worth most; no kind more often than wanted. Prices are whole, ≥ 0; a stick is paid for from `scale`
 * on, and one worth less may be passed over.
 */
export type Pricer = (
  prices: Float64Array,
  asked: { readonly wanted: Int32Array; readonly scale: number },
) => Priced;
