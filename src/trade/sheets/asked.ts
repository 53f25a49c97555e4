import type { Effort, Refit } from './solve';
import type { Laid, TwoD, TwoDError } from './two-d/two-d';

/** What the search is asked, in a thread of its own. Whole numbers only: lengths stay on the page. */
export type Asked = {
  readonly what: 'lay' | 'refit';
  readonly two: TwoD;
  readonly effort: Effort;
};

/** What it says: a better plan whenever it has one, and how it ended. */
export type Told =
  | { readonly is: 'better' | 'done'; readonly laid: Laid }
  | { readonly is: 'refitted'; readonly refit: Refit }
  | { readonly is: 'cannot'; readonly error: TwoDError };
